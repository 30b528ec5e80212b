package org.cairnfield.core.cluster;

import java.util.Arrays;
import java.util.BitSet;
import java.util.SplittableRandom;
import org.cairnfield.core.task.Workers;

/**
 * The messages of affinity propagation on one matrix of similarities, n × n with the preferences on its diagonal, row after row.
 * Two more such matrices hold responsibilities and availabilities.
 */
final class MessagePassing {

	/** Similarities change by at most half this share of themselves, far below what any reading tells apart. */
	private static final double TELLING_APART = 1e-12;

	/**
	 * @param exemplarOf by point
	 * @param converged  whether the exemplars stayed the same for long enough
	 */
	record Outcome(int[] exemplarOf, boolean converged, int rounds) {
	}

	private final int n;
	private final double[] similarity;
	private final double[] responsibility;
	private final double[] availability;
	private final double damping;
	private final Workers workers;

	private MessagePassing(int n, double[] similarity, double damping, Workers workers) {
		this.n = n;
		this.similarity = similarity;
		this.damping = damping;
		this.workers = workers;
		responsibility = new double[similarity.length];
		availability = new double[similarity.length];
	}

	/**
	 * @param similarity of point i to point k at i·n + k; changed by a trifle, see {@link #TELLING_APART}
	 * @param n          at least 2
	 */
	static Outcome run(double[] similarity, int n, AffinityPropagation.Settings settings, Workers workers) {
		if (isFlat(similarity, n)) {
			// Any choice is as good as any other: all points stand for themselves, or the first for all.
			int[] exemplarOf = new int[n];
			Arrays.setAll(exemplarOf, i -> similarity[0] >= similarity[1] ? i : 0);
			return new Outcome(exemplarOf, true, 0);
		}
		tellApart(similarity, n);
		return new MessagePassing(n, similarity, settings.damping(), workers).run(settings.steadyRounds(),
				settings.mostRounds());
	}

	/** Whether all similarities are equal, and all preferences. */
	private static boolean isFlat(double[] similarity, int n) {
		for (int at = 0; at < similarity.length; at++) {
			if (similarity[at] != similarity[at % (n + 1) == 0 ? 0 : 1]) {
				return false;
			}
		}
		return true;
	}

	private static void tellApart(double[] similarity, int n) {
		SplittableRandom random = new SplittableRandom(n);
		for (int at = 0; at < similarity.length; at++) {
			similarity[at] *= 1 + TELLING_APART * (random.nextDouble() - 0.5);
		}
	}

	private Outcome run(int steadyRounds, int mostRounds) {
		workers.progress().begin(Messages.MessagePassing_affinityPropagation, 2L * n * mostRounds);
		BitSet exemplars = new BitSet();
		int steady = 0;
		int round = 0;
		while (round < mostRounds && (steady < steadyRounds || exemplars.isEmpty())) {
			workers.forRanges(n, () -> this::updateResponsibilities);
			workers.forRanges(n, () -> {
				double[] sums = new double[n];
				return (from, to) -> updateAvailabilities(from, to, sums);
			});
			BitSet now = exemplars();
			steady = now.equals(exemplars) ? steady + 1 : 1;
			exemplars = now;
			round++;
		}
		workers.progress().advance(2L * n * (mostRounds - round)); // rounds that were not needed
		workers.checkCancelled();
		boolean converged = steady >= steadyRounds && !exemplars.isEmpty();
		return new Outcome(refined(exemplars.isEmpty() ? likeliest() : exemplars), converged, round);
	}

	/** r(i, k) ← s(i, k) − max over k' ≠ k of a(i, k') + s(i, k'), damped, for rows i. */
	private void updateResponsibilities(int from, int to) {
		for (int i = from; i < to; i++) {
			int start = i * n;
			double most = Double.NEGATIVE_INFINITY;
			double second = Double.NEGATIVE_INFINITY;
			int best = -1;
			for (int at = start; at < start + n; at++) {
				double sum = availability[at] + similarity[at];
				if (sum > most) {
					second = most;
					most = sum;
					best = at;
				} else if (sum > second) {
					second = sum;
				}
			}
			double ofBest = damped(responsibility[best], similarity[best] - second);
			for (int at = start; at < start + n; at++) {
				responsibility[at] = damped(responsibility[at], similarity[at] - most);
			}
			responsibility[best] = ofBest;
		}
	}

	/**
	 * a(i, k) ← min(0, r(k, k) + Σ over i' ∉ {i, k} of max(0, r(i', k))) and a(k, k) ← Σ over i' ≠ k of max(0, r(i', k)), damped, for
	 * columns k.
	 */
	private void updateAvailabilities(int from, int to, double[] sums) {
		Arrays.fill(sums, from, to, 0);
		for (int i = 0; i < n; i++) {
			for (int k = from; k < to; k++) {
				sums[k] += Math.max(0, responsibility[i * n + k]);
			}
		}
		for (int k = from; k < to; k++) {
			sums[k] -= Math.max(0, responsibility[k * n + k]);
		}
		for (int i = 0; i < n; i++) {
			for (int k = from; k < to; k++) {
				int at = i * n + k;
				double others = i == k ? sums[k]
						: Math.min(0, responsibility[k * n + k] + sums[k] - Math.max(0, responsibility[at]));
				availability[at] = damped(availability[at], others);
			}
		}
	}

	private double damped(double before, double now) {
		return damping * before + (1 - damping) * now;
	}

	private double evidence(int k) {
		return responsibility[k * n + k] + availability[k * n + k];
	}

	private BitSet exemplars() {
		BitSet exemplars = new BitSet(n);
		for (int k = 0; k < n; k++) {
			exemplars.set(k, evidence(k) > 0);
		}
		return exemplars;
	}

	/** The one that is nearest to being an exemplar. */
	private BitSet likeliest() {
		int best = 0;
		for (int k = 1; k < n; k++) {
			best = evidence(k) > evidence(best) ? k : best;
		}
		BitSet one = new BitSet(n);
		one.set(best);
		return one;
	}

	/** Assigns all points, chooses each cluster's exemplar again by the sum of similarities to it, and assigns once more. */
	private int[] refined(BitSet exemplars) {
		int[] exemplarOf = assigned(exemplars);
		BitSet again = new BitSet(n);
		exemplars.stream().forEach(e -> {
			int[] members = membersOf(e, exemplarOf);
			int best = e;
			double most = Double.NEGATIVE_INFINITY;
			for (int candidate : members) {
				double sum = 0;
				for (int member : members) {
					sum += member == candidate ? 0 : similarity[member * n + candidate];
				}
				if (sum > most) {
					most = sum;
					best = candidate;
				}
			}
			again.set(best);
		});
		return assigned(again);
	}

	private static int[] membersOf(int exemplar, int[] exemplarOf) {
		int[] members = new int[exemplarOf.length];
		int count = 0;
		for (int i = 0; i < exemplarOf.length; i++) {
			if (exemplarOf[i] == exemplar) {
				members[count++] = i;
			}
		}
		return Arrays.copyOf(members, count);
	}

	/** Each point's most similar exemplar, of equals the first. */
	private int[] assigned(BitSet exemplars) {
		int[] exemplarOf = new int[n];
		int[] some = exemplars.stream().toArray();
		for (int i = 0; i < n; i++) {
			int best = some[0];
			for (int e : some) {
				best = similarity[i * n + e] > similarity[i * n + best] ? e : best;
			}
			exemplarOf[i] = exemplars.get(i) ? i : best;
		}
		return exemplarOf;
	}
}
