package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Count;
import org.cairnfield.model.values.Scope;

/**
 * How old the map of a site is, and what the latest survey says of it.
 *
 * @param site   its name
 * @param from   of the days of the surveys that make the map, the first; null where none has a date
 * @param until  likewise the last
 * @param latest day of the latest survey of the site, of the map or not; null where none has a date
 * @param left   training surveys with a date that are no part of the map
 * @param change between the rest of the map and the latest survey; null where there is nothing to compare
 * @param error  of the rest of the map on the latest survey
 */
public record MapAge(String site, LocalDate from, LocalDate until, LocalDate latest, int left, SiteChange change,
		SurveyError error) {

	/** Of all sites that have a sample in the map, in the order of the archive. @param archive that nobody changes meanwhile */
	public static List<MapAge> of(Archive archive, Workers workers) {
		List<MapAge> ages = new ArrayList<>();
		for (Site site : archive.getSites()) {
			workers.checkCancelled();
			if (site.getSurveys().stream()
					.anyMatch(survey -> ArchiveMap.isOfTheMap(survey) && survey.table().size() > 0)) {
				ages.add(of(archive, site, workers));
			}
		}
		return ages;
	}

	private static MapAge of(Archive archive, Site site, Workers workers) {
		List<LocalDate> days = days(site, ArchiveMap::isOfTheMap);
		List<LocalDate> all = days(site, survey -> true);
		int left = (int) site.getSurveys().stream()
				.filter(survey -> survey.getKind() == SurveyKind.TRAINING && survey.getDate() != null
						&& !ArchiveMap.isOfTheMap(survey))
				.count();
		LocalDate from = days.isEmpty() ? null : days.get(0);
		LocalDate until = days.isEmpty() ? null : days.get(days.size() - 1);
		LocalDate latest = all.isEmpty() ? null : all.get(all.size() - 1);
		if (latest == null || from == null || !from.isBefore(latest)) {
			return new MapAge(ArchiveMap.nameOf(site), from, until, latest, left, null, SurveyError.NONE);
		}
		RadioMap rest = map(archive, site, survey -> ArchiveMap.isOfTheMap(survey) && !latest.equals(survey.getDate()));
		RadioMap now = map(archive, site, survey -> latest.equals(survey.getDate()));
		SiteChange change = SiteChange.between(rest, now, ChangeLimits.SAME_PLACE_METRES);
		return new MapAge(ArchiveMap.nameOf(site), from, until, latest, left, change.places() == 0 ? null : change,
				SurveyError.of(rest, now, workers));
	}

	private static RadioMap map(Archive archive, Site site, Predicate<Survey> wanted) {
		return ArchiveMap.of(archive, Scope.site(site.getId()), wanted).map();
	}

	private static List<LocalDate> days(Site site, Predicate<Survey> wanted) {
		return site.getSurveys().stream().filter(wanted)
				.flatMap(survey -> Optional.ofNullable(survey.getDate()).stream()).distinct()
				.sorted(Comparator.naturalOrder()).toList();
	}

	/** In one sentence or two. */
	public String words() {
		String map = from == null ? Words.bind(Messages.MapAge_theSurveysHaveNoDate, site)
				: Words.bind(Messages.MapAge_surveys, site,
						from.equals(until) ? Words.bind(Messages.MapAge_of, from)
								: Words.bind(Messages.MapAge_ofTo, from, until),
						left == 0 ? "" : Words.bind(Messages.MapAge_ofOtherDaysLeftOut, Count.of(left, "survey")));
		if (change == null) {
			return map;
		}
		String off = error.isKnown()
				? String.format(Locale.ROOT, Messages.MapAge_aMapWithoutItIs, error.metres(),
						error.interval().low(), error.interval().high())
				: "";
		int gone = change.with(Fate.VANISHED, Fate.REPLACED).size();
		return Words.bind(Messages.MapAge_theLatestSurveyOf, map, latest, gone == 0
				? Messages.MapAge_hearsAllAccessPointsThat
				: Words.bind(Messages.MapAge_noLongerHearsOfThe, Count.of(gone, Messages.MapAge_accessPoint)), off);
	}
}
