package org.cairnfield.ui.review.internal.split;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.ui.review.internal.split.ClusterBars.State;
import org.junit.jupiter.api.Test;

class ClusterBarsTest {

	@Test
	void putsNoiseFirstThenTheLargest() {
		ClusterBars bars = ClusterBars.of(10, new State("samples", new int[] { 3, 9, 5 }, 4));
		assertEquals(List.of("noise", "C1", "C2", "C0"), bars.bars().labels());
		assertEquals(4, bars.bars().value(0, bars.noisePlace()));
		assertEquals(9, bars.bars().value(0, 1));
		assertEquals(-1, bars.othersPlace());
	}

	@Test
	void keepsTheOrderOfTheFirstStateInTheSecond() {
		ClusterBars bars = ClusterBars.of(10, new State("as split", new int[] { 3, 5 }, 4),
				new State("with approved", new int[] { 7, 5 }, 0));
		assertEquals(List.of("noise", "C1", "C0"), bars.bars().labels());
		assertEquals(7, bars.bars().value(1, 2));
		assertEquals(0, bars.bars().value(1, 0));
	}

	@Test
	void putsManySmallClustersTogetherWithoutLosingASample() {
		ClusterBars bars = ClusterBars.of(2, new State("samples", new int[] { 1, 9, 2, 5, 3 }, 4));
		assertEquals(List.of("noise", "C1", "C3", "3 smaller"), bars.bars().labels());
		assertEquals(6, bars.bars().value(0, bars.othersPlace()));
	}

	@Test
	void givesOneLeftOverItsOwnBar() {
		assertEquals(List.of("noise", "C1", "C2", "C0"),
				ClusterBars.of(2, new State("samples", new int[] { 1, 9, 2 }, 0)).bars().labels());
	}
}
