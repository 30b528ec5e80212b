package org.cairnfield.ui.review.internal.split;

import java.util.Locale;

import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.split.Trial;
import org.eclipse.osgi.util.NLS;

/** Figures of splits in words, with units. */
final class SplitWords {

	private SplitWords() {
	}

	/** An ε with its unit. */
	static String epsilon(double epsilon, String unit) {
		String number = epsilon >= 100 || epsilon == Math.rint(epsilon) ? String.format(Locale.ROOT, "%.0f", epsilon)
				: String.format(Locale.ROOT, "%.4g", epsilon);
		return unit.isEmpty() ? number : number + ' ' + unit;
	}

	static String percent(double share) {
		return String.format(Locale.ROOT, "%.1f %%", 100 * share);
	}

	static String count(long n, String one, String many) {
		return String.format(Locale.ROOT, "%,d %s", n, n == 1 ? one : many);
	}

	/** @param gate noise share at which proposals are made */
	static String trial(Trial trial, int samples, double gate) {
		String noise = String.format(Locale.ROOT, Messages.SplitWords_noiseOfKeptTrainingSamples,
				percent(trial.noiseShare()), trial.noise(),
				samples);
		String proposals = trial.noiseShare() >= gate ? Messages.SplitWords_proposalsCanBeMade
				: NLS.bind(Messages.SplitWords_noProposalsUnderTheGate, percent(gate));
		String advice = trial.largestShare() > 0.5 ? Messages.SplitWords_oneClusterHoldsMostOf : "";
		return NLS.bind(Messages.SplitWords_theLargest, new Object[] { count(trial.clusters(), "cluster", "clusters"),
				percent(trial.largestShare()), noise, proposals, advice });
	}

	/** Cost and error, and what they are computed from. */
	static String facts(SplitFacts facts) {
		if (facts.clusters() == 0) {
			return Messages.SplitWords_withoutAClusterNothingCan;
		}
		String cost = String.format(Locale.ROOT, Messages.SplitWords_comparisonsPerQueryOfPlain,
				facts.comparisonsPerQuery(),
				percent(facts.comparisonShare()));
		String error = Double.isNaN(facts.meanErrorMetres()) ? ""
				: String.format(Locale.ROOT, Messages.SplitWords_meanErrorMWithoutThe, facts.meanErrorMetres(),
						facts.plainErrorMetres());
		return cost + error + (error.isEmpty() ? "" : NLS.bind(Messages.SplitWords_errorsOf, facts.basis())) + '.';
	}
}
