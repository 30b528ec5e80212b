package org.cairnfield.curation.team;

import java.time.Instant;
import java.util.Comparator;
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

	/** As they were made; parts of one work by number. */
	private static final Comparator<Assigned> ORDER = Comparator
			.comparing(Assigned::time, Comparator.nullsFirst(Comparator.naturalOrder()))
			.thenComparing(assigned -> String.valueOf(assigned.share)).thenComparing(Assigned::id);

	static Assigned of(Assignment assignment) {
		return new Assigned(assignment.getId(), assignment.getSplit(), assignment.getReviewer(),
				Share.kept(assignment.getShare()),
				assignment.getPerson(), assignment.getTime());
	}

	/** All of an archive in the order in which they were made, those of splits that are gone included. */
	public static List<Assigned> of(Archive archive) {
		return archive.getAssignments().stream().map(Assigned::of).sorted(ORDER).toList();
	}

	/** Those of a split. */
	public static List<Assigned> of(Archive archive, String split) {
		return archive.getAssignments().stream().filter(each -> split.equals(each.getSplit())).map(Assigned::of)
				.sorted(ORDER).toList();
	}
}
