package org.cairnfield.ui.plan.internal.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.core.task.Workers;
import org.cairnfield.model.values.SampleTable;

/**
 * Estimates where the access points of a site are: the centroid of the places where one is heard most strongly, each
 * weighted by its level as an amplitude, 10^(RSSI/20). Weighted centroids after Blumenthal, Grossmann, Golatowski and
 * Timmermann, "Weighted centroid localization in Zigbee-based sensor networks", WISP 2007, which weights by distance to a
 * power; under a path loss exponent of 2 the amplitude is such a weight. Good to some metres, never outside of what was
 * surveyed; device offsets are not taken into account.
 */
public final class AccessPointPlaces {

	/** Readings that a place is computed from, at most. */
	public static final int STRONGEST = 12;

	/** Heard less often than this on a floor, it has no place there. */
	public static final int LEAST_READINGS = 3;

	private static final int ROWS_BETWEEN_CHECKS = 4096;

	private AccessPointPlaces() {
	}

	/**
	 * One place for each access point that is heard often enough, in the order of ids. Samples set aside do not count.
	 *
	 * @param tables of the surveys of one site
	 * @throws java.util.concurrent.CancellationException once the workers are cancelled
	 */
	public static List<EstimatedPlace> of(Collection<SampleTable> tables, Workers workers) {
		workers.progress().begin(Messages.AccessPointPlaces_placesOfAccessPoints,
				tables.stream().mapToLong(SampleTable::size).sum());
		Map<String, Map<Integer, Strongest>> all = new TreeMap<>();
		for (SampleTable table : tables) {
			List<Map<Integer, Strongest>> byIndex = new ArrayList<>();
			table.accessPoints().forEach(id -> byIndex.add(all.computeIfAbsent(id, key -> new HashMap<>())));
			for (int row = 0; row < table.size(); row++) {
				if (row % ROWS_BETWEEN_CHECKS == 0) {
					workers.checkCancelled();
					workers.progress().advance(Math.min(ROWS_BETWEEN_CHECKS, table.size() - row));
				}
				if (table.isKept(row)) {
					for (int k = 0; k < table.heard(row); k++) {
						byIndex.get(table.accessPoint(row, k))
								.computeIfAbsent(table.floorLevel(row), level -> new Strongest())
								.add(table.rssiDbm(row, k), table.xMetres(row), table.yMetres(row));
					}
				}
			}
		}
		List<EstimatedPlace> places = new ArrayList<>();
		all.forEach((id, levels) -> {
			int best = Integer.MIN_VALUE;
			for (Map.Entry<Integer, Strongest> each : levels.entrySet()) {
				if (each.getValue().size >= LEAST_READINGS && (best == Integer.MIN_VALUE
						|| each.getValue().meanDbm() > levels.get(best).meanDbm())) {
					best = each.getKey();
				}
			}
			if (best != Integer.MIN_VALUE) {
				places.add(levels.get(best).place(id, best));
			}
		});
		return places;
	}

	/** The strongest readings of one access point on one floor, strongest first. */
	private static final class Strongest {
		private final int[] rssiDbm = new int[STRONGEST];
		private final double[] x = new double[STRONGEST];
		private final double[] y = new double[STRONGEST];
		private int size;

		void add(int dbm, double xMetres, double yMetres) {
			if (size == STRONGEST && dbm <= rssiDbm[size - 1]) {
				return;
			}
			int at = size < STRONGEST ? size++ : size - 1;
			for (; at > 0 && rssiDbm[at - 1] < dbm; at--) {
				rssiDbm[at] = rssiDbm[at - 1];
				x[at] = x[at - 1];
				y[at] = y[at - 1];
			}
			rssiDbm[at] = dbm;
			x[at] = xMetres;
			y[at] = yMetres;
		}

		/** Of the few strongest only, so that a floor where it is heard rarely but well is not at a loss. */
		double meanDbm() {
			double sum = 0;
			for (int i = 0; i < LEAST_READINGS; i++) {
				sum += rssiDbm[i];
			}
			return sum / LEAST_READINGS;
		}

		EstimatedPlace place(String id, int level) {
			double weights = 0;
			double sumX = 0;
			double sumY = 0;
			for (int i = 0; i < size; i++) {
				double weight = Math.pow(10, (rssiDbm[i] - rssiDbm[0]) / 20.0);
				weights += weight;
				sumX += weight * x[i];
				sumY += weight * y[i];
			}
			return new EstimatedPlace(id, level, sumX / weights, sumY / weights, size, rssiDbm[0]);
		}
	}
}
