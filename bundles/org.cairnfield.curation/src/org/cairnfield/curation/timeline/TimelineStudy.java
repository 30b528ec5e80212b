package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;

/**
 * All that is known of how the map of a site has aged.
 *
 * @param first by step of the timeline, the error of a map of the first survey alone
 * @param aged  what was released before, on the surveys that came after
 * @param plan  what can be done; empty where there is no older map
 */
public record TimelineStudy(Timeline timeline, TimelineTable table, List<SurveyError> first, List<AgeingRow> aged,
		Optional<AgePlan> plan) {

	public TimelineStudy {
		first = List.copyOf(first);
		aged = List.copyOf(aged);
	}

	/**
	 * Works it out.
	 *
	 * @param archive  that nobody changes meanwhile
	 * @param releases archives as they were released, by version
	 */
	public static TimelineStudy of(Archive archive, Site site, Map<String, Archive> releases, Workers workers) {
		workers.progress().begin(Messages.TimelineStudy_comparingSurveys, 4);
		SurveyMaps surveys = SurveyMaps.of(archive, site, SurveyKind.TRAINING);
		Timeline timeline = Timeline.of(surveys, site, workers.quietly());
		workers.progress().advance(1);
		TimelineTable table = TimelineTable.of(surveys, timeline);
		List<SurveyError> first = ofFirst(surveys.byId(), timeline, workers.quietly());
		workers.progress().advance(1);
		List<AgeingRow> aged = new ArrayList<>();
		new LinkedHashMap<>(releases)
				.forEach((version, then) -> Ageing.of(version, then, archive, workers.quietly()).stream()
						.filter(row -> row.site().equals(site.getId())).forEach(aged::add));
		workers.progress().advance(1);
		Optional<AgePlan> plan = AgeRemedies.of(archive, site, workers.quietly());
		workers.progress().advance(1);
		return new TimelineStudy(timeline, table, first, aged, plan);
	}

	private static List<SurveyError> ofFirst(Map<String, RadioMap> maps, Timeline timeline, Workers workers) {
		List<SurveyError> errors = new ArrayList<>();
		for (TimelineStep step : timeline.steps()) {
			workers.checkCancelled();
			errors.add(step.before().isEmpty() ? SurveyError.NONE
					: SurveyError.of(maps.get(timeline.steps().get(0).survey()), maps.get(step.survey()), workers));
		}
		return errors;
	}
}
