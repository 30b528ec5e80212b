package org.cairnfield.archive.history;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitAudit;
import org.cairnfield.archive.internal.text.FileKind;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.LedgerLines;

/**
 * Whether ledgers have only grown, from each commit to the next. Restoring a state and undoing a save point take verdicts
 * away too; such commits are recognised by what they have done and not only by what they say: a restored state is
 * that of the earlier one that it names, and what an undo took away is what the save point that it names had added.
 */
final class LedgerAudit {

	private static final Pattern RESTORE = Pattern.compile("Restore ([0-9a-f]{8,40}): .*");
	private static final Pattern UNDO = Pattern.compile("Undo ([0-9a-f]{8,40}): .*");

	private final GitAudit git;
	private final Map<String, Commit> commits = new LinkedHashMap<>();
	private final Map<String, List<String>> lines = new HashMap<>();
	private final Map<String, SortedMap<String, String>> ledgers = new HashMap<>();

	LedgerAudit(GitAudit git, Collection<Commit> commits) {
		this.git = git;
		commits.forEach(commit -> this.commits.put(commit.id(), commit));
	}

	/**
	 * @param present lines of the ledgers of the last save point, by path
	 * @param tagged  the commits that were released
	 */
	List<LedgerLoss> losses(Map<String, List<String>> present, Collection<Commit> tagged) throws IOException {
		List<LedgerLoss> losses = new ArrayList<>();
		for (Commit commit : commits.values()) {
			for (String parent : commit.parents()) {
				Commit before = commits.get(parent);
				if (before != null) {
					for (Loss loss : lost(before, commit)) {
						losses.add(loss.told(commit.id().substring(0, 8), isPutBack(loss, commit, present, tagged)));
					}
				}
			}
		}
		return losses;
	}

	/** How a line can be other than it was. */
	enum Way {
		GONE, CHANGED, MOVED;

		String word() {
			return name().toLowerCase(Locale.ROOT);
		}
	}

	/** Lines of a file that are not as they were. */
	record Loss(String file, Way way, List<String> lines) {

		LedgerLoss told(String where, boolean putBack) {
			return new LedgerLoss(where, file, way.word(), lines.size(), lines.get(0), putBack);
		}
	}

	/** What one commit has lost of what one that it came from had, and neither an undo nor another side explains. */
	List<Loss> lost(Commit before, Commit after) throws IOException {
		SortedMap<String, String> then = ledgers(before);
		SortedMap<String, String> now = ledgers(after);
		if (then.equals(now) || isRestored(after)) {
			return List.of();
		}
		List<Loss> found = new ArrayList<>();
		for (Map.Entry<String, String> file : then.entrySet()) {
			if (!file.getValue().equals(now.get(file.getKey()))) {
				for (Loss loss : compare(file.getKey(), lines(file.getValue()), lines(now.get(file.getKey())))) {
					List<String> left = loss.lines().stream().filter(unexplained(before, after, file.getKey()))
							.toList();
					if (!left.isEmpty()) {
						found.add(new Loss(loss.file(), loss.way(), left));
					}
				}
			}
		}
		return found;
	}

	/** What lines of a ledger are gone, changed or moved. */
	private static List<Loss> compare(String file, List<String> before, List<String> after) {
		Map<String, Integer> places = new HashMap<>();
		Set<String> ids = new HashSet<>();
		for (int i = 0; i < after.size(); i++) {
			places.put(after.get(i), i);
			ids.add(LedgerLines.id(after.get(i)));
		}
		List<String> gone = new ArrayList<>();
		List<String> changed = new ArrayList<>();
		List<String> moved = new ArrayList<>();
		int last = -1;
		for (String line : before) {
			Integer place = places.get(line);
			if (place == null) {
				(ids.contains(LedgerLines.id(line)) ? changed : gone).add(line);
			} else if (place <= last) {
				moved.add(line);
			} else {
				last = place;
			}
		}
		List<Loss> found = new ArrayList<>();
		Map.of(Way.GONE, gone, Way.CHANGED, changed, Way.MOVED, moved).forEach((way, lines) -> {
			if (!lines.isEmpty()) {
				found.add(new Loss(file, way, lines));
			}
		});
		return found;
	}

	/** The same between a save point and files that no save point has yet. */
	static List<LedgerLoss> inFolder(Map<String, List<String>> saved, Map<String, List<String>> folder) {
		List<LedgerLoss> found = new ArrayList<>();
		saved.forEach((path, lines) -> compare(path, lines, folder.getOrDefault(path, List.of()))
				.forEach(loss -> found.add(loss.told(Messages.LedgerAudit_theFolder, false))));
		return found;
	}

	private boolean isRestored(Commit commit) throws IOException {
		Commit named = named(RESTORE, commit);
		return named != null && content(named).equals(content(commit));
	}

