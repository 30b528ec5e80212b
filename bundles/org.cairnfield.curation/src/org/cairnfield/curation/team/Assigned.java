package org.cairnfield.curation.team;

import java.time.Instant;
import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;

/**
 * An assignment as a value for any thread.
 *
 * @param split  id of the split
 * @param person who assigned it
 */
public record Assigned(String id, String split, String reviewer, Share share, String person, Instant time) {

	static Assigned of(Assignment assignment) {
		return new Assigned(assignment.getId(), assignment.getSplit(), assignment.getReviewer(), Share.kept(assignment.getShare()),
				assignment.getPerson(), assignment.getTime());
	}

	/** All of an archive, those of splits that are gone included. */
	public static List<Assigned> of(Archive archive) {
		return archive.getAssignments().stream().map(Assigned::of).toList();
	}

	/** Those of a split. */
	public static List<Assigned> of(Archive archive, String split) {
		return archive.getAssignments().stream().filter(each -> split.equals(each.getSplit())).map(Assigned::of).toList();
	}
}
