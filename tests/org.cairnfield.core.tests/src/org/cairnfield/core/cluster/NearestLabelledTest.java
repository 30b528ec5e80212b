package org.cairnfield.core.cluster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.cairnfield.core.distance.DenseForm;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Threads;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NearestLabelledTest {

	private static final Workers HERE = Workers.inline();

	@ParameterizedTest
	@EnumSource(Distance.class)
	void equalsALookAtEverySample(Distance kind) {
		for (long seed = 1; seed <= 60; seed++) {
			Signals signals = Signals.of(ScatteredMap.of(seed, 50), Representation.positive(), kind);
			double[][] distance = DenseForm.of(signals).matrix();
			List<Clustering> clusterings = clusterings(seed);
			List<int[]> found = NearestLabelled.labels(signals, clusterings, HERE);
			for (int i = 0; i < clusterings.size(); i++) {
				assertArrayEquals(plain(distance, clusterings.get(i)), found.get(i),
						"seed " + seed + ", clustering " + i);
			}
		}
	}

	private static int[] plain(double[][] distance, Clustering clustering) {
		int[] labels = clustering.labels();
		for (int s = 0; s < labels.length; s++) {
			int nearest = -1;
			for (int other = 0; other < labels.length && clustering.isNoise(s); other++) {
				if (!clustering.isNoise(other) && (nearest < 0 || distance[s][other] < distance[s][nearest])) {
					nearest = other;
				}
			}
			labels[s] = nearest < 0 ? labels[s] : clustering.label(nearest);
		}
		return labels;
	}

	/** By chance: mostly noise, half noise, no noise, nothing but noise. */
	private static List<Clustering> clusterings(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		List<Clustering> clusterings = new ArrayList<>();
		for (int noiseInFour : new int[] { 3, 2, 0, 4 }) {
			clusterings.add(new Clustering(random.ints(50, 0, 4)
					.map(i -> i < noiseInFour ? Clustering.NOISE : random.nextInt(4)).toArray(), null));
		}
		return clusterings;
	}

	@Test
	void takesTheFirstOfEquallyNearSamples() {
		PointSet line = new DensePoints(new double[][] { { 3 }, { 1 }, { 2 }, { 1 } }, Distance.CITY_BLOCK);
		Clustering clustering = new Clustering(new int[] { 0, 1, -1, 2 }, null);
		assertArrayEquals(new int[] { 0, 1, 0, 2 }, NearestLabelled.labels(line, List.of(clustering), HERE).get(0));
	}

	@Test
	void takesTheFirstOfEquallyNearSamplesInOrOutOfEarshot() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -100); // positive 1: 4 from a at 5 and from b at 3
		b.sample("Lantern Store", 0, 0, 0).reading("b", -98);
		b.sample("Tide House", 0, 0, 0).reading("a", -96);
		Clustering clustering = new Clustering(new int[] { -1, 1, 0 }, null);
		assertArrayEquals(new int[] { 1, 1, 0 },
				NearestLabelled.labels(Signals.of(b.build()), List.of(clustering), HERE).get(0));
	}

	@Test
	void leavesNoiseAloneWhereNothingIsLabelled() {
		PointSet line = new DensePoints(new double[][] { { 3 }, { 1 } }, Distance.CITY_BLOCK);
		Clustering noise = new Clustering(new int[] { -1, -1 }, null);
		assertArrayEquals(new int[] { -1, -1 }, NearestLabelled.labels(line, List.of(noise), HERE).get(0));
		assertEquals(0, NearestLabelled.labels(line, List.of(), HERE).size());
	}

	@Test
	void doesNotDependOnTheNumberOfThreads() {
		Signals signals = Signals.of(ScatteredMap.of(9, 300));
		int[] label = new SplittableRandom(1).ints(300, -3, 6).map(l -> Math.max(-1, l)).toArray();
		List<Clustering> one = List.of(new Clustering(label, null));
		int[] expected = NearestLabelled.labels(signals, one, HERE).get(0);
		assertEquals(0, Arrays.stream(expected).filter(l -> l < 0).count());
		for (int count = 1; count <= 3; count++) {
			try (Threads threads = new Threads(count)) {
				for (int run = 0; run < 4; run++) {
					assertArrayEquals(expected, NearestLabelled.labels(signals, one, threads.workers()).get(0));
				}
			}
		}
	}
}
