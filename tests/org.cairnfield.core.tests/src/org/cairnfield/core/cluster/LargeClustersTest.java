package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LargeClustersTest {

	private static final Workers HERE = Workers.inline();

	@ParameterizedTest
	@ValueSource(ints = { 2, 5, 12, 30 })
	void leavesNoneLargerThanTheLimitAndMixesNone(int limit) {
		for (long seed = 1; seed <= 20; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 90));
			double epsilon = KDistances.of(signals, HERE, 3).sorted(3)[50];
			Clustering whole = Dbscan.cluster(signals, epsilon, 3, HERE);
			Clustering cut = LargeClusters.cut(signals, whole, limit, seed, HERE);
			assertTrue(Arrays.stream(cut.sizes()).allMatch(size -> size >= 1 && size <= limit));
			for (int s = 0; s < 90; s++) {
				assertEquals(whole.isNoise(s), cut.isNoise(s));
				assertEquals(whole.role(s), cut.role(s));
			}
			for (int[] cell : cut.members()) {
				assertEquals(1, Arrays.stream(cell).map(whole::label).distinct().count());
			}
			int[] wholeSizes = whole.sizes();
			for (int c = 0; c < wholeSizes.length; c++) {
				if (wholeSizes[c] <= limit) { // left whole, under its number
					assertArrayEquals(whole.members()[c], cut.members()[c]);
				}
			}
			assertArrayEquals(cut.labels(), LargeClusters.cut(signals, whole, limit, seed, HERE).labels());
		}
	}

	@Test
	void cutsWhereSamplesDiffer() {
		Signals signals = levels(-80, -40, -81, -42, -79, -41);
		Clustering one = new Clustering(new int[6], null);
		Clustering cut = LargeClusters.cut(signals, one, 3, 1, HERE);
		assertArrayEquals(new int[] { 0, 1, 0, 1, 0, 1 }, cut.labels());
	}

	@Test
	void halvesIdenticalSamplesInTheirOrder() {
		Signals signals = levels(-50, -50, -50, -50, -50);
		Clustering cut = LargeClusters.cut(signals, new Clustering(new int[5], null), 2, 1, HERE);
		assertArrayEquals(new int[] { 0, 0, 1, 2, 2 }, cut.labels());
	}

	@Test
	void leavesAloneWhatIsSmallEnough() {
		Signals signals = levels(-50, -50, -90);
		Clustering clustering = new Clustering(new int[] { 0, 0, -1 }, null);
		assertArrayEquals(new int[] { 0, 0, -1 }, LargeClusters.cut(signals, clustering, 2, 1, HERE).labels());
	}

	@Test
	void refusesALimitBelowTwo() {
		Signals signals = levels(-50);
		Clustering one = new Clustering(new int[1], null);
		assertThrows(IllegalArgumentException.class, () -> LargeClusters.cut(signals, one, 1, 1, HERE));
	}

	@Test
	void usualLimitGrowsWithTheRoot() {
		assertEquals(5, LargeClusters.usualLimit(100));
		assertEquals(50, LargeClusters.usualLimit(10_000));
		assertEquals(2, LargeClusters.usualLimit(1));
	}

	private static Signals levels(int... levels) {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int level : levels) {
			b.sample("Tide House", 0, 0, 0).reading("a", level);
		}
		return Signals.of(b.build());
	}
}
