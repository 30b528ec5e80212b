package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The training surveys of a site in order of time, each compared with those of the last date before it. Surveys without a date are
 * left out, for nobody knows where they belong.
 *
 * @param site    its id
 * @param undated ids of the surveys that were left out
 */
public record Timeline(String site, List<TimelineStep> steps, List<String> undated) {

	private static final long SEED = 1;

	public Timeline {
		steps = List.copyOf(steps);
		undated = List.copyOf(undated);
	}

	/** @param archive that nobody changes meanwhile */
	public static Timeline of(Archive archive, Site site, Workers workers) {
		RadioMap all = ArchiveMap.of(archive, Scope.site(site.getId()), SurveyKind.TRAINING).map();
		SortedMap<LocalDate, Map<String, RadioMap>> dates = new TreeMap<>();
		List<String> undated = new ArrayList<>();
		int next = 0;
		for (Survey survey : site.getSurveys()) {
			if (survey.getKind() != SurveyKind.TRAINING) {
				continue;
			}
			int from = next;
			next += kept(survey);
			int to = next;
			if (survey.getDate() == null) {
				undated.add(survey.getId());
			} else {
				dates.computeIfAbsent(survey.getDate(), date -> new LinkedHashMap<>()).put(survey.getId(), all.where(s -> s >= from && s < to));
			}
		}
		List<TimelineStep> steps = new ArrayList<>();
		Map<String, RadioMap> before = Map.of();
		for (Map.Entry<LocalDate, Map<String, RadioMap>> date : dates.entrySet()) {
			for (Map.Entry<String, RadioMap> survey : date.getValue().entrySet().stream().sorted(Map.Entry.comparingByKey()).toList()) {
				workers.checkCancelled();
				steps.add(step(survey.getKey(), date.getKey(), survey.getValue(), before, all, workers));
			}
			before = date.getValue();
		}
		return new Timeline(site.getId(), steps, undated);
	}

	private static int kept(Survey survey) {
		int kept = 0;
		for (int row = 0; row < survey.table().size(); row++) {
			kept += survey.table().isKept(row) ? 1 : 0;
		}
		return kept;
	}

	private static TimelineStep step(String survey, LocalDate date, RadioMap now, Map<String, RadioMap> before, RadioMap all, Workers workers) {
		int[] rows = before.values().stream().flatMapToInt(map -> IntStream.range(0, map.size()).map(map::row)).toArray();
		RadioMap then = all.view(rows);
		List<String> surveys = before.keySet().stream().sorted().toList();
		if (then.size() == 0 || now.size() == 0) {
			return new TimelineStep(survey, date, surveys, null, Double.NaN, new Interval(Double.NaN, Double.NaN, 0.95));
		}
		SiteChange change = SiteChange.between(then, now, SiteChange.SAME_PLACE_METRES);
		double[] errors = errors(then, now, workers);
		return new TimelineStep(survey, date, surveys, change.places() == 0 ? null : change, Arrays.stream(errors).average().orElse(Double.NaN),
				Bootstrap.seeded(SEED).mean(errors));
	}

	/** Mean error at each place of a survey; the samples of one place are no trials of their own. */
	private static double[] errors(RadioMap map, RadioMap survey, Workers workers) {
		Signals signals = Signals.of(map);
		SignalRows queries = signals.align(survey);
		Estimates found = Estimates.of(TestRun.plainWeighted(new Neighbours(signals)), queries, workers);
		Map<List<Object>, double[]> places = new LinkedHashMap<>();
		for (int s = 0; s < survey.size(); s++) {
			double[] sum = places.computeIfAbsent(List.of(survey.floor(s), survey.x(s), survey.y(s)), place -> new double[2]);
			double error = Math.hypot(found.x(s) - survey.x(s), found.y(s) - survey.y(s));
			if (!Double.isNaN(error)) {
				sum[0] += error;
				sum[1]++;
			}
		}
		return places.values().stream().filter(sum -> sum[1] > 0).mapToDouble(sum -> sum[0] / sum[1]).toArray();
	}
}
