package org.cairnfield.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SparkDbscanTest {

	@Test
	void labelsAndRolesAreThoseOfOneMachineOnRandomMaps() {
		int quiet = 0;
		for (int i = 0; i < Integer.getInteger("cairnfield.maps", 14); i++) {
			RadioMap map = RandomMaps.of(i);
			SplittableRandom random = new SplittableRandom(1000 + i);
			double epsilon = random.nextInt(1, 60) + (random.nextBoolean() ? 0.5 : 0);
			int minPts = random.nextInt(1, 6);
			int largest = random.nextBoolean() ? Integer.MAX_VALUE : random.nextInt(5, 40);
			Signals signals = Signals.of(map);
			Clustering wanted = Dbscan.cluster(signals, epsilon, minPts, Workers.inline());
			Clustering got = SparkDbscan.cluster(LocalSpark.context(), LocalSpark.spread(LocalSpark.context(), map),
					epsilon, minPts, largest);
			String what = "map " + i + ", ε " + epsilon + ", minPts " + minPts + ", at most " + largest;
			assertSame(wanted, got, what);
			quiet += joinsOutOfEarshot(signals, wanted) ? 1 : 0;
		}
		assertTrue(quiet >= 2, "clusters out of earshot joined in " + quiet + " maps only");
	}

	/** Samples along random walks through fingerprints of very different magnitudes, one component. */
	private static RadioMap walks(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int walk = 0; walk < 12; walk++) {
			int[] level = random.ints(6, -95, -30).toArray();
			for (int s = 0; s < 40; s++) {
				for (int change = 0; change < 2; change++) {
					int a = random.nextInt(level.length);
					level[a] = Math.max(-99, Math.min(-20, level[a] + random.nextInt(-4, 5)));
				}
				builder.sample("Site", 0, s, walk);
				for (int a = 0; a < level.length; a++) {
					builder.reading("ap " + a, level[a]);
				}
			}
		}
		return builder.build();
	}

	@Test
	void aComponentThatIsCutHasTheLabelsOfOneThatIsNot() {
		for (int i = 0; i < 5; i++) {
			RadioMap map = walks(i);
			Signals signals = Signals.of(map);
			assertEquals(1, signals.components().count());
			double epsilon = 5 + i;
			Clustering wanted = Dbscan.cluster(signals, epsilon, 4, Workers.inline());
			int border = 0;
			for (int s = 0; s < wanted.size(); s++) {
				border += wanted.role(s) == Role.BORDER ? 1 : 0;
			}
			assertTrue(wanted.clusters() > 5 && border > 15,
					wanted.clusters() + " clusters, " + border + " border samples");
			assertSame(wanted,
					SparkDbscan.cluster(LocalSpark.context(), LocalSpark.spread(LocalSpark.context(), map), epsilon, 4,
							20),
					"walks " + i + ", ε " + epsilon);
		}
	}

	static void assertSame(Clustering wanted, Clustering got, String what) {
		assertEquals(wanted.size(), got.size(), what);
		for (int s = 0; s < wanted.size(); s++) {
			assertEquals(wanted.label(s) + " " + wanted.role(s), got.label(s) + " " + got.role(s),
					what + ", sample " + s);
		}
	}

	/** Whether some cluster has samples out of earshot of each other. */
	private static boolean joinsOutOfEarshot(Signals signals, Clustering clustering) {
		int[] component = new int[clustering.clusters()];
		Arrays.fill(component, -1);
		for (int s = 0; s < clustering.size(); s++) {
			int c = clustering.label(s);
			if (c >= 0 && component[c] >= 0 && component[c] != signals.components().componentOf(s)) {
				return true;
			}
			if (c >= 0) {
				component[c] = signals.components().componentOf(s);
			}
		}
		return false;
	}
}
