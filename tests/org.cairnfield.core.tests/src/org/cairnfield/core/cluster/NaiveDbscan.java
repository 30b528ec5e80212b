package org.cairnfield.core.cluster;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * DBSCAN word by word from a full distance matrix: Ester et al., KDD-96, definitions 1 to 6, the point itself
 * counted, closed ball; a border sample joins its nearest core sample, of equally near ones the first.
 */
final class NaiveDbscan {

	private NaiveDbscan() {
	}

	static Clustering cluster(double[][] distance, double epsilon, int minPts) {
		int n = distance.length;
		boolean[] core = core(distance, epsilon, minPts);
		int[] label = new int[n];
		Role[] role = new Role[n];
		Arrays.fill(label, Clustering.NOISE);
		int next = 0;
		for (int seed = 0; seed < n; seed++) {
			if (core[seed] && label[seed] == Clustering.NOISE) {
				Deque<Integer> open = new ArrayDeque<>();
				open.add(seed);
				label[seed] = next;
				while (!open.isEmpty()) {
					int at = open.remove();
					for (int other = 0; other < n; other++) {
						if (core[other] && label[other] == Clustering.NOISE && distance[at][other] <= epsilon) {
							label[other] = next;
							open.add(other);
						}
					}
				}
				next++;
			}
		}
		int[] placed = label.clone();
		for (int s = 0; s < n; s++) {
			int nearest = -1;
			for (int other = 0; other < n; other++) {
				if (core[other] && distance[s][other] <= epsilon
						&& (nearest < 0 || distance[s][other] < distance[s][nearest])) {
					nearest = other;
				}
			}
			placed[s] = core[s] ? label[s] : nearest < 0 ? Clustering.NOISE : label[nearest];
			role[s] = core[s] ? Role.CORE : nearest < 0 ? Role.NOISE : Role.BORDER;
		}
		return new Clustering(placed, role);
	}

	static boolean[] core(double[][] distance, double epsilon, int minPts) {
		boolean[] core = new boolean[distance.length];
		for (int s = 0; s < core.length; s++) {
			core[s] = Arrays.stream(distance[s]).filter(d -> d <= epsilon).count() >= minPts;
		}
		return core;
	}
}
