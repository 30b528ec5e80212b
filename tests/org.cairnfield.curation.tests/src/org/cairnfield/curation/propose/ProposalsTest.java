package org.cairnfield.curation.propose;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.correlate.Placement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.stats.Pearson;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SmallMaps;
import org.cairnfield.curation.split.Split;
import org.cairnfield.curation.split.SplitRequest;
import org.junit.jupiter.api.Test;

class ProposalsTest {

	private static final Workers INLINE = Workers.inline();

	private static Proposals of(double gate, double threshold) {
		return Proposals.of(SmallMaps.split(), new ProposalRule(gate, threshold), INLINE);
	}

	@Test
	void offersTheStrayToTheGroupItIsLike() {
		Proposals proposals = of(0, 0.1);
		assertTrue(proposals.open());
		assertEquals(1, proposals.placements().size());
		Placement stray = proposals.placements().get(0);
		assertEquals(10, stray.sample());
		assertEquals(1, stray.cluster());
		assertEquals(0, stray.runnerUp());
		assertTrue(proposals.isMade(stray));
		assertEquals(1, proposals.made());
		assertEquals(0, proposals.unplaced());
		assertEquals(Pearson.r(distances(10), distances(stray.carrier())), stray.strength(), 1e-9);
	}

	/** A row of the distance matrix, city-block on values from −66 dBm, the lowest, up. */
	private static double[] distances(int sample) {
		var map = SmallMaps.twoGroupsAndAStray();
		double[] row = new double[map.size()];
		for (int other = 0; other < row.length; other++) {
			for (int ap = 0; ap < map.accessPointCount(); ap++) {
				row[other] += Math.abs(map.rssiDbm(sample, ap, -67) - map.rssiDbm(other, ap, -67));
			}
		}
		return row;
	}

	@Test
	void doesNothingBelowTheGate() {
		Proposals proposals = of(0.1, 0.1); // one of eleven is noise
		assertFalse(proposals.open());
		assertTrue(proposals.placements().isEmpty());
		assertEquals(0, proposals.made());
		assertEquals(1, proposals.unplaced());
		assertArrayEquals(proposals.split().clustering().labels(), proposals.approved().labels());
	}

	@Test
	void whatIsTooWeakStaysNoise() {
		Proposals proposals = of(0, 1);
		assertTrue(proposals.open());
		assertEquals(0, proposals.made());
		assertEquals(1, proposals.unplaced());
		assertTrue(proposals.approved().isNoise(10));
	}

	@Test
	void approvalMovesTheStrayAndNothingElse() {
		Proposals proposals = of(0, 0.1);
		int[] expected = proposals.split().clustering().labels();
		expected[10] = 1;
		assertArrayEquals(expected, proposals.approved().labels());
		assertEquals(Role.BORDER, proposals.approved().role(10));
		assertTrue(proposals.split().clustering().isNoise(10), "the split itself stays");
	}

	@Test
	void makesNoneWhereThereIsNoCluster() {
		Split noise = Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(0, 3), INLINE);
		Proposals proposals = Proposals.of(noise, new ProposalRule(0, -1), INLINE);
		assertTrue(proposals.open());
		assertEquals(0, proposals.made());
		assertEquals(11, proposals.unplaced());
	}

	@Test
	void makesNoneWhereThereIsNoNoise() {
		Split one = Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(1e6, 3), INLINE);
		Proposals proposals = Proposals.of(one, new ProposalRule(0, -1), INLINE);
		assertFalse(proposals.open());
		assertEquals(0, proposals.made() + proposals.unplaced());
	}
}
