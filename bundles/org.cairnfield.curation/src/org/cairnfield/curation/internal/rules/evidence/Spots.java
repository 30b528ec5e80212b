package org.cairnfield.curation.internal.rules.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.stats.Median;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.SurveyedMap;

/**
 * Samples that one device took at one place in one survey, put together: a spot. Its level of an access point is the
 * median of those heard there, device offset taken out; it hears what at least half of its samples heard. Surveys
 * that scan many times at each place would otherwise be compared mostly with themselves.
 */
public final class Spots {

	private final RadioMap map;
	private final int[][] members;
	private final int[] spotOf;
	private final int[] placeOf;
	private final int[] surveyOf;
	private final int[] deviceOf;
	private final int places;

	private Spots(SurveyedMap surveyed) {
		RadioMap all = surveyed.map();
		record Spot(int survey, int device, int site, int floor, double x, double y) {
		}
		Map<Spot, Ints> found = new HashMap<>();
		for (int s = 0; s < all.size(); s++) {
			// Adding 0.0 makes -0 the same place as 0.
			found.computeIfAbsent(new Spot(surveyed.survey(s), all.device(s), all.site(s), all.floor(s),
					all.x(s) + 0.0, all.y(s) + 0.0), k -> new Ints()).add(s);
		}
		List<Spot> order = new ArrayList<>(found.keySet());
		order.sort(Comparator.comparing((Spot p) -> all.sites().get(p.site)).thenComparingInt(Spot::floor)
				.thenComparingDouble(Spot::x).thenComparingDouble(Spot::y).thenComparingInt(Spot::survey)
				.thenComparingInt(Spot::device));
		spotOf = new int[all.size()];
		placeOf = new int[order.size()];
		surveyOf = new int[order.size()];
		deviceOf = new int[order.size()];
		members = new int[order.size()][];
		RadioMapBuilder builder = new RadioMapBuilder();
		all.accessPoints().forEach(builder::accessPoint);
		int place = -1;
		Spot last = null;
		Levels levels = new Levels(all.accessPointCount());
		for (int i = 0; i < members.length; i++) {
			Spot spot = order.get(i);
			boolean same = last != null && last.site == spot.site && last.floor == spot.floor && last.x == spot.x
					&& last.y == spot.y;
			place += same ? 0 : 1;
			last = spot;
			placeOf[i] = place;
			surveyOf[i] = spot.survey;
			members[i] = found.get(spot).toArray();
			for (int s : members[i]) {
				spotOf[s] = i;
			}
			builder.sample(all.sites().get(spot.site), spot.floor, spot.x, spot.y);
			deviceOf[i] = spot.device;
			levels.of(surveyed, members[i], builder);
		}
		places = place + 1;
		map = builder.build();
	}

	public static Spots of(RuleInput input) {
		return input.shared(Spots.class, () -> new Spots(input.map()));
	}

	/** The spots as samples, without devices; access points by the index that they have in the map they came from. */
	public RadioMap map() {
		return map;
	}

	public int size() {
		return members.length;
	}

	/** The samples of a spot; not to be changed. */
	public int[] members(int spot) {
		return members[spot];
	}

	public int spotOf(int sample) {
		return spotOf[sample];
	}

	/** A number for where a spot is: spots of several surveys or devices at one place share it. */
	public int placeOf(int spot) {
		return placeOf[spot];
	}

	/** How many different places there are. */
	public int places() {
		return places;
	}

	/** Index of the survey of a spot. */
	public int surveyOf(int spot) {
		return surveyOf[spot];
	}

	/** Index of the device of a spot in the map it came from, or {@link RadioMap#NO_DEVICE}. */
	public int deviceOf(int spot) {
		return deviceOf[spot];
	}

	/** Collects the levels at one spot after the other. */
	private static final class Levels {
		private final Doubles[] heard;

		Levels(int accessPoints) {
			heard = new Doubles[accessPoints];
		}

		void of(SurveyedMap surveyed, int[] samples, RadioMapBuilder builder) {
			RadioMap all = surveyed.map();
			Ints met = new Ints();
			for (int s : samples) {
				for (int k = all.firstReading(s); k < all.endReading(s); k++) {
					int a = all.accessPoint(k);
					if (heard[a] == null) {
						heard[a] = new Doubles();
						met.add(a);
					}
					heard[a].add(surveyed.levelDbm(s, k));
				}
			}
			int[] touched = met.toArray();
			Arrays.sort(touched);
			for (int a : touched) {
				if (2 * heard[a].size() >= samples.length) {
					double level = Median.of(heard[a].toArray());
					builder.reading(a, (int) Math.max(RadioMap.LOWEST_RSSI_DBM,
							Math.min(RadioMap.HIGHEST_RSSI_DBM, Math.round(level))));
				}
				heard[a] = null;
			}
		}
	}
}
