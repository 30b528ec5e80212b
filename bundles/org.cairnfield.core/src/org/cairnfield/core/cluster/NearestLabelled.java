package org.cairnfield.core.cluster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Gives every noise sample the cluster of the nearest labelled sample, of equals the first in the map. For
 * several clusterings of one map the distances are computed once.
 */
public final class NearestLabelled {

	private NearestLabelled() {
	}

	/** Labels by clustering and sample; a map without any labelled sample keeps its noise. */
	public static List<int[]> labels(PointSet points, List<Clustering> clusterings, Workers workers) {
		int n = points.size();
		List<int[]> labels = new ArrayList<>();
		for (Clustering c : clusterings) {
			labels.add(c.labels());
		}
		workers.progress().begin("nearest labelled", n);
		workers.forRanges(n, () -> {
			PointSet.Surroundings around = points.surroundings();
			double[] least = new double[clusterings.size()];
			int[] nearest = new int[clusterings.size()];
			return (from, to) -> {
				for (int s = from; s < to; s++) {
					place(s, around, clusterings, labels, least, nearest);
				}
			};
		});
		return labels;
	}

	/** As above, for the samples of a map. */
	public static List<int[]> labels(Signals signals, List<Clustering> clusterings, Workers workers) {
		return labels(PointSet.of(signals), clusterings, workers);
	}

	private static void place(int sample, PointSet.Surroundings around, List<Clustering> clusterings, List<int[]> labels,
			double[] least, int[] nearest) {
		boolean any = false;
		for (int i = 0; i < least.length; i++) {
			boolean noise = clusterings.get(i).isNoise(sample) && clusterings.get(i).clusters() > 0;
			least[i] = noise ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
			any |= noise;
		}
		if (!any) {
			return;
		}
		Arrays.fill(nearest, -1);
		around.visit(sample, Double.POSITIVE_INFINITY, (other, d) -> {
			double reach = Double.NEGATIVE_INFINITY;
			for (int i = 0; i < least.length; i++) {
				if (d <= least[i] && !clusterings.get(i).isNoise(other)
						&& (d < least[i] || nearest[i] < 0 || other < nearest[i])) {
					least[i] = d;
					nearest[i] = other;
				}
				reach = Math.max(reach, least[i]);
			}
			return reach;
		});
		for (int i = 0; i < least.length; i++) {
			if (nearest[i] >= 0) {
				labels.get(i)[sample] = clusterings.get(i).label(nearest[i]);
			}
		}
	}
}
