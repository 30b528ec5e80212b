package org.cairnfield.ui.review.internal.split;

import java.util.Locale;

import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.split.Trial;

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
		String noise = String.format(Locale.ROOT, "%s noise (%,d of %,d kept training samples)", percent(trial.noiseShare()), trial.noise(),
				samples);
		String proposals = trial.noiseShare() >= gate ? "; proposals can be made"
				: "; no proposals under the gate of " + percent(gate);
		String advice = trial.largestShare() > 0.5 ? "\n▲ One cluster holds most of the map, which saves few comparisons. Try a smaller ε." : "";
		return count(trial.clusters(), "cluster", "clusters") + ", the largest " + percent(trial.largestShare()) + "; " + noise + proposals
				+ '.' + advice;
	}

	/** Cost and error, and what they are computed from. */
	static String facts(SplitFacts facts) {
		if (facts.clusters() == 0) {
			return "Without a cluster nothing can be found by it.";
		}
		String cost = String.format(Locale.ROOT, "%.0f comparisons per query (%s of plain)", facts.comparisonsPerQuery(),
				percent(facts.comparisonShare()));
		String error = Double.isNaN(facts.meanErrorMetres()) ? ""
				: String.format(Locale.ROOT, "; mean error %.2f m without the noise, plain %.2f m", facts.meanErrorMetres(),
						facts.plainErrorMetres());
		return cost + error + (error.isEmpty() ? "" : "; errors of " + facts.basis()) + '.';
	}
}
