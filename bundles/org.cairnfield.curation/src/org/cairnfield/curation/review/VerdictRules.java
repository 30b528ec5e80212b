package org.cairnfield.curation.review;

import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Ruling;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.Decision;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.Command;

/** What a reviewer's choice says of a sample, and which change of the archive that is: a first verdict, a second one, or one that settles two. */
final class VerdictRules {

	private VerdictRules() {
	}

	/**
	 * @param evidence null where there is none
	 * @throws ReviewRefused where something is missing that the choice needs
	 */
	static Ruling ruling(Choice choice, SampleKey sample, RulingDraft draft, Evidence evidence) {
		String reason = choice.reason(draft.reason(), evidence);
		if (choice == Choice.APPROVE && reason == null && evidence != null) {
			throw new ReviewRefused(
					Words.bind(Messages.VerdictRules_theEvidenceOnWarnsChoose, sample.sample(), warnings(evidence)));
		}
		int cluster = choice == Choice.MOVE ? home(sample, draft.home(), evidence) : Ruling.NO_CLUSTER;
		return new Ruling(choice.decision(), cluster, reason, draft.text());
	}

	private static String warnings(Evidence evidence) {
		return evidence.marks().stream().map(Warning::word).collect(Collectors.joining(", "));
	}

	private static int home(SampleKey sample, String written, Evidence evidence) {
		if (written.isBlank()) {
			if (evidence == null || evidence.nearestCluster() < 0) {
				throw new ReviewRefused(
						Words.bind(Messages.VerdictRules_itIsNotKnownWhich, sample.sample()));
			}
			if (evidence.made() && evidence.agrees()) {
				throw new ReviewRefused(
						Words.bind(Messages.VerdictRules_theNearestLabelledSampleIs, evidence.cluster()));
			}
			return evidence.nearestCluster();
		}
		String number = written.strip().replaceFirst("^[Cc]", "");
		if (!number.matches("\\d{1,9}")) {
			throw new ReviewRefused(Words.bind(Messages.VerdictRules_isNoNumberOfA, written.strip()));
		}
		return Integer.parseInt(number);
	}

	/**
	 * @param standing as the person may know it; null for not known
	 * @throws ReviewRefused where the person may not give this verdict
	 */
	static Command command(Review review, String person, SampleKey sample, Standing standing, Ruling ruling) {
		if (ruling.decision() == Decision.FAULTY || standing == null) {
			return review.decide(sample, ruling);
		}
		if (standing.awaitsSecond()
				&& standing.first().filter(first -> first.isBy(person) && first.says(ruling)).isPresent()) {
			throw new ReviewRefused(
					Words.bind(Messages.VerdictRules_youGaveTheFirstVerdict, sample.sample()));
		}
		return standing.state() == ReviewState.DISPUTED ? review.resolve(sample, ruling)
				: review.decide(sample, ruling);
	}
}
