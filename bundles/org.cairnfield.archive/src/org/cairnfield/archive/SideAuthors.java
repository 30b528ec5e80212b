package org.cairnfield.archive;

import java.io.IOException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.merge.ArchiveMerge;
import org.cairnfield.archive.internal.merge.Authors;
import org.cairnfield.archive.internal.merge.GateLines;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.model.Archive;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.cairnfield.model.values.SampleTable;

/**
 * Finds out in the history who has set what since both sides were one: the earliest by time and name, so that it makes no
 * difference in which order the save points of several people came together. Costs reading the states of that side, once.
 */
final class SideAuthors implements Authors {

	private final GitFolder git;
	private final Migrations migrations;
	private final List<Commit> commits;
	private final Map<String, Archive> states = new HashMap<>();

	/** @param commits of the side since then, the earliest first */
	SideAuthors(GitFolder git, Migrations migrations, List<Commit> commits) {
		this.git = git;
		this.migrations = migrations;
		this.commits = commits;
	}

	@Override
	public Author of(Unit unit, String value) throws IOException {
		List<Commit> byTime = commits.stream().filter(commit -> commit.parents().size() == 1) // a merge sets nothing by itself
				.sorted(Comparator.comparing(Commit::time).thenComparing(Commit::author)).toList();
		for (Commit commit : byTime) {
			if (sets(commit, unit, value)) {
				return new Author(commit.author(), commit.time());
			}
		}
		Commit last = byTime.isEmpty() ? null : byTime.get(byTime.size() - 1);
		return last == null ? new Author("", null) : new Author(last.author(), last.time());
	}

	/** Who was the first to put the content into a file that it has now. */
	Author ofFile(String path) throws IOException {
		String content = commits.isEmpty() ? null : blob(commits.get(commits.size() - 1), path);
		for (Commit commit : commits) {
			if (commit.parents().size() == 1 && Objects.equals(blob(commit, path), content)
					&& !Objects.equals(blob(git.find(commit.parents().get(0)), path), content)) {
				return new Author(commit.author(), commit.time());
			}
		}
		return new Author("", null);
	}

	private String blob(Commit commit, String path) throws IOException {
		return git.files(commit, path::equals).blob(path);
	}

	private boolean sets(Commit commit, Unit unit, String value) throws IOException {
		if (isTouched(commit, unit)) {
			if (unit.place().equals(GateLines.PLACE)) {
				return Objects.equals(gate(commit.id(), unit), value)
						&& !Objects.equals(gate(commit.parents().get(0), unit), value);
			}
			Archive after = state(commit.id());
			Archive before = state(commit.parents().get(0));
			if (unit.name().equals(Unit.PRESENCE) && value == null) {
				return !Units.isThere(after, unit) && Units.isThere(before, unit)
						&& Place.find(after, Place.container(unit.place())) != null;
			}
			return Units.isThere(after, unit) && Objects.equals(Units.get(after, unit), value)
					&& (isOpen(before, unit) && !isOpen(after, unit)
							|| !Units.isThere(before, unit) || !says(before, unit).equals(says(after, unit)));
		}
		return false;
	}

	private static boolean isOpen(Archive archive, Unit unit) {
		return archive.getConflicts().stream().anyMatch(conflict -> Unit.of(conflict).equals(unit));
	}

	/** What it takes to change to be one who has set a unit that is there: who has changed anything of an object wants it kept. */
	private static Object says(Archive archive, Unit unit) {
		if (!unit.name().equals(Unit.PRESENCE)) {
			return Optional.ofNullable(Units.get(archive, unit));
		}
		String sample = Place.sample(unit.place());
		if (sample == null) {
			return ArchiveMerge.says(Place.find(archive, unit.place()));
		}
		SampleTable table = Place.survey(archive, unit.place()).table();
		return table.sample(table.row(sample));
	}

	/** Whether files differ that a unit is in: those of samples and, where it may be open, the one of all else. */
	private boolean isTouched(Commit commit, Unit unit) throws IOException {
		TreeFiles after = git.files(commit, ArchiveLayout::isPart);
		TreeFiles before = git.files(git.find(commit.parents().get(0)), ArchiveLayout::isPart);
		boolean ofSample = Place.sample(unit.place()) != null;
		for (TreeFiles side : List.of(after, before)) {
			for (String path : side.paths()) {
				if ((!ofSample || path.startsWith("surveys/") || path.equals(ArchiveLayout.STRUCTURE))
						&& !Objects.equals(after.blob(path), before.blob(path))) {
					return true;
				}
			}
		}
		return false;
	}

	private String gate(String commit, Unit unit) throws IOException {
		TreeFiles files = git.files(git.find(commit), ArchiveLayout.GATES::equals);
		return GateLines.value(MergedFiles.text(files, ArchiveLayout.GATES), unit.name());
	}

	private Archive state(String commit) throws IOException {
		Archive known = states.get(commit);
		if (known == null) {
			known = ArchiveReader
					.read(git.files(git.find(commit), ArchiveLayout::isPart), migrations, ArchiveReader.VOUCHED)
					.archive();
			states.put(commit, known);
		}
		return known;
	}
}
