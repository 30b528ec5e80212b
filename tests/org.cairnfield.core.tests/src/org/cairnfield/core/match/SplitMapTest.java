package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SplitMapTest {

	private static final Signals SIGNALS = Signals.of(ScatteredMap.of(7, 160));

	private static SplitMap split(int cells) {
		Clustering clustering = new Clustering(IntStream.range(0, 160).map(s -> s % cells).toArray(), null);
		return SplitMap.of(SIGNALS, clustering, Centroids.Kind.MEAN, false);
	}

	@Test
	void hasOneLevelUnlessAsked() {
		SplitMap split = split(16);
		assertEquals(16, split.cells());
		assertEquals(0, split.groups());
		assertEquals(160, split.samples());
	}

	@Test
	void groupsAboutTheRootOfTheCellsEachInOneGroup() {
		for (int cells : new int[] { 16, 36, 80 }) {
			SplitMap grouped = split(cells).inTwoLevels(3, Workers.inline());
			assertTrue(grouped.groups() >= 2 && grouped.groups() <= Math.round(Math.sqrt(cells)));
			int[] inGroups = Arrays.stream(grouped.cellsOfGroup).flatMapToInt(Arrays::stream).sorted().toArray();
			assertEquals(cells, inGroups.length);
			assertTrue(IntStream.range(0, cells).allMatch(c -> inGroups[c] == c));
			assertEquals(160, grouped.samples());
		}
	}

	@Test
	void keepsOneLevelWhereThereAreTooFewCells() {
		SplitMap split = split(2);
		assertSame(split, split.inTwoLevels(3, Workers.inline()));
	}

	@Test
	void costsGroupsCellsAndMembersInTwoLevels() {
		SplitMap grouped = split(40).inTwoLevels(3, Workers.inline());
		Matcher.Session session = new SplitMatcher(grouped, 1, 2, true, Voting.NEAREST).session();
		SignalRows rows = SIGNALS.rows();
		boolean[] possible = new boolean[400];
		for (int[] cells : grouped.cellsOfGroup) { // every cell has 4 members
			possible[grouped.groups() + cells.length + 4 * Math.min(2, cells.length)] = true;
		}
		for (int q = 0; q < rows.size(); q++) {
			session.nearest(rows, q);
			assertTrue(possible[session.comparisons()], session.comparisons() + " comparisons");
		}
	}

	@Test
	void findsNothingWithoutCellsAndPool() {
		int[] noise = new int[160];
		Arrays.fill(noise, Clustering.NOISE);
		SplitMap split = SplitMap.of(SIGNALS, new Clustering(noise, null), Centroids.Kind.MEAN, false);
		Estimates found = Estimates.of(new SplitMatcher(split, 1, 1, true, Voting.NEAREST), SIGNALS.rows(),
				Workers.inline());
		assertEquals(Double.NaN, found.x(0));
		assertEquals(0, found.comparisons(0));
	}
}
