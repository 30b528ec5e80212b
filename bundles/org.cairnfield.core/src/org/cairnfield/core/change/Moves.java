package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cairnfield.core.stats.KolmogorovSmirnov;
import org.cairnfield.core.stats.Median;

/**
 * Which access points hang elsewhere than before. Two things must come together: levels at the shared places changed by more than
 * those of other access points do, and where it is loudest lies elsewhere. What one device reads above another is taken out, by
 * the middle difference of strong levels.
 */
final class Moves {

	private static final int FEWEST_SHIFTS = 30;

	private final SharedPlaces places;
	private final double shiftDb;

	private Moves(SharedPlaces places, double shiftDb) {
		this.places = places;
		this.shiftDb = shiftDb;
	}

	/** @return by address */
	static SortedMap<String, Move> of(SortedMap<String, Presence> all, SharedPlaces places) {
		Moves moves = new Moves(places, shift(all.values()));
		Map<String, double[]> changes = new TreeMap<>();
		all.forEach((address, presence) -> {
			if (presence.stayed()) {
				changes.put(address, moves.changes(presence));
			}
		});
		double[] usual = changes.values().stream().flatMapToDouble(Arrays::stream).toArray();
		long tested = changes.values().stream().filter(change -> change.length >= ChangeLimits.FEWEST_CHANGES).count();
		SortedMap<String, Move> moved = new TreeMap<>();
		if (tested > 0) {
			double usualDb = Median.of(usual);
			double least = Math.max(ChangeLimits.MOVED_DB, ChangeLimits.MOVED_TIMES_USUAL * usualDb);
			changes.forEach((address, change) -> {
				if (change.length >= ChangeLimits.FEWEST_CHANGES && Median.of(change) >= least
						&& moves.isHeardWell(all.get(address))
						&& KolmogorovSmirnov.differ(change, usual, ChangeLimits.MOVED_LEVEL / tested)) {
					Move move = new Move(address, change.length, Median.of(change), usualDb,
							KolmogorovSmirnov.statistic(change, usual),
							moves.loudest(all.get(address), true), moves.loudest(all.get(address), false));
					if (move.floors() != 0 || move.metres() >= ChangeLimits.MOVED_METRES) {
						moved.put(address, move);
					}
				}
			});
		}
		return moved;
	}

	private static double shift(Iterable<Presence> all) {
		List<Double> differences = new ArrayList<>();
		for (Presence one : all) {
			for (int i = 0; i < one.size(); i++) {
				if ((one.level(i, true) + one.level(i, false)) / 2 >= ChangeLimits.WELL_DBM) { // false where one is not heard
					differences.add(one.level(i, false) - one.level(i, true));
				}
			}
		}
		return differences.size() < FEWEST_SHIFTS ? 0
				: Median.of(differences.stream().mapToDouble(Double::doubleValue).toArray());
	}

	/** As the device of then would have read it. */
	private double level(Presence one, int i, boolean then) {
		double level = one.level(i, then) - (then ? 0 : shiftDb);
		return Double.isNaN(level) ? ChangeLimits.UNHEARD_DBM : Math.max(ChangeLimits.UNHEARD_DBM, level);
	}

	private double[] changes(Presence one) {
		double[] changes = new double[one.size()];
		int count = 0;
		for (int i = 0; i < changes.length; i++) {
			if (Math.max(level(one, i, true), level(one, i, false)) >= ChangeLimits.WELL_DBM) {
				changes[count++] = Math.abs(level(one, i, false) - level(one, i, true));
			}
		}
		return Arrays.copyOf(changes, count);
	}

	/** Whether each survey heard it well at some places, at different levels: one whose level is stuck tells nothing. */
	private boolean isHeardWell(Presence one) {
		for (boolean then : new boolean[] { true, false }) {
			double[] levels = IntStream.range(0, one.size()).mapToDouble(i -> one.level(i, then))
					.filter(level -> !Double.isNaN(level)).toArray();
			if (Arrays.stream(levels).filter(level -> level >= ChangeLimits.WELL_DBM).count() < ChangeLimits.LOUD_PLACES
					|| Arrays.stream(levels).distinct().count() == 1) {
				return false;
			}
		}
		return true;
	}

	private Move.Loudest loudest(Presence one, boolean then) {
		Map<Integer, List<Double>> byFloor = new TreeMap<>();
		for (int i = 0; i < one.size(); i++) {
			byFloor.computeIfAbsent(places.floor(one.place(i)), floor -> new ArrayList<>()).add(level(one, i, then));
		}
		int loud = 0;
		double top = Double.NEGATIVE_INFINITY;
		for (Map.Entry<Integer, List<Double>> floor : byFloor.entrySet()) {
			List<Double> levels = floor.getValue().stream().sorted().toList();
			int at = levels.size() - ChangeLimits.LOUD_PLACES;
			double level = at < 0 ? ChangeLimits.UNHEARD_DBM : levels.get(at);
			if (level > top) {
				top = level;
				loud = floor.getKey();
			}
		}
		double sum = 0;
		double x = 0;
		double y = 0;
		for (int i = 0; i < one.size(); i++) {
			double level = level(one, i, then);
			if (places.floor(one.place(i)) == loud && level >= top - ChangeLimits.NEAR_LOUDEST_DB) {
				double weight = Math.pow(10, level / 20);
				sum += weight;
				x += weight * places.x(one.place(i));
				y += weight * places.y(one.place(i));
			}
		}
		return new Move.Loudest(loud, x / sum, y / sum);
	}
}
