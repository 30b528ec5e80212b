package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SparkProposalsTest {

	@Test
	void placementsAreThoseOfOneMachineOnRandomMaps() {
		int beyond = 0;
		int compared = 0;
		for (int i = 8; i < 8 + Integer.getInteger("cairnfield.maps", 8); i++) {
			RadioMap map = RandomMaps.of(i);
			SplittableRandom random = new SplittableRandom(2000 + i);
			Signals signals = Signals.of(map);
			Clustering clustering = Dbscan.cluster(signals, random.nextInt(1, 30), random.nextInt(2, 5),
					Workers.inline());
			List<NoisePlacement> wanted = NoiseCorrelation.place(signals, clustering, Workers.inline());
			List<NoisePlacement> got = SparkProposals.place(LocalSpark.context(),
					LocalSpark.spread(LocalSpark.context(), map), clustering,
					new ProposalRule(0, -1));
			assertEquals(wanted.size(), got.size(), "map " + i);
			for (int p = 0; p < wanted.size(); p++) {
				assertEquals(wanted.get(p), got.get(p), "map " + i);
				compared++;
				Components near = signals.components();
				beyond += wanted.get(p).carrier() >= 0
						&& near.componentOf(wanted.get(p).carrier()) != near.componentOf(wanted.get(p).sample()) ? 1
								: 0;
			}
		}
		assertTrue(compared > 200 && beyond > 10, compared + " compared, " + beyond + " of them placed out of earshot");
	}

	@Test
	void nothingIsPlacedBelowTheGate() {
		RadioMap map = RandomMaps.of(3);
		Clustering clustering = Dbscan.cluster(Signals.of(map), 20, 2, Workers.inline());
		assertTrue(clustering.noise() > 0);
		assertEquals(List.of(),
				SparkProposals.place(LocalSpark.context(), LocalSpark.spread(LocalSpark.context(), map), clustering,
						new ProposalRule(1, 0.1)));
	}
}
