package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class ManySitesTest {

	private static final double EPSILON = 45;
	private static final int MIN_PTS = 3;

	/** A tenth of the sites in each of so many campuses, out of earshot of each other. */
	static RadioMap sites(int campuses, int samplesEach) {
		RadioMapBuilder all = new RadioMapBuilder();
		for (int c = 0; c < campuses; c++) {
			RadioMap campus = RandomMap.of(c, new CampusSize(10, 1, 50, false, 110, 5), samplesEach, Workers.inline());
			for (int s = 0; s < campus.size(); s++) {
				all.sample(c + " " + campus.sites().get(campus.site(s)), campus.floor(s), campus.x(s), campus.y(s));
				for (int k = campus.firstReading(s); k < campus.endReading(s); k++) {
					all.reading(c + " " + campus.accessPoints().get(campus.accessPoint(k)), campus.rssiDbm(k));
				}
			}
		}
		return all.build();
	}

	static String digest(Clustering clustering, List<NoisePlacement> placements) throws Exception {
		MessageDigest sha = MessageDigest.getInstance("SHA-256");
		for (int s = 0; s < clustering.size(); s++) {
			sha.update(ByteBuffer.allocate(8).putInt(clustering.label(s)).putInt(clustering.role(s).ordinal()).flip());
		}
		placements.forEach(p -> sha.update(p.toString().getBytes(StandardCharsets.UTF_8)));
		return HexFormat.of().formatHex(sha.digest());
	}

	@Test
	void aThousandSitesHaveTheDigestOfOneMachine() throws Exception {
		RadioMap map = sites(100, 160);
		assertEquals(1000, map.sites().size());
		Signals signals = Signals.of(map);
		Clustering wanted = Dbscan.cluster(signals, EPSILON, MIN_PTS, Workers.inline());
		List<NoisePlacement> placed = NoiseCorrelation.place(signals, wanted, Workers.inline());
		assertTrue(wanted.clusters() > 1000 && placed.size() > 1000,
				wanted.clusters() + " clusters, " + placed.size() + " noise samples");
		SpreadMap spread = LocalSpark.spread(LocalSpark.context(), map);
		Clustering got = SparkDbscan.cluster(LocalSpark.context(), spread, EPSILON, MIN_PTS, Integer.MAX_VALUE);
		SparkDbscanTest.assertSame(wanted, got, "1,000 sites");
		assertEquals(digest(wanted, placed),
				digest(got, SparkProposals.place(LocalSpark.context(), spread, got, new ProposalRule(0, -1))));
	}
}
