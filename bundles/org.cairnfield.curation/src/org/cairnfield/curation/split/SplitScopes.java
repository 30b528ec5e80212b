package org.cairnfield.curation.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;

/** What can be split: the archive, its sites, their floors. */
public final class SplitScopes {

	private SplitScopes() {
	}

	/**
	 * @param title   for a person
	 * @param samples kept, of training surveys
	 */
	public record Entry(Scope scope, String title, int samples) {
	}

	/** The archive, then each site followed by its floors, lowest first; those without samples too, except floors. */
	public static List<Entry> of(Archive archive) {
		List<Entry> entries = new ArrayList<>();
		int all = 0;
		for (Site site : archive.getSites()) {
			Map<Integer, Integer> levels = levels(site);
			int samples = levels.values().stream().mapToInt(Integer::intValue).sum();
			all += samples;
			entries.add(new Entry(Scope.site(site.getId()), ArchiveMap.nameOf(site), samples));
			levels.forEach((level, count) -> entries
					.add(new Entry(Scope.floor(site.getId(), level),
							Words.bind(Messages.SplitScopes_floor, ArchiveMap.nameOf(site), level),
							count)));
		}
		entries.add(0, new Entry(Scope.ARCHIVE, Messages.SplitScopes_archive, all));
		return entries;
	}

	/** The floors with samples within a scope, for one split per floor. */
	public static List<Scope> floors(Archive archive, Scope scope) {
		return of(archive).stream().map(Entry::scope).filter(s -> s.level() != null)
				.filter(s -> scope.site() == null || scope.site().equals(s.site()))
				.filter(s -> scope.level() == null || scope.level().equals(s.level())).toList();
	}

	private static Map<Integer, Integer> levels(Site site) {
		Map<Integer, Integer> levels = new TreeMap<>();
		for (Survey survey : site.getSurveys()) {
			SampleTable table = survey.table();
			for (int row = 0; ArchiveMap.isOfTheMap(survey) && row < table.size(); row++) {
				if (table.isKept(row)) {
					levels.merge(table.floorLevel(row), 1, Integer::sum);
				}
			}
		}
		return levels;
	}
}
