package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;

/**
 * The training surveys of a site in order of time, each compared with those of the last date before it. Surveys without a date are
 * left out, for nobody knows where they belong.
 *
 * @param site    its id
 * @param undated ids of the surveys that were left out
 */
public record Timeline(String site, List<TimelineStep> steps, List<String> undated) {

	public Timeline {
		steps = List.copyOf(steps);
		undated = List.copyOf(undated);
	}

	/** @param archive that nobody changes meanwhile */
	public static Timeline of(Archive archive, Site site, Workers workers) {
		return of(SurveyMaps.of(archive, site, SurveyKind.TRAINING), site, workers);
	}

	static Timeline of(SurveyMaps surveys, Site site, Workers workers) {
		Map<String, RadioMap> maps = surveys.byId();
		SortedMap<LocalDate, SortedMap<String, RadioMap>> dates = new TreeMap<>();
		List<String> undated = new ArrayList<>();
		for (Survey survey : site.getSurveys()) {
			if (maps.containsKey(survey.getId()) && survey.getDate() == null) {
				undated.add(survey.getId());
			} else if (maps.containsKey(survey.getId())) {
				dates.computeIfAbsent(survey.getDate(), date -> new TreeMap<>()).put(survey.getId(),
						maps.get(survey.getId()));
			}
		}
		List<TimelineStep> steps = new ArrayList<>();
		SortedMap<String, RadioMap> before = new TreeMap<>();
		for (Map.Entry<LocalDate, SortedMap<String, RadioMap>> date : dates.entrySet()) {
			RadioMap then = surveys.together(before.values());
			for (Map.Entry<String, RadioMap> survey : date.getValue().entrySet()) {
				workers.checkCancelled();
				SiteChange change = SiteChange.between(then, survey.getValue(), ChangeLimits.SAME_PLACE_METRES);
				steps.add(new TimelineStep(survey.getKey(), date.getKey(), List.copyOf(before.keySet()),
						change.places() == 0 ? null : change,
						SurveyError.of(then, survey.getValue(), workers)));
			}
			before = date.getValue();
		}
		return new Timeline(site.getId(), steps, undated);
	}
}
