package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Pearson;

/**
 * Two fingerprints side by side.
 *
 * @param rows    what either heard: shared access points first, strongest first
 * @param shared  access points that both heard
 * @param overlap shared ones as a share of all, 0 … 1; 1 where neither heard anything
 * @param levelR  Pearson's r of the levels of shared access points, NaN for fewer than three; not the strength of
 *                a proposal, which correlates distances to the whole map
 */
public record FingerprintPair(List<Row> rows, int shared, double overlap, double levelR) {

	/**
	 * One access point.
	 *
	 * @param firstDbm  level in the first fingerprint, null where it was not heard
	 * @param secondDbm likewise in the second
	 */
	public record Row(String address, Integer firstDbm, Integer secondDbm) {

		/** Whether both heard it. */
		public boolean isShared() {
			return firstDbm != null && secondDbm != null;
		}

		private int strongest() {
			return Math.max(firstDbm == null ? Integer.MIN_VALUE : firstDbm,
					secondDbm == null ? Integer.MIN_VALUE : secondDbm);
		}
	}

	private static final int FEWEST_FOR_R = 3;

	/** @param first and {@code second}: samples of the map */
	public static FingerprintPair of(RadioMap map, int first, int second) {
		Map<String, Integer[]> levels = new TreeMap<>();
		collect(map, first, 0, levels);
		collect(map, second, 1, levels);
		List<Row> rows = new ArrayList<>();
		levels.forEach((address, pair) -> rows.add(new Row(address, pair[0], pair[1])));
		rows.sort(Comparator.comparing((Row row) -> !row.isShared()).thenComparing(row -> -row.strongest()));
		List<Row> both = rows.stream().filter(Row::isShared).toList();
		double r = both.size() < FEWEST_FOR_R ? Double.NaN
				: Pearson.r(both.stream().mapToDouble(Row::firstDbm).toArray(),
						both.stream().mapToDouble(Row::secondDbm).toArray());
		return new FingerprintPair(List.copyOf(rows), both.size(),
				rows.isEmpty() ? 1 : (double) both.size() / rows.size(), r);
	}

	private static void collect(RadioMap map, int sample, int side, Map<String, Integer[]> levels) {
		for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
			levels.computeIfAbsent(map.accessPoints().get(map.accessPoint(k)), a -> new Integer[2])[side] = map
					.rssiDbm(k);
		}
	}
}
