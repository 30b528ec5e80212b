package org.cairnfield.curation.split;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Kneedle;

/**
 * The sorted k-distance curve of a map, on which ε is chosen.
 *
 * @param minPts    k is minPts
 * @param ascending distance to the k-th nearest other sample, infinite ones left out, in the units of the distance
 * @param elbow     by Kneedle, where the curve has one: a start, not an answer; on real maps it is mostly too large
 */
public record KDistanceCurve(int minPts, double[] ascending, Optional<Kneedle.Knee> elbow) {

	private static final double ELBOW_SENSITIVITY = 1;

	/** Of a map. @param ascending k-distances, infinite ones last */
	public static KDistanceCurve of(double[] ascending, int minPts) {
		int n = ascending.length;
		while (n > 0 && Double.isInfinite(ascending[n - 1])) {
			n--;
		}
		double[] finite = Arrays.copyOf(ascending, n);
		double[] rank = IntStream.range(0, n).asDoubleStream().toArray();
		return new KDistanceCurve(minPts, finite, n < 3 ? Optional.empty()
				: Kneedle.find(rank, finite, ELBOW_SENSITIVITY, Kneedle.Shape.CONVEX_INCREASING));
	}

	/** Place of the elbow in {@link #ascending}. */
	public Optional<Integer> elbowAt() {
		return elbow.map(Kneedle.Knee::index);
	}

	/** ε at the elbow. */
	public Optional<Double> elbowEpsilon() {
		return elbow.map(Kneedle.Knee::y);
	}

	/**
	 * The k-distance that a share of the samples does not exceed; of equal ones of 0 the first above.
	 *
	 * @param share 0 … 1
	 * @return 0 for an empty curve
	 */
	public double epsilonAt(double share) {
		int last = ascending.length - 1;
		int at = Math.min(last, (int) (share * ascending.length));
		while (at >= 0 && at < last && ascending[at] == 0) {
			at++;
		}
		return at < 0 ? 0 : ascending[at];
	}

	/** Share, 0 … 1, of the samples whose k-distance is ε at most. */
	public double shareWithin(double epsilon) {
		int low = 0;
		int high = ascending.length;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (ascending[middle] <= epsilon) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return ascending.length == 0 ? 0 : (double) low / ascending.length;
	}
}
