package org.cairnfield.core.correlate;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.Signals;

/**
 * The labelled samples out of earshot of a noise sample, of which hardly any ever correlates best. With z the rows of the distance
 * matrix, centred and of length 1, and S the magnitudes, z<sub>i</sub>(c) = p<sub>i</sub> + q<sub>i</sub>·S<sub>c</sub> for every c
 * beyond earshot of i; U<sub>i</sub> and V<sub>i</sub> are Σ z<sub>i</sub>(c) and Σ z<sub>i</sub>(c)·S<sub>c</sub> over those within.
 * For i and j of different components, with R all samples of neither,
 *
 * <pre>
 * r(i,j) = pj·(Ui + |R|·pi + qi·ΣR S) + qj·(Vi + pi·ΣR S + qi·ΣR S²) + pi·Uj + qi·Vj
 * </pre>
 *
 * which is linear in (p<sub>j</sub>, q<sub>j</sub>, U<sub>j</sub>, V<sub>j</sub>). So the labelled samples of a component are
 * halved again and again by these four, and a half whose bounds promise less than the second best cluster so far is passed over.
 * For a distance that is no plain sum all are looked at. Immutable.
 */
final class BeyondEarshot {

	private static final int LEAF = 32;
	private static final int FEATURES = 4;
	/** Far above the rounding of a bound, far below any difference that matters. */
	private static final double MARGIN = 1e-9;

	private final Signals signals;
	private final Components components;
	private final RowMoments moments;
	/** Labelled samples by component, in the order of the leaves. */
	private final int[][] labelled;
	/** Quietest labelled sample of a component, or −1; and the quietest of all and of all other components. */
	private final int[] quietest;
	private int quietestOfAll = -1;
	private int quietestOfOthers = -1;
	private final Node[] root;

	/** Bounds of some samples: those from … to − 1 of a component's. */
	private static final class Node {
		private final int from;
		private final int to;
		private final double[] low = new double[FEATURES];
		private final double[] high = new double[FEATURES];
		private Node left;
		private Node right;

		Node(int from, int to) {
			this.from = from;
			this.to = to;
		}

		double most(double[] factors) {
			double sum = MARGIN;
			for (int f = 0; f < FEATURES; f++) {
				sum += factors[f] * (factors[f] > 0 ? high[f] : low[f]);
			}
			return sum;
		}
	}

	BeyondEarshot(Signals signals, Clustering clustering, RowMoments moments) {
		this.signals = signals;
		this.moments = moments;
		components = signals.components();
		labelled = new int[components.count()][];
		quietest = new int[labelled.length];
		root = new Node[labelled.length];
		if (labelled.length == 1) {
			return;
		}
		for (int c = 0; c < labelled.length; c++) {
			labelled[c] = labelled(clustering, c);
			quietest[c] = -1;
			for (int s : labelled[c]) {
				quietest[c] = quieter(s, quietest[c]) ? s : quietest[c];
			}
			if (quietest[c] >= 0 && quieter(quietest[c], quietestOfAll)) {
				quietestOfOthers = quietestOfAll;
				quietestOfAll = quietest[c];
			} else if (quietest[c] >= 0 && quieter(quietest[c], quietestOfOthers)) {
				quietestOfOthers = quietest[c];
			}
			if (signals.distance().isSum()) {
				labelled[c] = Arrays.stream(labelled[c]).filter(s -> moments.spread[s] > 0).toArray();
				root[c] = labelled[c].length == 0 ? null : split(labelled[c], 0, labelled[c].length);
			}
		}
	}

	private int[] labelled(Clustering clustering, int component) {
		int[] members = new int[components.size(component)];
		Arrays.setAll(members, place -> components.member(component, place));
		return Arrays.stream(members).filter(s -> !clustering.isNoise(s)).toArray();
	}

	private boolean quieter(int a, int b) {
		double byMagnitude = b < 0 ? -1 : signals.rows().magnitude(a) - signals.rows().magnitude(b);
		return byMagnitude < 0 || byMagnitude == 0 && a < b;
	}

	/** The labelled sample that is nearest to each of a component, but for those of its own; −1 where there is none. */
	int quietestElsewhere(int component) {
		return quietestOfAll >= 0 && components.componentOf(quietestOfAll) == component ? quietestOfOthers
				: quietestOfAll;
	}

	/** Receives a sample that may be among the best. */
	interface Taker {
		void take(int other);
	}

