package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.SampleSums;
import org.cairnfield.core.correlate.RowSums;

/**
 * The labelled samples of all tasks, for noise that is out of earshot of them.
 *
 * <p>Out of earshot r is a plain product of (n·α − T·Σd, n·a − Σd, n)/σ of the noise sample and (1, γ, δ)/σ of the labelled one, where n
 * samples have magnitudes S that add up to T, d are the distances in a row, σ² = n·Σd² − (Σd)², a is the noise sample's magnitude,
 * γ = −2·Σo and δ = −2·ΣS·o by overlaps o. So a block of samples has an upper bound from the ranges of their three numbers, and most
 * blocks need no look.
 */
final class Candidates implements Serializable {

	private static final long serialVersionUID = 1;

	private static final int BLOCK = 64;
	/** Far above what rounding does to a bound, far below what tells clusters apart. */
	private static final double MARGIN = 1e-9;

	/**
	 * A labelled sample.
	 *
	 * @param task that knows it
	 */
	record Candidate(int id, int cluster, int task, RowSums row) implements Serializable {
	}

	private final SampleSums all;
	private final int[] id;
	private final int[] cluster;
	private final int[] task;
	private final double[] magnitude;
	private final double[] ownSum;
	private final double[] ownWeighted;
	private final double[] sum;
	private final double[] spread;
	private final int[] own;
	private final SampleSums[] owns;
	/** By block: least and most of the three numbers. */
	private final double[][] least;
	private final double[][] most;
	/** The quietest, and the quietest of another task; shorter where there are none. */
	private final int[] quietest;

	Candidates(List<Candidate> candidates, SampleSums all) {
		this.all = all;
		int n = candidates.size();
		id = new int[n];
		cluster = new int[n];
		task = new int[n];
		magnitude = new double[n];
		ownSum = new double[n];
		ownWeighted = new double[n];
		sum = new double[n];
		spread = new double[n];
		own = new int[n];
		List<Candidate> sorted = new ArrayList<>(candidates);
		Map<Candidate, double[]> numbers = new HashMap<>();
		sorted.forEach(c -> numbers.put(c, numbers(c.row)));
		sorted.sort(Comparator.comparingDouble((Candidate c) -> numbers.get(c)[1]).thenComparingInt(Candidate::id));
		int blocks = (n + BLOCK - 1) / BLOCK;
		least = new double[blocks][3];
		most = new double[blocks][3];
		Map<SampleSums, Integer> known = new HashMap<>();
		for (int i = 0; i < n; i++) {
			Candidate c = sorted.get(i);
			id[i] = c.id;
			cluster[i] = c.cluster;
			task[i] = c.task;
			magnitude[i] = c.row.magnitude();
			ownSum[i] = c.row.ownSum();
			ownWeighted[i] = c.row.ownWeighted();
			sum[i] = c.row.sum();
			spread[i] = c.row.spread();
			own[i] = known.computeIfAbsent(c.row.own(), e -> known.size());
			enclose(i, numbers.get(c));
		}
		owns = new SampleSums[known.size()];
		known.forEach((e, at) -> owns[at] = e);
		quietest = quietest();
	}

	private void enclose(int i, double[] numbers) {
		int block = i / BLOCK;
		for (int k = 0; k < 3; k++) {
			least[block][k] = i % BLOCK == 0 ? numbers[k] : Math.min(least[block][k], numbers[k]);
			most[block][k] = i % BLOCK == 0 ? numbers[k] : Math.max(most[block][k], numbers[k]);
		}
	}

	private int[] quietest() {
		int first = -1;
		for (int i = 0; i < id.length; i++) {
			first = first < 0 || isQuieter(i, first) ? i : first;
		}
		int second = -1;
		for (int i = 0; i < id.length; i++) {
			if (task[i] != task[first] && (second < 0 || isQuieter(i, second))) {
				second = i;
			}
		}
		return first < 0 ? new int[0] : second < 0 ? new int[] { first } : new int[] { first, second };
	}

	private boolean isQuieter(int a, int b) {
		return magnitude[a] < magnitude[b] || magnitude[a] == magnitude[b] && id[a] < id[b];
	}

	/** (1, γ, δ)/σ; all 0 where the row is constant, for which r is not defined. */
	private double[] numbers(RowSums row) {
		double b = row.magnitude();
		double sigma = row.spread();
		if (!(sigma > 0)) {
			return new double[3];
		}
		double gamma = row.ownSum() - row.own().samples() * b - row.own().sum();
		double delta = row.ownWeighted() - b * row.own().sum() - row.own().squares();
		return new double[] { 1 / sigma, gamma / sigma, delta / sigma };
	}

	private double[] weights(RowSums row) {
		double a = row.magnitude();
		double sigma = row.spread();
		SampleSums others = all.without(row.own());
		double alpha = row.ownWeighted() + a * others.sum() + others.squares();
		return new double[] { (all.samples() * alpha - row.sum() * all.sum()) / sigma,
				(all.samples() * a - row.sum()) / sigma, all.samples() / sigma };
	}

	/**
	 * Offers whatever may be among the two best.
	 *
	 * @param ofTask the noise sample's, whose own labelled samples are left out
	 */
	void offer(RowSums noise, int ofTask, TwoBest best) {
		double[] w = weights(noise);
		Integer[] order = new Integer[least.length];
		double[] bound = new double[least.length];
		for (int b = 0; b < bound.length; b++) {
			order[b] = b;
			for (int k = 0; k < 3; k++) {
				bound[b] += Math.max(w[k] * least[b][k], w[k] * most[b][k]);
			}
		}
		Arrays.sort(order, Comparator.comparingDouble(b -> -bound[b]));
		for (int b : order) {
			if (bound[b] + MARGIN < best.threshold()) {
				return;
			}
			for (int i = b * BLOCK; i < Math.min(id.length, (b + 1) * BLOCK); i++) {
				if (task[i] != ofTask) {
					best.offer(cluster[i], noise.correlation(row(i), all), id[i]);
				}
			}
		}
	}

	private RowSums row(int i) {
		return new RowSums(magnitude[i], ownSum[i], ownWeighted[i], sum[i], spread[i], owns[own[i]]);
	}

	/** The quietest sample of another task, which is the nearest one out of earshot; −1 where there is none. */
	int nearest(int ofTask) {
		return Arrays.stream(quietest).filter(i -> task[i] != ofTask).findFirst().orElse(-1);
	}

	/** Of what {@link #nearest} gives. */
	int id(int candidate) {
		return id[candidate];
	}

	/** Likewise. */
	int cluster(int candidate) {
		return candidate < 0 ? Clustering.NOISE : cluster[candidate];
	}

	/** Likewise. */
	double magnitude(int candidate) {
		return magnitude[candidate];
	}
}
