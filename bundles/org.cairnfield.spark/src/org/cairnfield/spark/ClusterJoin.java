package org.cairnfield.spark;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.distance.DisjointSets;

/**
 * The clusters of all tasks as those of the whole map, on the driver. Two clusters of tasks are one where they share a core
 * sample, or where cores out of earshot of each other are both so quiet that they are within ε.
 *
 * <p>The latter are never compared in pairs. Let q be the quietest core of all, and q′ the quietest one out of earshot of q. Whatever
 * core has a neighbour out of earshot that is core has q as one as well, or q′ where it is within earshot of q; and then q has q′.
 * So all of them are one cluster.
 */
final class ClusterJoin {

	private final double epsilon;
	private final Map<Integer, ClusterTask.Summary> summaries = new HashMap<>();
	private final Map<Integer, Integer> firstOfTask = new HashMap<>();
	private final DisjointSets sets;
	private final int[] number;
	/** The quietest core, and the quietest out of its earshot; null where there is none. */
	private ClusterTask.Core quietest;
	private int quietestCluster;
	private ClusterTask.Core second;
	private int secondCluster;

	private ClusterJoin(List<ClusterTask.Summary> all, double epsilon) {
		this.epsilon = epsilon;
		int count = 0;
		for (ClusterTask.Summary s : all) {
			summaries.put(s.task(), s);
			firstOfTask.put(s.task(), count);
			count += s.firstCores().length;
		}
		sets = new DisjointSets(count);
		joinShared();
		joinQuiet();
		number = numbers(count);
	}

	/**
	 * @param labelled of all tasks, each sample once
	 * @param samples  in the whole map
	 */
	static Clustering join(List<ClusterTask.Summary> summaries, List<ClusterTask.Labelled> labelled, int samples,
			double epsilon) {
		return new ClusterJoin(summaries, epsilon).label(labelled, samples);
	}

	private int cluster(int task, int own) {
		return firstOfTask.get(task) + own;
	}

	private void joinShared() {
		Map<Integer, Integer> clusterOf = new HashMap<>();
		summaries.forEach((task, s) -> s.shared().forEach(core -> {
			Integer other = clusterOf.putIfAbsent(core.id(), cluster(task, core.cluster()));
			if (other != null) {
				sets.join(other, cluster(task, core.cluster()));
			}
		}));
	}

	private void joinQuiet() {
		Comparator<ClusterTask.Core> order = Comparator.comparingDouble(ClusterTask.Core::magnitude)
				.thenComparingInt(ClusterTask.Core::id);
		summaries.forEach((task, s) -> s.quietCores().forEach(core -> {
			if (quietest == null || order.compare(core, quietest) < 0) {
				quietest = core;
				quietestCluster = cluster(task, core.cluster());
			}
		}));
		summaries.forEach((task, s) -> s.quietCores().forEach(core -> {
			if (core.component() != quietest.component() && (second == null || order.compare(core, second) < 0)) {
				second = core;
				secondCluster = cluster(task, core.cluster());
			}
		}));
		summaries.forEach((task, s) -> s.quietCores().forEach(core -> {
			ClusterTask.Core beyond = beyond(core.component());
			if (beyond != null && core.magnitude() + beyond.magnitude() <= epsilon) {
				sets.join(cluster(task, core.cluster()), beyond == quietest ? quietestCluster : secondCluster);
			}
		}));
	}

	/** The quietest core out of earshot of a component. */
	private ClusterTask.Core beyond(int component) {
		return quietest != null && quietest.component() == component ? second : quietest;
	}

	/** Clusters by their first core sample, as core's DBSCAN numbers them. */
	private int[] numbers(int count) {
		int[] firstCore = new int[count];
		Arrays.fill(firstCore, Integer.MAX_VALUE);
		summaries.forEach((task, s) -> {
			for (int c = 0; c < s.firstCores().length; c++) {
				int root = sets.find(cluster(task, c));
				firstCore[root] = Math.min(firstCore[root], s.firstCores()[c]);
			}
		});
		Integer[] roots = IntStream.range(0, count).filter(c -> firstCore[c] < Integer.MAX_VALUE).boxed()
				.sorted(Comparator.comparingInt(c -> firstCore[c])).toArray(Integer[]::new);
		int[] numbers = new int[count];
		Arrays.fill(numbers, Clustering.NOISE);
		for (int i = 0; i < roots.length; i++) {
			numbers[roots[i]] = i;
		}
		for (int c = 0; c < count; c++) {
			numbers[c] = numbers[sets.find(c)];
		}
		return numbers;
	}

	private Clustering label(List<ClusterTask.Labelled> labelled, int samples) {
		int[] label = new int[samples];
		Role[] role = new Role[samples];
		for (ClusterTask.Labelled part : labelled) {
			for (int i = 0; i < part.ids().length; i++) {
				if (role[part.ids()[i]] != null) {
					throw new IllegalStateException("sample " + part.ids()[i] + " is in two tasks");
				}
				label[part.ids()[i]] = part.clusters()[i] == Clustering.NOISE ? Clustering.NOISE
						: number[cluster(part.task(), part.clusters()[i])];
				role[part.ids()[i]] = Role.values()[part.roles()[i]];
			}
		}
		summaries.forEach((task, s) -> s.quietOthers().forEach(other -> {
			label[other.id()] = nearest(task, other);
			role[other.id()] = label[other.id()] == Clustering.NOISE ? Role.NOISE : Role.BORDER;
		}));
		if (Arrays.asList(role).contains(null)) {
			throw new IllegalStateException(
					"sample " + Arrays.asList(role).indexOf(null) + " of " + samples + " is in no task");
		}
		return new Clustering(label, role);
	}

	/** The cluster of the nearest core within ε, within earshot or not; of equally near ones the first in the map. */
	private int nearest(int task, ClusterTask.Other other) {
		ClusterTask.Core beyond = beyond(other.component());
		double distance = beyond == null ? Double.POSITIVE_INFINITY : other.magnitude() + beyond.magnitude();
		if (distance <= epsilon
				&& (distance < other.distance() || distance == other.distance() && beyond.id() < other.nearest())) {
			return number[beyond == quietest ? quietestCluster : secondCluster];
		}
		return other.nearest() < 0 ? Clustering.NOISE : number[cluster(task, other.nearestCluster())];
	}
}