	/** Offers all samples of other components that may be among the best. */
	void search(int sample, BestClusters best, Taker taker) {
		int own = components.componentOf(sample);
		boolean bounded = signals.distance().isSum();
		if (labelled.length == 1 || bounded && !(moments.spread[sample] > 0)) {
			return;
		}
		double[] of = bounded ? features(sample) : null;
		double[] factors = new double[FEATURES];
		for (int c = 0; c < labelled.length; c++) {
			if (c == own) {
				continue;
			}
			if (!bounded) {
				takeAll(labelled[c], 0, labelled[c].length, taker);
			} else if (root[c] != null) {
				double rest = (double) moments.n - components.size(own) - components.size(c);
				double restSum = moments.totalSum - moments.componentSum[own] - moments.componentSum[c];
				double restSquares = moments.totalSquares - moments.componentSquares[own] - moments.componentSquares[c];
				factors[0] = of[2] + rest * of[0] + of[1] * restSum;
				factors[1] = of[3] + of[0] * restSum + of[1] * restSquares;
				factors[2] = of[0];
				factors[3] = of[1];
				search(root[c], root[c].most(factors), factors, labelled[c], best, taker);
			}
		}
	}

	private static void search(Node node, double most, double[] factors, int[] samples, BestClusters best,
			Taker taker) {
		if (most < best.least()) {
			return;
		}
		if (node.left == null) {
			takeAll(samples, node.from, node.to, taker);
			return;
		}
		double left = node.left.most(factors);
		double right = node.right.most(factors);
		search(left > right ? node.left : node.right, Math.max(left, right), factors, samples, best, taker);
		search(left > right ? node.right : node.left, Math.min(left, right), factors, samples, best, taker);
	}

	private static void takeAll(int[] samples, int from, int to, Taker taker) {
		for (int i = from; i < to; i++) {
			taker.take(samples[i]);
		}
	}

	/** p, q, U, V. */
	private double[] features(int sample) {
		int component = components.componentOf(sample);
		double q = Math.sqrt(moments.n) / moments.spread[sample];
		double mean = moments.sum[sample] / moments.n;
		return new double[] { (signals.rows().magnitude(sample) - mean) * q, q,
				(moments.ownSum[sample] - components.size(component) * mean) * q,
				(moments.ownWeighted[sample] - mean * moments.componentSum[component]) * q };
	}

	/** Halves samples by the feature that spreads them most, in the units that it has in a correlation. */
	private Node split(int[] samples, int from, int to) {
		Node node = new Node(from, to);
		double[][] features = new double[to - from][];
		Arrays.fill(node.low, Double.POSITIVE_INFINITY);
		Arrays.fill(node.high, Double.NEGATIVE_INFINITY);
		double[] unit = new double[FEATURES];
		for (int i = from; i < to; i++) {
			double[] of = features(samples[i]);
			features[i - from] = of;
			for (int f = 0; f < FEATURES; f++) {
				node.low[f] = Math.min(node.low[f], of[f]);
				node.high[f] = Math.max(node.high[f], of[f]);
			}
			unit[0] += Math.abs(of[2] + moments.n * of[0] + of[1] * moments.totalSum);
			unit[1] += Math.abs(of[3] + of[0] * moments.totalSum + of[1] * moments.totalSquares);
			unit[2] += Math.abs(of[0]);
			unit[3] += Math.abs(of[1]);
		}
		if (to - from > LEAF) {
			int widest = 0;
			for (int f = 1; f < FEATURES; f++) {
				if ((node.high[f] - node.low[f]) * unit[f] > (node.high[widest] - node.low[widest]) * unit[widest]) {
					widest = f;
				}
			}
			sort(samples, from, features, widest);
			int middle = (from + to) >>> 1;
			node.left = split(samples, from, middle);
			node.right = split(samples, middle, to);
		}
		return node;
	}

	/** By one feature, as precisely as halving needs. */
	private static void sort(int[] samples, int from, double[][] features, int by) {
		long[] keys = new long[features.length];
		for (int i = 0; i < keys.length; i++) {
			int bits = Float.floatToIntBits((float) features[i][by]);
			keys[i] = (long) (bits ^ (bits >> 31 & Integer.MAX_VALUE)) << 32 | samples[from + i];
		}
		Arrays.sort(keys);
		for (int i = 0; i < keys.length; i++) {
			samples[from + i] = (int) keys[i];
		}
	}
}
