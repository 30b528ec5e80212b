package org.cairnfield.curation.review;

import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.Command;

/** Which change of the archive a reviewer's choice is: a first verdict, a second one, or one that settles two. */
final class VerdictRules {

	private VerdictRules() {
	}

	/**
	 * The reason that goes with a verdict.
	 *
	 * @return null for none
	 * @throws ReviewRefused where the choice needs one
	 */
	static String reason(Choice choice, SampleKey sample, Draft draft, Evidence evidence) {
		String reason = choice.reason(draft.reason(), evidence);
		if (choice == Choice.REJECT && reason == null) {
			throw new ReviewRefused("the evidence gives no reason to reject " + sample.sample() + ": choose one (T), then press R");
		}
		return reason;
	}

	/**
	 * @param standing as the person may know it; null for not known
	 * @throws ReviewRefused where the person may not give this verdict
	 */
	static Command command(Review review, String person, Choice choice, SampleKey sample, Standing standing, String reason, String text) {
		if (choice == Choice.FAULTY) {
			return review.faulty(sample, text);
		}
		if (standing != null && standing.awaitsSecond()
				&& standing.first().filter(first -> first.isBy(person) && first.decision() == choice.decision()).isPresent()) {
			throw new ReviewRefused("you gave the first verdict on " + sample.sample() + ", so somebody else has to give the second");
		}
		if (standing != null && standing.state() == ReviewState.DISPUTED) {
			return review.resolve(sample, choice.decision(), reason, text);
		}
		return switch (choice) {
			case APPROVE -> review.approve(sample, reason, text);
			case REJECT -> review.reject(sample, reason, text);
			default -> review.defer(sample, reason, text);
		};
	}

	/** How a sample stands after a verdict that was not refused, unless a second reviewer gave it. */
	static ReviewState expected(Choice choice) {
		return switch (choice) {
			case APPROVE -> ReviewState.APPROVED;
			case REJECT -> ReviewState.REJECTED;
			case DEFER -> ReviewState.DEFERRED;
			case FAULTY -> ReviewState.SET_ASIDE;
		};
	}
}
