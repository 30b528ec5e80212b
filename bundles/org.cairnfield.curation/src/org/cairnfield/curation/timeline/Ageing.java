package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.values.Scope;

/** How well maps locate the surveys that came after them. */
public final class Ageing {

	private Ageing() {
	}

	/**
	 * A map on all later surveys, training and test, by site and date.
	 *
	 * @param name of the map, see {@link AgeingRow#map}
	 * @param then the archive that the map was made of
	 * @param now  the archive with the later surveys; may be the same
	 */
	public static List<AgeingRow> of(String name, Archive then, Archive now, Workers workers) {
		List<AgeingRow> rows = new ArrayList<>();
		for (Site site : now.getSites()) {
			Optional<Site> before = ArchiveIndex.of(then).site(site.getId());
			Optional<LocalDate> newest = before.flatMap(Ageing::newest);
			if (newest.isEmpty()) {
				continue;
			}
			RadioMap map = ArchiveMap.of(then, Scope.site(site.getId()), SurveyKind.TRAINING).map();
			Map<String, RadioMap> surveys = new HashMap<>(SurveyMaps.of(now, site, SurveyKind.TRAINING).byId());
			surveys.putAll(SurveyMaps.of(now, site, SurveyKind.TEST).byId());
			for (Survey survey : site.getSurveys().stream()
					.filter(each -> each.getDate() != null && each.getDate().isAfter(newest.get()))
					.sorted(Comparator.comparing(Survey::getDate).thenComparing(Survey::getId)).toList()) {
				workers.checkCancelled();
				rows.add(new AgeingRow(name, site.getId(), newest.get(), survey.getId(), survey.getDate(),
						SurveyError.of(map, surveys.get(survey.getId()), workers)));
			}
		}
		return rows;
	}

	private static Optional<LocalDate> newest(Site site) {
		return site.getSurveys().stream()
				.filter(survey -> survey.getKind() == SurveyKind.TRAINING && survey.getDate() != null)
				.map(Survey::getDate)
				.max(Comparator.naturalOrder());
	}
}
