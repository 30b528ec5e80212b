package org.cairnfield.curation.release;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.HistoryCheck;
import org.cairnfield.archive.history.LedgerLoss;
import org.cairnfield.archive.history.ReleaseTag;
import org.cairnfield.core.text.Words;

/** Whether an archive and all its releases still are what they were. Changes nothing in the archive. */
public final class ArchiveVerification {

	private static final int SHOWN = 10;

	private final Path folder;
	private final History history;
	private final HistoryCheck check;
	private final KnownReleases known;
	private final List<String> notes = new ArrayList<>();

	/** @param known what is compared with, and what sound releases are added to */
	public ArchiveVerification(Path folder, History history, KnownReleases known) {
		this.folder = folder;
		this.history = history;
		this.check = history.check();
		this.known = known;
	}

	/** Looks at every release, the highest version first, and last at the history as a whole. */
	public List<Verification> all() {
		List<ReleaseTag> tags = new ArrayList<>();
		List<Verification.Check> checks = new ArrayList<>();
		checks.add(Verification.check("tags", () -> {
			tags.addAll(releases(history));
			return shown(troubles().entrySet().stream().map(trouble -> trouble.getKey() + ": " + trouble.getValue())
					.toList());
		}));
		List<Verification> found = new ArrayList<>(tags.stream().map(this::of).toList());
		checks.add(Verification.check(Messages.ArchiveVerification_releasesWithoutATag,
				() -> shown(untagged(check, tags))));
		checks.add(Verification.check(Messages.ArchiveVerification_gitSFilesAndObjects, () -> shown(check.problems())));
		checks.add(Verification.check("completeness",
				() -> check.isShallow() ? Messages.ArchiveVerification_earlierSavePointsWereLeft : ""));
		checks.add(Verification.check("ledgers", this::ledgers));
		checks.add(Verification.check(Messages.ArchiveVerification_releasesThatWereSeenOn, () -> seen(tags, found)));
		found.add(new Verification(Messages.ArchiveVerification_theHistory, List.copyOf(checks), null,
				List.copyOf(notes)));
		return List.copyOf(found);
	}

	/** Looks at one release. */
	public Verification of(ReleaseTag tag) {
		return Verification.ofRelease(folder, history, check, tag);
	}

	/** The releases of a history, the highest version first. */
	public static List<ReleaseTag> releases(History history) {
		return history.releases().stream().filter(t -> SemanticVersion.is(t.version()))
				.sorted(Comparator.comparing((ReleaseTag t) -> SemanticVersion.parse(t.version())).reversed()).toList();
	}

	/** What a person should know before relying on a list of releases: tags that are none, and releases without one. Quick. */
	public static List<String> gaps(History history) throws IOException {
		HistoryCheck check = history.check();
		List<String> gaps = new ArrayList<>();
		check.tagTroubles().forEach((name, trouble) -> {
			if (SemanticVersion.is(name)) {
				gaps.add(Words.bind(Messages.ArchiveVerification_tag, name, trouble));
			}
		});
		gaps.addAll(untagged(check, releases(history)));
		return gaps;
	}

	/** People may have tags of other names, of whatever kind. */
	private SortedMap<String, String> troubles() {
		SortedMap<String, String> troubles = check.tagTroubles();
		troubles.keySet().removeIf(name -> !SemanticVersion.is(name));
		return troubles;
	}

	private static List<String> untagged(HistoryCheck check, List<ReleaseTag> tags) throws IOException {
		return UntaggedRelease.in(check, tags).stream().map(UntaggedRelease::toString).toList();
	}

	private String ledgers() throws IOException {
		List<LedgerLoss> losses = check.ledgerLosses();
		losses.stream().filter(LedgerLoss::putBack).forEach(loss -> notes.add(loss.toString()));
		return shown(losses.stream().filter(loss -> !loss.putBack()).map(LedgerLoss::toString).toList());
	}

	private String seen(List<ReleaseTag> tags, List<Verification> verified) throws IOException {
		Optional<String> beginning = check.isShallow() ? Optional.empty() : check.beginning();
		if (beginning.isEmpty()) {
			return "";
		}
		List<String> contradictions = known.contradictions(beginning.get(), tags);
		List<ReleaseTag> sound = new ArrayList<>();
		for (int i = 0; i < tags.size(); i++) {
			if (verified.get(i).isSound()) {
				sound.add(tags.get(i));
			}
		}
		Stream.of(known.remember(beginning.get(), sound)).filter(problem -> !problem.isEmpty()).forEach(notes::add);
		return shown(contradictions);
	}

	private static String shown(List<String> problems) {
		return String.join("; ", problems.subList(0, Math.min(SHOWN, problems.size())))
				+ (problems.size() > SHOWN
						? Words.bind(Messages.ArchiveVerification_andMore, problems.size() - SHOWN)
						: "");
	}
}
