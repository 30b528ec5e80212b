package org.cairnfield.core.correlate;

import java.util.Arrays;
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
 * distance that is no plain sum. With whole-number values all sums are exact as long as n·d² stays under
 * 2<sup>53</sup>.
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
		workers.progress().begin("correlation", noise.length);
		workers.forRanges(noise.length, () -> {
			RowProducts products = signals.distance() == Distance.CITY_BLOCK
					? new OverlapProducts(signals, moments)
					: new RecomputedProducts(signals);
			Best best = new Best(signals, clustering, moments, products);
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					placed[i] = best.of(noise[i]);
				}
			};
		});
		return List.of(placed);
	}

	/** One thread's search; scratch by cluster and by sample. */
	private static final class Best {
		private final Signals signals;
		private final Clustering clustering;
		private final RowMoments moments;
		private final RowProducts products;
		private final double[] product;
		private final double[] bestR;
		private final int[] carrier;

		Best(Signals signals, Clustering clustering, RowMoments moments, RowProducts products) {
			this.signals = signals;
			this.clustering = clustering;
			this.moments = moments;
			this.products = products;
			product = new double[signals.size()];
			bestR = new double[clustering.clusters()];
			carrier = new int[clustering.clusters()];
		}

		NoisePlacement of(int sample) {
			products.withAll(sample, clustering, product);
			Arrays.fill(bestR, Double.NEGATIVE_INFINITY);
			Arrays.fill(carrier, -1);
			int nearest = -1;
			double nearestDistance = Double.POSITIVE_INFINITY;
			for (int other = 0; other < product.length; other++) {
				int cluster = clustering.label(other);
				if (cluster == Clustering.NOISE) {
					continue;
				}
				double r = moments.correlation(sample, other, product[other]);
				if (r > bestR[cluster]) { // false for NaN: an undefined r is no match
					bestR[cluster] = r;
					carrier[cluster] = other;
				}
				double d = distance(sample, other);
				if (d < nearestDistance) {
					nearestDistance = d;
					nearest = other;
				}
			}
			return placement(sample, nearest, nearestDistance);
		}

		private double distance(int sample, int other) {
			Components components = signals.components();
			if (components.componentOf(sample) == components.componentOf(other)) {
				return products.row()[components.placeOf(other)];
			}
			return signals.apart(sample, other);
		}

		private NoisePlacement placement(int sample, int nearest, double nearestDistance) {
			int first = -1;
			int second = -1;
			for (int c = 0; c < bestR.length; c++) {
				if (carrier[c] >= 0 && (first < 0 || better(c, first))) {
					second = first;
					first = c;
				} else if (carrier[c] >= 0 && (second < 0 || better(c, second))) {
					second = c;
				}
			}
			return new NoisePlacement(sample, first < 0 ? Clustering.NOISE : first, first < 0 ? Double.NaN : bestR[first],
					first < 0 ? -1 : carrier[first], second < 0 ? Clustering.NOISE : second,
					second < 0 ? Double.NaN : bestR[second], nearest, nearestDistance,
					nearest < 0 ? Clustering.NOISE : clustering.label(nearest));
		}

		private boolean better(int a, int b) {
			return bestR[a] > bestR[b] || (bestR[a] == bestR[b] && carrier[a] < carrier[b]);
		}
	}
}
