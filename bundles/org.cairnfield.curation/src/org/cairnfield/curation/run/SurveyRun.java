package org.cairnfield.curation.run;

import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.clean.FewReadings;
import org.cairnfield.curation.measure.Measurement;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.split.Split;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.UnfitSurveyException;

/**
 * The whole job on survey samples: clean, split, propose, measure.
 *
 * @param training  the samples before cleaning, without the held-out ones
 * @param test      given, or held out by whole blocks of positions
 * @param heldOut   whether the test samples were held out
 * @param cleaning  what was set aside
 * @param split     of the cleaned training samples
 * @param proposals for its noise
 * @param measured  on the test samples
 */
public record SurveyRun(RadioMap training, RadioMap test, boolean heldOut, FewReadings cleaning, Split split,
		Proposals proposals, Measurement measured) {

	/** Held out where no test survey is given. */
	public static final double HELD_OUT_SHARE = 0.2;

	/**
	 * @param samples the survey
	 * @param test    a test survey, or null to hold out a fifth of the samples
	 * @throws UnfitSurveyException where too little is left to work with
	 */
	public static SurveyRun of(RadioMap samples, RadioMap test, SplitRequest request, ProposalRule rule,
			Workers workers) {
		RadioMap training = samples;
		RadioMap asked = test;
		if (test == null) {
			boolean[] out = PositionBlocks.of(samples).holdOut(HELD_OUT_SHARE, request.seed());
			training = samples.view(IntStream.range(0, out.length).filter(s -> !out[s]).toArray());
			asked = samples.view(IntStream.range(0, out.length).filter(s -> out[s]).toArray());
		}
		FewReadings cleaning = FewReadings.setAside(training);
		if (cleaning.kept().size() < 2) {
			throw new UnfitSurveyException("a map needs two samples at least, and " + cleaning.kept().size() + " of "
					+ samples.size() + " can be used: " + cleaning.summary() + (test != null ? ""
							: "; " + asked.size() + " held out for testing, unless a test survey is given"));
		}
		Split split = Split.of(cleaning.kept(), request, workers);
		Proposals proposals = Proposals.of(split, rule, workers);
		Measurement measured = Measurement.of(proposals, asked, request.seed(), workers);
		return new SurveyRun(training, asked, test == null, cleaning, split, proposals, measured);
	}
}
