package org.cairnfield.archive;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.cairnfield.archive.internal.git.Commit;
import org.cairnfield.archive.internal.git.GitFolder;
import org.cairnfield.archive.internal.git.TreeFiles;
import org.cairnfield.archive.internal.merge.Authors;
import org.cairnfield.archive.internal.merge.GateLines;
import org.cairnfield.archive.internal.resource.ArchiveReader;
import org.cairnfield.archive.internal.text.ArchiveLayout;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.model.Archive;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;

/** Finds out in the history who has set what since both sides were one. Costs reading the states of that side, once. */
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
		Commit last = null;
		for (Commit commit : commits) {
			if (commit.parents().size() == 1) { // a merge sets nothing by itself
				last = commit;
				if (sets(commit, unit, value)) {
					return new Author(commit.author(), commit.time());
				}
			}
		}
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
				return Objects.equals(gate(commit.id(), unit), value) && !Objects.equals(gate(commit.parents().get(0), unit), value);
			}
			Archive after = state(commit.id());
			Archive before = state(commit.parents().get(0));
			if (unit.name().equals(Unit.PRESENCE)) {
				return value == null ? !Units.isThere(after, unit) && Units.isThere(before, unit) : Units.isThere(after, unit);
			}
			return Objects.equals(Units.get(after, unit), value) && !Objects.equals(Units.get(before, unit), value);
		}
		return false;
	}

	/** Whether the files differ that a unit is in; those of samples are told apart by survey, all else is taken together. */
	private boolean isTouched(Commit commit, Unit unit) throws IOException {
		TreeFiles after = git.files(commit, ArchiveLayout::isPart);
		TreeFiles before = git.files(git.find(commit.parents().get(0)), ArchiveLayout::isPart);
		boolean ofSample = Place.sample(unit.place()) != null;
		for (TreeFiles side : List.of(after, before)) {
			for (String path : side.paths()) {
				if ((!ofSample || path.startsWith("surveys/")) && !Objects.equals(after.blob(path), before.blob(path))) {
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
			known = ArchiveReader.read(git.files(git.find(commit), ArchiveLayout::isPart), migrations, ArchiveReader.VOUCHED).archive();
			states.put(commit, known);
		}
		return known;
	}
}
