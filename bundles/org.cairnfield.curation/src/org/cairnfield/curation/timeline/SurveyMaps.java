package org.cairnfield.curation.timeline;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;

/**
 * The surveys of a site, each as a map of its own, of samples that are kept with all that they heard.
 *
 * @param all  all of them in one map
 * @param byId views on it, in the order of the site
 */
record SurveyMaps(RadioMap all, Map<String, RadioMap> byId) {

	static SurveyMaps of(Archive archive, Site site, SurveyKind kind) {
		RadioMap all = ArchiveMap.recorded(archive, Scope.site(site.getId()), survey -> survey.getKind() == kind).map();
		Map<String, RadioMap> maps = new LinkedHashMap<>();
		int next = 0;
		for (Survey survey : site.getSurveys()) {
			if (survey.getKind() == kind) {
				int from = next;
				next += kept(survey);
				int to = next;
				maps.put(survey.getId(), all.where(s -> s >= from && s < to));
			}
		}
		return new SurveyMaps(all, maps);
	}

	/** Some of the views as one map. */
	RadioMap together(Collection<RadioMap> some) {
		return all.view(some.stream().flatMapToInt(map -> IntStream.range(0, map.size()).map(map::row)).toArray());
	}

	private static int kept(Survey survey) {
		int kept = 0;
		for (int row = 0; row < survey.table().size(); row++) {
			kept += survey.table().isKept(row) ? 1 : 0;
		}
		return kept;
	}
}
