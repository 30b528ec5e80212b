package org.cairnfield.core.cluster;

import java.util.ArrayDeque;
import java.util.Deque;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/** Cuts clusters in two by 2-means until none is larger than a limit, so that no fine search is long. */
public final class LargeClusters {

	/**
	 * Times √n: the largest cluster left whole, unless asked otherwise. Cells of this size and two levels of search found
	 * positions as well as cells twice as large for two thirds of the comparisons, on simulated and on open surveys.
	 */
	public static final double USUAL_FACTOR = 0.5;

	private LargeClusters() {
	}

	/** √n / 2, at least 2. */
	public static int usualLimit(int samples) {
		return Math.max(2, (int) Math.round(USUAL_FACTOR * Math.sqrt(samples)));
	}

	/**
	 * @param limit samples in the largest cluster that is left whole, at least 2. Samples that 2-means
	 *              cannot tell apart are halved in their order.
	 */
	public static Clustering cut(Signals signals, Clustering clustering, int limit, long seed, Workers workers) {
		if (limit < 2) {
			throw new IllegalArgumentException("limit must be at least 2: " + limit);
		}
		int[] label = clustering.labels();
		int next = clustering.clusters();
		Deque<int[]> open = new ArrayDeque<>();
		for (int[] members : clustering.members()) {
			open.add(members);
		}
		while (!open.isEmpty()) {
			workers.checkCancelled();
			int[] members = open.remove();
			if (members.length <= limit) {
				continue;
			}
			int[][] parts = KMeans.cluster(KMeans.points(signals, members), 2, seed, workers).members();
			int[][] halves = parts.length == 2 ? parts : inOrder(members.length);
			int[] stay = pick(members, halves[0]);
			int[] leave = pick(members, halves[1]);
			for (int s : leave) {
				label[s] = next;
			}
			next++;
			open.add(stay);
			open.add(leave);
		}
		return clustering.relabelled(label);
	}

	private static int[][] inOrder(int n) {
		int[][] halves = { new int[n / 2], new int[n - n / 2] };
		for (int i = 0; i < n; i++) {
			if (i < n / 2) {
				halves[0][i] = i;
			} else {
				halves[1][i - n / 2] = i;
			}
		}
		return halves;
	}

	private static int[] pick(int[] members, int[] places) {
		int[] picked = new int[places.length];
		for (int i = 0; i < places.length; i++) {
			picked[i] = members[places[i]];
		}
		return picked;
	}
}
