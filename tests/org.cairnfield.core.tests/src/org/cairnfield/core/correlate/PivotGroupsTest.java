package org.cairnfield.core.correlate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

/** Placements with groups of labelled samples against those without: the same to the last bit. */
class PivotGroupsTest {

	private static final Workers HERE = Workers.inline();

	@Test
	void groupsLeaveOutNothingThatMatters() {
		int placed = 0;
		for (int seed = 1; seed <= 150; seed++) {
			CampusSize size = CampusSize.of(1 + seed % 3, 1 + seed % 2, 20 + seed % 40);
			placed += compare(RandomMap.of(seed, seed % 2 == 0 ? size : size.apart(), 150 + seed % 100, HERE), seed);
		}
		assertTrue(placed > 5_000, placed + " placed");
	}

	@Test
	void norAmongRepeatedScansAndMapsByChance() {
		for (int seed = 1; seed <= 60; seed++) {
			Signals once = Signals.of(ScatteredMap.of(seed, 60));
			int[] some = new int[120];
			Random random = new Random(seed);
			Arrays.setAll(some, i -> random.nextInt(60));
			compare(once.map().view(some), seed);
		}
	}

	private static int compare(RadioMap map, int seed) {
		Signals signals = Signals.of(map);
		double[] curve = KDistances.of(signals, HERE, 3).sorted(3);
		double epsilon = curve[(int) ((0.1 + seed % 7 / 10.0) * curve.length)];
		List<Clustering> clusterings = new ArrayList<>();
		clusterings.add(Dbscan.cluster(signals, Double.isInfinite(epsilon) ? 50 : epsilon, 3, HERE));
		clusterings.add(Dbscan.cluster(signals, 0, 1, HERE)); // no noise
		int[] one = new int[signals.size()];
		Arrays.setAll(one, s -> s % 3 == 0 ? 0 : Clustering.NOISE);
		clusterings.add(new Clustering(one, null));
		for (Clustering clustering : clusterings) {
			List<NoisePlacement> expected = NoiseCorrelation.place(signals, clustering, Integer.MAX_VALUE, HERE);
			assertEquals(expected.toString(), NoiseCorrelation.place(signals, clustering, 0, HERE).toString(),
					() -> "seed " + seed);
		}
		return clusterings.get(0).noise();
	}
}
