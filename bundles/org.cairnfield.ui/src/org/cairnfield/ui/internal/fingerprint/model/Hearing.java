package org.cairnfield.ui.internal.fingerprint.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.core.stats.Median;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.SampleTable;

/**
 * Where one access point is heard.
 *
 * @param places    by site, survey and floor, in the order of the archive
 * @param levelsDbm all levels, set-aside samples left out, in no order
 */
public record Hearing(List<Place> places, double[] levelsDbm) {

	/**
	 * What one survey heard of it on one floor, set-aside samples left out.
	 *
	 * @param samples      that heard it
	 * @param of           all samples of the survey on the floor
	 * @param medianDbm    of the levels heard; the mean of the middle two where their number is even
	 * @param strongest    id of the sample that heard it best
	 * @param strongestDbm how well
	 */
	public record Place(String site, String surveyId, String survey, int level, int samples, int of, double medianDbm,
			String strongest, int strongestDbm) {
	}

	/** @param accessPointId as readings name it */
	public static Hearing of(Archive archive, String accessPointId) {
		List<Place> places = new ArrayList<>();
		List<double[]> levels = new ArrayList<>();
		for (Site site : archive.getSites()) {
			for (Survey survey : site.getSurveys()) {
				Map<Integer, Tally> byLevel = tally(survey.table(), accessPointId);
				byLevel.forEach((level, tally) -> {
					double[] heard = Arrays.copyOf(tally.levels, tally.heard);
					levels.add(heard);
					places.add(new Place(ModelText.name(site), survey.getId(), survey.getName(), level, tally.heard,
							tally.all,
							Median.of(heard), survey.table().id(tally.bestRow), tally.bestDbm));
				});
			}
		}
		return new Hearing(List.copyOf(places), levels.stream().flatMapToDouble(Arrays::stream).toArray());
	}

	private static final class Tally {
		private double[] levels = new double[16];
		private int heard;
		private int all;
		private int bestRow;
		private int bestDbm = Integer.MIN_VALUE;

		void add(int row, int levelDbm) {
			if (heard == levels.length) {
				levels = Arrays.copyOf(levels, 2 * heard);
			}
			levels[heard++] = levelDbm;
			if (levelDbm > bestDbm) {
				bestDbm = levelDbm;
				bestRow = row;
			}
		}
	}

	/** Floors of the table on which it is heard. */
	private static Map<Integer, Tally> tally(SampleTable table, String accessPointId) {
		Map<Integer, Tally> byLevel = new TreeMap<>();
		int wanted = table.accessPoints().indexOf(accessPointId);
		for (int row = 0; wanted >= 0 && row < table.size(); row++) {
			if (table.isKept(row)) {
				Tally tally = byLevel.computeIfAbsent(table.floorLevel(row), l -> new Tally());
				tally.all++;
				for (int k = 0; k < table.heard(row); k++) {
					if (table.accessPoint(row, k) == wanted) {
						tally.add(row, table.rssiDbm(row, k));
					}
				}
			}
		}
		byLevel.values().removeIf(tally -> tally.heard == 0);
		return byLevel;
	}
}
