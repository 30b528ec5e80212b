package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a fetch or push that was killed leaves among the objects of the repository that received. JGit takes a pack of the same
 * name for complete, and a lock for that of somebody else, so that the same objects could never be received again.
 */
final class PackLeftovers {

	/** What JGit writes into the file by which it keeps a pack until it is referred to. */
	private static final List<String> KEPT_BY = List.of("jgit fetch ", "jgit receive-pack");
	private static final Pattern IN_THE_WAY = Pattern.compile("pack-\\w+\\.(pack|keep\\.lock)");
	private static final Pattern INCOMING = Pattern.compile("incoming_\\w+\\.(pack|idx)");

	private PackLeftovers() {
	}

	/** What would be in the way of the next. @param git folder of the repository */
	static List<Path> inTheWay(Path git) throws IOException {
		List<Path> found = new ArrayList<>();
		for (Path file : named(packs(git), IN_THE_WAY)) {
			String name = file.getFileName().toString();
			if (!name.endsWith(".pack")
					|| Files.notExists(file.resolveSibling(name.replace(".pack", ".idx")), LinkOption.NOFOLLOW_LINKS)) {
				found.add(file);
			}
		}
		return found;
	}

	/** What is only in the way of packing, or takes room. */
	static List<Path> idle(Path git) throws IOException {
		List<Path> found = new ArrayList<>(named(git.resolve("objects"), INCOMING));
		for (Path keep : named(packs(git), Pattern.compile("pack-\\w+\\.keep"))) {
			if (isOfExchange(keep)) {
				found.add(keep);
			}
		}
		return found;
	}

	/** Deletes what is in the way and has been there for longer than any exchange leaves it so, as far as that can be done. */
	static void clear(Path git, Instant before) {
		try {
			for (Path file : inTheWay(git)) {
				if (Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant().isBefore(before)) {
					Files.deleteIfExists(file);
				}
			}
		} catch (IOException e) {
			// read-only, say: what is sent there fails next, and that is told
		}
	}

	private static boolean isOfExchange(Path keep) throws IOException {
		try (InputStream in = Files.newInputStream(keep, LinkOption.NOFOLLOW_LINKS)) {
			String text = new String(in.readNBytes(100), StandardCharsets.ISO_8859_1);
			return KEPT_BY.stream().anyMatch(text::startsWith);
		}
	}

	private static Path packs(Path git) {
		return git.resolve("objects").resolve("pack");
	}

	private static List<Path> named(Path folder, Pattern pattern) throws IOException {
		if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
			return List.of();
		}
		try (Stream<Path> files = Files.list(folder)) {
			return files
					.filter(file -> pattern.matcher(file.getFileName().toString()).matches()
							&& Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
					.toList();
		}
	}
}
