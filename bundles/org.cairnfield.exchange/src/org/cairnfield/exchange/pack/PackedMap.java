package org.cairnfield.exchange.pack;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.text.Words;

/**
 * A radio map with positions and levels as a pack holds them, so that workbench and device compute from the same numbers.
 * Positions count whole units from an origin of each site; levels count whole steps from the lowest. Samples outside the
 * split are kept, but what only they heard is not known to the pack.
 */
public final class PackedMap {

	private static final int MOST_UNITS = 0xFFFF;
	private static final int FINEST_UNIT_MM = 10;
	/** Up to here a double tells millimetres apart, and sums of units are exact. */
	private static final double FARTHEST_MM = 1e13;

	private final RadioMap map;
	private final RadioMap rounded;
	private final int lowestRssiDbm;
	private final int levelStepDb;
	private final int unitMm;
	private final long[] originXMm;
	private final long[] originYMm;
	private final int[] accessPoints;

	private PackedMap(RadioMap map, int[] accessPoints, int levelStepDb) {
		this.map = map;
		this.accessPoints = accessPoints;
		this.levelStepDb = levelStepDb;
		lowestRssiDbm = map.lowestRssiDbm();
		int sites = map.sites().size();
		originXMm = new long[sites];
		originYMm = new long[sites];
		long[] mostX = new long[sites];
		long[] mostY = new long[sites];
		boolean[] seen = new boolean[sites];
		for (int s = 0; s < map.size(); s++) {
			int site = map.site(s);
			long x = millimetres(map.x(s));
			long y = millimetres(map.y(s));
			originXMm[site] = seen[site] ? Math.min(originXMm[site], x) : x;
			originYMm[site] = seen[site] ? Math.min(originYMm[site], y) : y;
			mostX[site] = seen[site] ? Math.max(mostX[site], x) : x;
			mostY[site] = seen[site] ? Math.max(mostY[site], y) : y;
			seen[site] = true;
		}
		long unit = FINEST_UNIT_MM;
		for (int site = 0; site < sites; site++) {
			long extent = Math.max(mostX[site] - originXMm[site], mostY[site] - originYMm[site]);
			unit = Math.max(unit, (extent + MOST_UNITS - 1) / MOST_UNITS);
		}
		if (unit > MOST_UNITS) {
			throw new PackLimitException(
					Words.bind(Messages.PackedMap_aSiteIsTooLarge, (long) MOST_UNITS * MOST_UNITS / 1_000_000));
		}
		unitMm = (int) unit;
		rounded = round(map, true, a -> true);
	}

	/**
	 * @param split       what is packed
	 * @param levelStepDb 1 … 16
	 * @throws PackLimitException where a position is farther than ten million kilometres from the origin of its frame
	 */
	static PackedMap of(SplitMap split, int levelStepDb) {
		RadioMap map = split.signals().map();
		boolean[] heard = new boolean[map.accessPointCount()];
		for (int cell = 0; cell <= split.cells(); cell++) {
			for (int s : split.members(cell)) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					heard[map.accessPoint(k)] = true;
				}
			}
		}
		return new PackedMap(map, IntStream.range(0, heard.length).filter(a -> heard[a]).toArray(), levelStepDb);
	}

	private static long millimetres(double metres) {
		double mm = Math.rint(metres * 1000);
		if (!(Math.abs(mm) <= FARTHEST_MM)) {
			throw new PackLimitException(Words.bind(Messages.PackedMap_aPositionIsTooFar, metres));
		}
		return (long) mm;
	}

	/** What the workbench has to search to agree with the pack. */
	public RadioMap map() {
		return rounded;
	}

	/**
	 * Fingerprints as a device rounds them before it searches, without the access points that the pack does not know;
	 * positions are left as they are.
	 */
	public RadioMap queries(RadioMap test) {
		Set<String> known = new HashSet<>();
		for (int a : accessPoints) {
			known.add(map.accessPoints().get(a));
		}
		return round(test, false, a -> known.contains(test.accessPoints().get(a)));
	}

	private RadioMap round(RadioMap from, boolean positions, IntPredicate known) {
		RadioMapBuilder builder = new RadioMapBuilder();
		from.accessPoints().forEach(builder::accessPoint);
		boolean[] kept = new boolean[from.accessPointCount()];
		for (int a = 0; a < kept.length; a++) {
			kept[a] = known.test(a);
		}
		for (int s = 0; s < from.size(); s++) {
			String site = from.sites().get(from.site(s));
			if (positions) {
				builder.sample(site, from.floor(s), PackReader.metres(originXMm[from.site(s)], unitsX(s), unitMm),
						PackReader.metres(originYMm[from.site(s)], unitsY(s), unitMm));
			} else {
				builder.sample(site, from.floor(s), from.x(s), from.y(s));
			}
			for (int k = from.firstReading(s); k < from.endReading(s); k++) {
				int code = code(from.rssiDbm(k));
				if (code > 0 && kept[from.accessPoint(k)]) {
					builder.reading(from.accessPoint(k), lowestRssiDbm + (code - 1) * levelStepDb);
				}
			}
		}
		return builder.build();
	}

	/** Columns of the map that the pack knows, ascending. */
	int[] accessPoints() {
		return accessPoints;
	}

	int code(int rssiDbm) {
		return PackReader.code(rssiDbm, lowestRssiDbm, levelStepDb);
	}

	int unitsX(int sample) {
		return units(map.x(sample), originXMm[map.site(sample)]);
	}

	int unitsY(int sample) {
		return units(map.y(sample), originYMm[map.site(sample)]);
	}

	private int units(double metres, long originMm) {
		return (int) Math.round((double) (millimetres(metres) - originMm) / unitMm);
	}

	/** By name, since the rounded map numbers the sites anew. */
	long originXMm(String site) {
		return originXMm[map.sites().indexOf(site)];
	}

	long originYMm(String site) {
		return originYMm[map.sites().indexOf(site)];
	}

	/** Whether all origins are within what version 1 of the format holds. */
	boolean hasNearOrigins() {
		return LongStream.concat(Arrays.stream(originXMm), Arrays.stream(originYMm)).allMatch(mm -> mm == (int) mm);
	}

	int unitMm() {
		return unitMm;
	}

	int lowestRssiDbm() {
		return lowestRssiDbm;
	}

	int levelStepDb() {
		return levelStepDb;
	}
}
