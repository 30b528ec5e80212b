package org.cairnfield.archive.internal.git;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;

/** How commits follow from each other. */
public final class Ancestry {

	private final Repository repository;

	Ancestry(Repository repository) {
		this.repository = repository;
	}

	/** Whether a commit is another or came before it. */
	public boolean isIn(String commit, String later) throws IOException {
		try (RevWalk walk = new RevWalk(repository)) {
			return walk.isMergedInto(walk.parseCommit(ObjectId.fromString(commit)),
					walk.parseCommit(ObjectId.fromString(later)));
		}
	}

	/** Commits that both came from, and nothing later; none where they have nothing in common, several where people merged crosswise. */
	public List<Commit> bases(String one, String other) throws IOException {
		List<Commit> bases = new ArrayList<>();
		try (RevWalk walk = new RevWalk(repository)) {
			walk.setRevFilter(RevFilter.MERGE_BASE);
			walk.markStart(walk.parseCommit(ObjectId.fromString(one)));
			walk.markStart(walk.parseCommit(ObjectId.fromString(other)));
			for (RevCommit base = walk.next(); base != null; base = walk.next()) {
				bases.add(GitFolder.commit(walk.parseCommit(base)));
			}
		}
		return bases;
	}

	/**
	 * What came since.
	 *
	 * @param without what is in this commit is left out; null: nothing is
	 * @return the earliest first
	 */
	public List<Commit> since(String commit, String without) throws IOException {
		List<Commit> commits = new ArrayList<>();
		try (RevWalk walk = new RevWalk(repository)) {
			walk.sort(RevSort.TOPO);
			walk.sort(RevSort.REVERSE, true);
			walk.markStart(walk.parseCommit(ObjectId.fromString(commit)));
			if (without != null) {
				walk.markUninteresting(walk.parseCommit(ObjectId.fromString(without)));
			}
			for (RevCommit each = walk.next(); each != null; each = walk.next()) {
				commits.add(GitFolder.commit(each));
			}
		}
		return commits;
	}
}
