package org.cairnfield.curation.rules;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.FaultyCampus;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.cleaning.CleaningRules;

/**
 * What other values of each parameter would find on three simulated campuses with planted faults: half and double, levels 10 dB to
 * either side, shares half and half as much again. The reasons of thresholds that are measured on campuses quote it.
 */
final class ThresholdTrials {

	private static final double ASIDE_DBM = 10;
	private static final RuleScores.Score NONE = new RuleScores.Score(0, 0, 0, 0);

	private final List<SimulatedArchive> campuses = List.of(FaultyCampus.surveys(7701, CampusSize.of(3, 3, 140)),
			FaultyCampus.surveys(7702, CampusSize.of(2, 4, 120)), FaultyCampus.surveys(7703, CampusSize.of(4, 2, 190)));
	private final List<SurveyedMap> maps = campuses.stream().map(SimulatedSurveys::of).toList();

	private ThresholdTrials() {
	}

	/** Prints a line a trial. */
	public static void main(String[] args) {
		ThresholdTrials trials = new ThresholdTrials();
		for (Rule rule : CleaningRules.registry().all()) {
			trials.print(rule, "as usual", Settings.USUAL);
			for (Parameter parameter : rule.parameters()) {
				for (double value : others(parameter)) {
					double tried = Math.max(parameter.lowest(),
							Math.min(parameter.highest(), parameter.whole() ? Math.rint(value) : value));
					trials.print(rule, parameter.id() + " " + tried + ", not " + parameter.usual(),
							Settings.USUAL.with(parameter, tried));
				}
			}
		}
	}

	private static double[] others(Parameter parameter) {
		double usual = parameter.usual();
		if (parameter.unit().equals("dBm")) {
			return new double[] { usual - ASIDE_DBM, usual + ASIDE_DBM };
		}
		boolean share = parameter.unit().isEmpty() && !parameter.whole() && parameter.highest() == 1;
		return new double[] { usual / 2, share ? 1.5 * usual : 2 * usual };
	}

	private void print(Rule rule, String what, Settings settings) {
		RuleScores.Score sum = NONE;
		for (int i = 0; i < maps.size(); i++) {
			RunResult result = new RuleRun(List.of(rule), Map.of(rule.id(), settings)).over(maps.get(i),
					Workers.inline());
			RuleScores.Score score = new RuleScores(campuses.get(i), maps.get(i), result).all().getOrDefault(rule.id(),
					NONE);
			sum = new RuleScores.Score(sum.found() + score.found(), sum.right() + score.right(),
					sum.planted() + score.planted(),
					sum.met() + score.met());
		}
		System.out.printf(Locale.ROOT, "%-24s %-44s precision %.2f (%d/%d)  recall %.2f (%d/%d)%n", rule.id(), what,
				sum.precision(), sum.right(),
				sum.found(), sum.recall(), sum.met(), sum.planted());
	}
}
