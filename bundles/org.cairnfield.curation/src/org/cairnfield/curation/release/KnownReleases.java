package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.AtomicFile;

/**
 * The releases that were seen on this computer and were sound, kept outside of all archives. Whoever changes an archive, or
 * puts an older copy in its place, does not reach this list. An archive is known by its first save point, which all copies
 * and clones of it share.
 */
public final class KnownReleases {

	/** Names another folder for the list than the user's folder for the state of programs. */
	public static final String PROPERTY = "cairnfield.state";

	private static final Pattern LINE = Pattern
			.compile("([0-9a-f]{40})\t([^\t]{1,200})\t([0-9a-f]{40})\t(\\d{4}-\\d\\d-\\d\\d)");
	private static final int MOST = 5000;
	private static final long MOST_BYTES = 1 << 21;

	private final Path file;

	/** @param file the list, which need not be there yet; null: nothing is remembered */
	public KnownReleases(Path file) {
		this.file = file;
	}

	/** The list of the user: below the system property, {@code XDG_STATE_HOME}, or {@code ~/.local/state}. */
	public static KnownReleases ofUser() {
		String set = System.getProperty(PROPERTY);
		String xdg = System.getenv("XDG_STATE_HOME");
		Path state = set != null ? Path.of(set)
				: xdg != null && Path.of(xdg).isAbsolute() ? Path.of(xdg)
						: Path.of(System.getProperty("user.home"), ".local", "state");
		return new KnownReleases(state.resolve("cairnfield").resolve("known-releases"));
	}

	private record Known(String archive, String version, String tag, String seen) {

		String line() {
			return archive + '\t' + version + '\t' + tag + '\t' + seen + '\n';
		}
	}

	/**
	 * Compares what an archive has with what is known of it.
	 *
	 * @param archive id of its first save point
	 * @param now     its releases
	 * @return what does not agree; empty where nothing is known
	 */
	public List<String> contradictions(String archive, Collection<ReleaseTag> now) {
		List<String> found = new ArrayList<>();
		for (Known known : read().stream().filter(k -> k.archive().equals(archive)).toList()) {
			Optional<ReleaseTag> tag = now.stream().filter(t -> t.version().equals(known.version())).findFirst();
			if (tag.isEmpty()) {
				found.add(Words.bind(Messages.KnownReleases_releaseSeenOnIsNot, known.version(), known.seen()));
			} else if (!tag.get().id().equals(known.tag())) {
				found.add(Words.bind(Messages.KnownReleases_releaseIsNotTheOne, known.version(), known.seen(),
						tag.get().id().substring(0, 12), known.tag().substring(0, 12)));
			}
		}
		return found;
	}

	/** Whether a release of an archive was seen. */
	boolean has(String archive, String version) {
		return read().stream().anyMatch(known -> known.archive().equals(archive) && known.version().equals(version));
	}

	/**
	 * Adds releases that are not known yet; those that are stay as they are.
	 *
	 * @return why it could not be kept, in words; empty if it was
	 */
	public String remember(String archive, Collection<ReleaseTag> sound) {
		List<Known> all = read();
		String today = LocalDate.now(ZoneOffset.UTC).toString();
		List<Known> added = sound.stream().filter(
				tag -> all.stream().noneMatch(k -> k.archive().equals(archive) && k.version().equals(tag.version())))
				.map(tag -> new Known(archive, tag.version(), tag.id(), today)).toList();
		if (added.isEmpty()) {
			return "";
		}
		all.addAll(added);
		return write(all);
	}

	/** Forgets what is known of an archive. @return why it could not, in words; empty if it has */
	public String forget(String archive) {
		List<Known> all = read();
		return all.removeIf(k -> k.archive().equals(archive)) ? write(all) : "";
	}

	/** Lines that cannot be read are passed over: the list is of help, and nothing rests on it alone. */
	private List<Known> read() {
		List<Known> all = new ArrayList<>();
		try {
			if (file != null && Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
				for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n")) {
					Matcher known = LINE.matcher(line);
					if (known.matches()) {
						all.add(new Known(known.group(1), known.group(2), known.group(3), known.group(4)));
					}
				}
			}
		} catch (IOException e) {
			return all; // as if there were none; writing says why
		}
		return all;
	}

	private String write(List<Known> all) {
		if (file == null) {
			return "";
		}
		try {
			Files.createDirectories(file.getParent());
			AtomicFile.write(file, out -> {
				for (Known known : all.subList(Math.max(0, all.size() - MOST), all.size())) {
					out.append(known.line());
				}
			});
			return "";
		} catch (IOException | RuntimeException e) {
			return Words.bind(Messages.KnownReleases_whatWasSeenCouldNot, file, e.getMessage());
		}
	}
}
