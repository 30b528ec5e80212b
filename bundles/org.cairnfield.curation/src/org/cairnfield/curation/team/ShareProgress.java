package org.cairnfield.curation.team;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.curation.decide.Agreement;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;

/**
 * How far a reviewer has come with what is assigned to them. Each proposal is counted once: given, by others, to do or
 * disputed.
 *
 * @param proposals  how many are assigned
 * @param given      of them, how many this person has decided
 * @param byOthers   how many somebody else has decided, so that nothing is left to this person
 * @param toDo       how many this person has still to decide, deferred and stale ones included
 * @param secondsDue of those to do, how many wait for a second reviewer
 * @param disputed   about how many two reviewers disagree
 * @param agreement  of this person with others, on all proposals of the split
 */
public record ShareProgress(String reviewer, List<Assigned> shares, int proposals, int given, int byOthers, int toDo,
		int secondsDue, int disputed,
		Agreement agreement) {

	static ShareProgress of(String reviewer, List<Assigned> shares, List<Standing> standings, Agreement agreement) {
		int given = 0;
		int byOthers = 0;
		int toDo = 0;
		int secondsDue = 0;
		int disputed = 0;
		for (Standing standing : standings) {
			if (standing.state() == ReviewState.DISPUTED) {
				disputed++;
			} else if (standing.seenBy(reviewer).state().isOpen()) {
				toDo++;
				secondsDue += standing.canBeSecond(reviewer) ? 1 : 0;
			} else if (Stream.of(standing.first(), standing.second(), standing.resolution()).flatMap(Optional::stream)
					.anyMatch(entry -> entry.isBy(reviewer))) {
				given++;
			} else {
				byOthers++;
			}
		}
		return new ShareProgress(reviewer, shares, standings.size(), given, byOthers, toDo, secondsDue, disputed,
				agreement);
	}
}
