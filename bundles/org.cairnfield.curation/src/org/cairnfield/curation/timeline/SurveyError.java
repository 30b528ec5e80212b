package org.cairnfield.curation.timeline;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.TestRun;

/**
 * How well a map locates a survey.
 *
 * @param metres   mean error in the plane, of the means at each place of the survey, by three weighted neighbours; NaN where the
 *                 map or the survey is empty
 * @param interval of 95 %, over places, since the samples of one place are no trials of their own
 */
public record SurveyError(double metres, Interval interval) {

	static final SurveyError NONE = new SurveyError(Double.NaN, new Interval(Double.NaN, Double.NaN, 0.95));
	private static final long SEED = 1;

	static SurveyError of(RadioMap map, RadioMap survey, Workers workers) {
		if (map.size() == 0 || survey.size() == 0) {
			return NONE;
		}
		return of(errors(map, survey, workers));
	}

	/** @param errors of places, in metres; NaN where none is known */
	static SurveyError of(double[] errors) {
		double[] known = Arrays.stream(errors).filter(error -> !Double.isNaN(error)).toArray();
		return known.length == 0 ? NONE
				: new SurveyError(Arrays.stream(known).average().orElse(Double.NaN), interval(known));
	}

	/** Of the mean of some figures, of 95 %. */
	static Interval interval(double[] figures) {
		return Bootstrap.seeded(SEED).mean(figures);
	}

	/** By place of the survey, in its order: the mean error there; NaN where nothing is found. */
	static double[] errors(RadioMap map, RadioMap survey, Workers workers) {
		Signals signals = Signals.of(map);
		SignalRows queries = signals.align(survey);
		Estimates found = Estimates.of(TestRun.plainWeighted(new Neighbours(signals)), queries, workers);
		Map<List<Object>, double[]> places = new LinkedHashMap<>();
		for (int s = 0; s < survey.size(); s++) {
			double[] sum = places.computeIfAbsent(List.of(survey.floor(s), survey.x(s), survey.y(s)),
					place -> new double[2]);
			double error = Math.hypot(found.x(s) - survey.x(s), found.y(s) - survey.y(s));
			if (!Double.isNaN(error)) {
				sum[0] += error;
				sum[1]++;
			}
		}
		return places.values().stream().mapToDouble(sum -> sum[0] / sum[1]).toArray();
	}

	/** Whether there is one. */
	public boolean isKnown() {
		return !Double.isNaN(metres);
	}
}
