package org.cairnfield.curation.internal.rules.reading;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Spots;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleWords;

/**
 * Readings of a survey that are far from others of the same access point by one device at one place.
 *
 * @param samples         those that stray at several access points
 * @param placesOfSamples where these are
 * @param single          what strays of other samples
 * @param otherPlaces     further places with such readings
 * @param worst           the access point that is farthest apart of all, and where, in words
 * @param worstDb         by how much
 */
record StrayReadings(Set<Integer> samples, int placesOfSamples, Selected single, int otherPlaces, String worst,
		int worstDb) {

	/**
	 * @param apartDb from the lowest to the highest level at a place
	 * @param several stray readings of a sample, from which it is one of {@link #samples}
	 */
	static StrayReadings of(RuleInput input, double apartDb, int several) {
		AtPlaces search = new AtPlaces(input.map().map(), Spots.of(input), apartDb);
		TreeMap<Integer, Integer> bySample = new TreeMap<>();
		search.sampleOf.values().forEach(sample -> bySample.merge(sample, 1, Integer::sum));
		Set<Integer> samples = new TreeSet<>();
		bySample.forEach((sample, strays) -> {
			if (strays >= several) {
				samples.add(sample);
			}
		});
		Selected single = new Selected(input.map());
		search.sampleOf.forEach((reading, sample) -> {
			if (!samples.contains(sample)) {
				single.add(sample, reading);
			}
		});
		Set<Integer> places = new HashSet<>();
		samples.forEach(sample -> places.add(search.spots.spotOf(sample)));
		return new StrayReadings(samples, places.size(), single, search.places.size() - places.size(), search.worst,
				search.worstDb);
	}

	/** Goes through the places. */
	private static final class AtPlaces {
		private final RadioMap map;
		private final Spots spots;
		private final double apartDb;
		/** Stray readings, ascending, with their samples. */
		private final TreeMap<Integer, Integer> sampleOf = new TreeMap<>();
		private final Set<Integer> places = new HashSet<>();
		private String worst = "";
		private int worstDb;

		AtPlaces(RadioMap map, Spots spots, double apartDb) {
			this.map = map;
			this.spots = spots;
			this.apartDb = apartDb;
			for (int spot = 0; spot < spots.size(); spot++) {
				if (spots.members(spot).length > 1) {
					look(spot);
				}
			}
		}

		private void look(int spot) {
			Map<Integer, Ints> readings = new TreeMap<>();
			Map<Integer, Integer> samples = new TreeMap<>();
			for (int s : spots.members(spot)) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					readings.computeIfAbsent(map.accessPoint(k), a -> new Ints()).add(k);
					samples.put(k, s);
				}
			}
			readings.forEach((accessPoint, list) -> {
				int[] levels = Arrays.stream(list.toArray()).map(map::rssiDbm).sorted().toArray();
				int range = levels[levels.length - 1] - levels[0];
				if (list.size() > 1 && range >= apartDb) {
					places.add(spot);
					remember(spot, accessPoint, range);
					strays(list, levels).forEach(k -> sampleOf.put(k, samples.get(k)));
				}
			});
		}

		private void remember(int spot, int accessPoint, int range) {
			if (range > worstDb) {
				worstDb = range;
				worst = String.format(Locale.ROOT, Messages.StrayReadings_byDbAtOnFloor,
						map.accessPoints().get(accessPoint),
						range,
						RuleWords.place(spots.map().x(spot), spots.map().y(spot)), spots.map().floor(spot));
			}
		}

		/** Of three and more those far from the middle; of two nobody knows which. */
		private Set<Integer> strays(Ints readings, int[] levels) {
			double middle = Median.of(Arrays.stream(levels).asDoubleStream().toArray());
			Set<Integer> strays = new TreeSet<>();
			for (int k : readings.toArray()) {
				if (readings.size() == 2 || Math.abs(map.rssiDbm(k) - middle) >= apartDb / 2) {
					strays.add(k);
				}
			}
			return strays;
		}
	}
}
