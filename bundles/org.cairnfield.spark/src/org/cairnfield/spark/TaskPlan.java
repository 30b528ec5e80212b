package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which component is clustered in which task. Small ones share a task; one that is too large is cut into ranges of magnitude,
 * a task each.
 */
final class TaskPlan implements Serializable {

	private static final long serialVersionUID = 1;

	private final int tasks;
	private final Map<Integer, Integer> taskOf;
	private final Map<Integer, Ranges> cuts;

	private TaskPlan(int tasks, Map<Integer, Integer> taskOf, Map<Integer, Ranges> cuts) {
		this.tasks = tasks;
		this.taskOf = taskOf;
		this.cuts = cuts;
	}

	/**
	 * Ranges of magnitude, a task each.
	 *
	 * @param firstTask of the lowest range
	 * @param starts    where each range begins, ascending; the first is −∞
	 */
	record Ranges(int firstTask, double[] starts) implements Serializable {

		int range(double magnitude) {
			int at = Arrays.binarySearch(starts, magnitude);
			return at >= 0 ? at : -at - 2;
		}

		/** Exclusive; +∞ for the last. */
		double end(int range) {
			return range + 1 < starts.length ? starts[range + 1] : Double.POSITIVE_INFINITY;
		}
	}

	/**
	 * Deals out components, costliest first, each to the task with least to do.
	 *
	 * @param costs      of components that heard anything
	 * @param components all of them
	 * @param shared     number of tasks for components that are not cut
	 * @param histograms of those to be cut: samples by magnitude
	 * @param most       samples in a range
	 */
	static TaskPlan of(Map<Integer, Double> costs, Iterable<Integer> components, int shared,
			Map<Integer, TreeMap<Double, Integer>> histograms, int most) {
		Map<Integer, Integer> taskOf = new HashMap<>();
		Map<Integer, Ranges> cuts = new HashMap<>();
		List<Integer> whole = new ArrayList<>();
		components.forEach(c -> {
			if (!histograms.containsKey(c)) {
				whole.add(c);
			}
		});
		whole.sort(Comparator.comparingDouble((Integer c) -> -costs.getOrDefault(c, 0.0))
				.thenComparing(Comparator.naturalOrder()));
		int used = Math.min(Math.max(1, shared), whole.size());
		PriorityQueue<double[]> loads = new PriorityQueue<>(
				Comparator.comparingDouble((double[] load) -> load[1]).thenComparingDouble(load -> load[0]));
		for (int t = 0; t < used; t++) {
			loads.add(new double[] { t, 0 });
		}
		for (int c : whole) {
			double[] least = loads.remove();
			taskOf.put(c, (int) least[0]);
			least[1] += costs.getOrDefault(c, 0.0) + 1;
			loads.add(least);
		}
		int next = used;
		for (Map.Entry<Integer, TreeMap<Double, Integer>> e : new TreeMap<>(histograms).entrySet()) {
			Ranges ranges = new Ranges(next, starts(e.getValue(), most));
			cuts.put(e.getKey(), ranges);
			next += ranges.starts.length;
		}
		return new TaskPlan(next, taskOf, cuts);
	}

	private static double[] starts(TreeMap<Double, Integer> histogram, int most) {
		long all = histogram.values().stream().mapToLong(Integer::longValue).sum();
		long wanted = Math.max(1, (all + most - 1) / most);
		List<Double> starts = new ArrayList<>(List.of(Double.NEGATIVE_INFINITY));
		long seen = 0;
		for (Map.Entry<Double, Integer> e : histogram.entrySet()) {
			if (seen * wanted >= all * starts.size()) {
				starts.add(e.getKey());
			}
			seen += e.getValue();
		}
		return starts.stream().mapToDouble(Double::doubleValue).toArray();
	}

	int tasks() {
		return tasks;
	}

	/** How many components are cut. */
	int cuts() {
		return cuts.size();
	}

	/** The one task of a component that is not cut. */
	int task(int component) {
		return taskOf.get(component);
	}

	/** Null where the component is in one task. */
	Ranges ranges(int component) {
		return cuts.get(component);
	}

	/** Components by task. */
	List<Set<Integer>> components() {
		List<Set<Integer>> of = new ArrayList<>();
		for (int t = 0; t < tasks; t++) {
			of.add(new HashSet<>());
		}
		taskOf.forEach((component, task) -> of.get(task).add(component));
		cuts.forEach((component, ranges) -> {
			for (int r = 0; r < ranges.starts.length; r++) {
				of.get(ranges.firstTask + r).add(component);
			}
		});
		return of;
	}
}
