package org.cairnfield.core.correlate;

import java.util.List;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * For every noise sample the labelled samples whose rows of the distance matrix correlate with its own
 * (Pearson), and the nearest labelled sample. The matrix is never held: a row product needs only what the
 * two samples heard, see {@link OverlapProducts}.
 *
 * <p>With R readings in the largest component and N noise samples: N·R steps for city-block, N·n² for a
 * distance that is no plain sum. Components out of earshot are bounded away, see {@link BeyondEarshot}. With whole-number values
 * all sums are exact as long as n·d² stays under 2<sup>53</sup>.
 */
public final class NoiseCorrelation {

	private NoiseCorrelation() {
	}

	/**
	 * @return one entry a noise sample, ascending
	 */
	public static List<NoisePlacement> place(Signals signals, Clustering clustering, Workers workers) {
		if (clustering.size() != signals.size()) {
			throw new IllegalArgumentException(
					"clustering of " + clustering.size() + " samples for a map of " + signals.size());
		}
		int n = signals.size();
		int[] noise = new int[clustering.noise()];
		int count = 0;
		for (int s = 0; s < n; s++) {
			if (clustering.isNoise(s)) {
				noise[count++] = s;
			}
		}
		NoisePlacement[] placed = new NoisePlacement[noise.length];
		RowMoments moments = RowMoments.of(signals, workers);
		BeyondEarshot beyond = new BeyondEarshot(signals, clustering, moments);
		workers.progress().begin("correlation", noise.length);
		workers.forRanges(noise.length, () -> {
			RowProducts products = signals.distance() == Distance.CITY_BLOCK
					? new OverlapProducts(signals, moments)
					: new RecomputedProducts(signals);
			BestClusters best = new BestClusters(clustering, moments, products);
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					placed[i] = placement(signals, clustering, noise[i], best, products, beyond);
				}
			};
		});
		return List.of(placed);
	}

	private static NoisePlacement placement(Signals signals, Clustering clustering, int sample, BestClusters best, RowProducts products,
			BeyondEarshot beyond) {
		Components components = signals.components();
		int component = components.componentOf(sample);
		best.begin(sample);
		int nearest = beyond.quietestElsewhere(component);
		double nearestDistance = nearest < 0 ? Double.POSITIVE_INFINITY : products.distance(nearest);
		for (int place = 0; place < components.size(component); place++) {
			int other = components.member(component, place);
			if (!clustering.isNoise(other)) {
				best.take(other);
				double d = products.distance(other);
				if (d < nearestDistance || d == nearestDistance && other < nearest) {
					nearestDistance = d;
					nearest = other;
				}
			}
		}
		beyond.search(sample, best);
		return best.placement(nearest, nearestDistance);
	}
}
