package org.cairnfield.curation.propose;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.task.Workers;

/** For each noise sample the labelled sample nearest in signal space, of equals the first in the map. */
final class NearestSamples {

	private final int[] sample;
	private final double[] distance;

	private NearestSamples(int n) {
		sample = new int[n];
		distance = new double[n];
		Arrays.fill(sample, -1);
		Arrays.fill(distance, Double.NaN);
	}

	static NearestSamples of(PointSet points, Clustering clustering, Workers workers) {
		NearestSamples found = new NearestSamples(points.size());
		workers.progress().begin("nearest labelled", points.size());
		workers.forRanges(points.size(), () -> {
			PointSet.Surroundings around = points.surroundings();
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					if (clustering.isNoise(s)) {
						found.find(s, around, clustering);
					}
				}
			};
		});
		return found;
	}

	private void find(int s, PointSet.Surroundings around, Clustering clustering) {
		double[] least = { Double.POSITIVE_INFINITY };
		around.visit(s, Double.POSITIVE_INFINITY, (other, d) -> {
			if (!clustering.isNoise(other) && (d < least[0] || d == least[0] && other < sample[s])) {
				least[0] = d;
				sample[s] = other;
				distance[s] = d;
			}
			return least[0];
		});
	}

	/** −1 where nothing is labelled. */
	int sample(int noise) {
		return sample[noise];
	}

	/** NaN where nothing is labelled. */
	double distance(int noise) {
		return distance[noise];
	}
}