	/** All that restoring puts back: releases and the list of people stay as they are, and files of others are not touched. */
	private SortedMap<String, String> content(Commit commit) throws IOException {
		SortedMap<String, String> content = git.files(commit);
		content.keySet().removeIf(path -> !ArchiveLayout.isPart(path) || ArchiveLayout.outlivesRestoring(path));
		return content;
	}

	/** Which lines that are missing no undo and no merge explains. */
	private Predicate<String> unexplained(Commit before, Commit after, String file) throws IOException {
		Commit undone = named(UNDO, after);
		if (undone != null && !undone.parents().isEmpty() && commits.containsKey(undone.parents().get(0))) {
			Set<String> added = new HashSet<>(lines(ledgers(undone).get(file)));
			lines(ledgers(commits.get(undone.parents().get(0))).get(file)).forEach(added::remove);
			return line -> !added.contains(line);
		}
		Set<String> elsewhere = new HashSet<>();
		for (String id : after.parents()) {
			Commit other = commits.get(id);
			if (other != null && !other.id().equals(before.id())) { // what that side took away was judged there
				Set<String> had = new HashSet<>();
				for (String common : ancestors(other)) {
					had.addAll(lines(ledgers(commits.get(common)).get(file)));
				}
				lines(ledgers(other).get(file)).forEach(had::remove);
				elsewhere.addAll(had);
			}
		}
		return line -> !elsewhere.contains(line);
	}

	/** The earlier commit that the first line of a message names; null where it names none. */
	private Commit named(Pattern opening, Commit commit) {
		Matcher matcher = opening.matcher(commit.message().lines().findFirst().orElse(""));
		if (!matcher.matches()) {
			return null;
		}
		return ancestors(commit).stream().filter(id -> id.startsWith(matcher.group(1))).map(commits::get).findFirst()
				.orElse(null);
	}

	Set<String> ancestors(Commit commit) {
		Set<String> found = new HashSet<>();
		Deque<String> waiting = new ArrayDeque<>(commit.parents());
		while (!waiting.isEmpty()) {
			Commit next = commits.get(waiting.pop());
			if (next != null && found.add(next.id())) {
				waiting.addAll(next.parents());
			}
		}
		return found;
	}

	private boolean isPutBack(Loss loss, Commit where, Map<String, List<String>> present, Collection<Commit> tagged)
			throws IOException {
		if (loss.way() == Way.MOVED || !present.getOrDefault(loss.file(), List.of()).containsAll(loss.lines())) {
			return false;
		}
		for (Commit release : tagged) {
			boolean since = release.id().equals(where.id()) || ancestors(release).contains(where.id());
			if (since && !lines(ledgers(release).get(loss.file())).containsAll(loss.lines())) {
				return false;
			}
		}
		return true;
	}

	private SortedMap<String, String> ledgers(Commit commit) throws IOException {
		SortedMap<String, String> known = ledgers.get(commit.id());
		if (known == null) {
			known = new TreeMap<>(git.filesIn("ledger", commit));
			known.keySet().removeIf(path -> ArchiveLayout.kind(path) != FileKind.LEDGER);
			ledgers.put(commit.id(), known);
		}
		return known;
	}

	private List<String> lines(String blob) throws IOException {
		List<String> known = blob == null ? List.of() : lines.get(blob);
		if (known == null) {
			known = LedgerLines.of(git.content(blob));
			if (lines.size() > 8) { // a history looks at neighbours
				lines.clear();
			}
			lines.put(Objects.requireNonNull(blob), known);
		}
		return known;
	}

	/** Lines of the ledgers of a commit that none of those has that it came from, by path. */
	Map<String, List<String>> added(Commit commit) throws IOException {
		Map<String, List<String>> found = new TreeMap<>();
		for (Map.Entry<String, String> file : ledgers(commit).entrySet()) {
			Set<String> known = new HashSet<>();
			boolean same = false;
			for (String id : commit.parents()) {
				Commit parent = commits.get(id);
				String before = parent == null ? null : ledgers(parent).get(file.getKey());
				same |= file.getValue().equals(before);
				known.addAll(lines(before));
			}
			List<String> added = same ? List.of()
					: lines(file.getValue()).stream().filter(line -> !known.contains(line)).toList();
			if (!added.isEmpty()) {
				found.put(file.getKey(), added);
			}
		}
		return found;
	}

	/** The lines of all ledgers of a commit, by path. */
	Map<String, List<String>> linesOf(Commit commit) throws IOException {
		Map<String, List<String>> found = new TreeMap<>();
		for (Map.Entry<String, String> file : ledgers(commit).entrySet()) {
			found.put(file.getKey(), lines(file.getValue()));
		}
		return found;
	}
}
