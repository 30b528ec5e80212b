package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.stats.KolmogorovSmirnov;
import org.cairnfield.core.stats.Median;

/**
 * Which access points hang elsewhere than before. Two things must come together: levels at the shared places changed by more than
 * those of other access points do, and where it is loudest lies elsewhere. What one device reads above another is taken out, by
 * the middle difference of strong levels.
 */
final class Moves {

	private static final double UNHEARD_DBM = -92;
	/** A change counts where it was that strong at one of the two times: what is cut off below hides little then. */
	private static final double WELL_DBM = -75;
	private static final int FEWEST_CHANGES = 8;
	private static final int FEWEST_SHIFTS = 30;
	/** One access point of a site in a thousand sites is named by chance. */
	private static final double ALPHA = 0.001;
	private static final double LEAST_CHANGE_DB = 7;
	private static final double TIMES_USUAL = 1.5;
	private static final double LEAST_METRES = 8;
	private static final double NEAR_LOUDEST_DB = 12;
	/** One sample with a wrong floor must not decide where it is loudest. */
	private static final int LOUD = 3;

	private final SharedPlaces places;
	private final double shiftDb;

	private Moves(SharedPlaces places, double shiftDb) {
		this.places = places;
		this.shiftDb = shiftDb;
	}

	/** @return addresses */
	static Set<String> of(SortedMap<String, Presence> all, SharedPlaces places) {
		Moves moves = new Moves(places, shift(all.values()));
		Map<String, double[]> changes = new TreeMap<>();
		all.forEach((address, presence) -> {
			if (presence.wasHeard() && presence.isHeard()) {
				changes.put(address, moves.changes(presence));
			}
		});
		double[] usual = changes.values().stream().flatMapToDouble(Arrays::stream).toArray();
		long tested = changes.values().stream().filter(change -> change.length >= FEWEST_CHANGES).count();
		Set<String> moved = new HashSet<>();
		if (tested > 0) {
			double least = Math.max(LEAST_CHANGE_DB, TIMES_USUAL * Median.of(usual));
			changes.forEach((address, change) -> {
				if (change.length >= FEWEST_CHANGES && Median.of(change) >= least && KolmogorovSmirnov.differ(change, usual, ALPHA / tested)
						&& moves.isLoudestElsewhere(all.get(address))) {
					moved.add(address);
				}
			});
		}
		return moved;
	}

	private static double shift(Iterable<Presence> all) {
		List<Double> differences = new ArrayList<>();
		for (Presence one : all) {
			for (int p = 0; p < one.levelThen.length; p++) {
				if ((one.levelThen[p] + one.levelNow[p]) / 2 >= WELL_DBM) { // false where one is not heard
					differences.add(one.levelNow[p] - one.levelThen[p]);
				}
			}
		}
		return differences.size() < FEWEST_SHIFTS ? 0 : Median.of(differences.stream().mapToDouble(Double::doubleValue).toArray());
	}

	private double then(Presence one, int place) {
		return Double.isNaN(one.levelThen[place]) ? UNHEARD_DBM : Math.max(UNHEARD_DBM, one.levelThen[place]);
	}

	/** As the device of then would have read it. */
	private double now(Presence one, int place) {
		return Double.isNaN(one.levelNow[place]) ? UNHEARD_DBM : Math.max(UNHEARD_DBM, one.levelNow[place] - shiftDb);
	}

	private double[] changes(Presence one) {
		double[] changes = new double[places.size()];
		int count = 0;
		for (int p = 0; p < changes.length; p++) {
			if (Math.max(then(one, p), now(one, p)) >= WELL_DBM) {
				changes[count++] = Math.abs(now(one, p) - then(one, p));
			}
		}
		return Arrays.copyOf(changes, count);
	}

	private boolean isLoudestElsewhere(Presence one) {
		double[] then = loudest(one, true);
		double[] now = loudest(one, false);
		return then[0] != now[0] || Math.hypot(now[1] - then[1], now[2] - then[2]) >= LEAST_METRES;
	}

	/** Floor, x and y: the centre of its loud places, by amplitude, on the floor where it is loudest. */
	private double[] loudest(Presence one, boolean then) {
		Map<Integer, List<Double>> byFloor = new TreeMap<>();
		for (int p = 0; p < places.size(); p++) {
			byFloor.computeIfAbsent(places.floor(p), floor -> new ArrayList<>()).add(then ? then(one, p) : now(one, p));
		}
		int loud = 0;
		double top = Double.NEGATIVE_INFINITY;
		for (Map.Entry<Integer, List<Double>> floor : byFloor.entrySet()) {
			List<Double> levels = floor.getValue().stream().sorted().toList();
			double level = levels.get(Math.max(0, levels.size() - LOUD));
			if (level > top) {
				top = level;
				loud = floor.getKey();
			}
		}
		double sum = 0;
		double x = 0;
		double y = 0;
		for (int p = 0; p < places.size(); p++) {
			double level = then ? then(one, p) : now(one, p);
			if (places.floor(p) == loud && level >= top - NEAR_LOUDEST_DB) {
				double weight = Math.pow(10, level / 20);
				sum += weight;
				x += weight * places.x(p);
				y += weight * places.y(p);
			}
		}
		return new double[] { loud, x / sum, y / sum };
	}
}
