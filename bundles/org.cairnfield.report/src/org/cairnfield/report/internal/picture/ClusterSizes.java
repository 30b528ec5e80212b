package org.cairnfield.report.internal.picture;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many samples each cluster has, and noise, before and after reassignment. */
public final class ClusterSizes implements Serializable {

	private static final long serialVersionUID = 1;

	/**
	 * A cluster or a group of them.
	 *
	 * @param name   for a label
	 * @param before samples before
	 * @param after  samples after
	 */
	public record Size(String name, int before, int after) implements Serializable {
		Size plus(Size other) {
			return new Size(name, before + other.before, after + other.after);
		}
	}

	private final List<Size> clusters;
	private final Size noise;

	private ClusterSizes(List<Size> clusters, Size noise) {
		this.clusters = clusters;
		this.noise = noise;
	}

	/**
	 * Counts labels; cluster 7 is called "C7".
	 *
	 * @param before the cluster of each sample, any negative one for noise
	 * @param after  likewise, of the same samples in the same order
	 * @throws IllegalArgumentException where the lengths differ
	 */
	public static ClusterSizes of(int[] before, int[] after) {
		if (before.length != after.length) {
			throw new IllegalArgumentException("lengths differ: " + before.length + " and " + after.length);
		}
		Map<Integer, int[]> counts = new TreeMap<>();
		counts.put(-1, new int[2]);
		for (int i = 0; i < before.length; i++) {
			counts.computeIfAbsent(Math.max(-1, before[i]), label -> new int[2])[0]++;
			counts.computeIfAbsent(Math.max(-1, after[i]), label -> new int[2])[1]++;
		}
		int[] noise = counts.remove(-1);
		List<Size> clusters = new ArrayList<>();
		counts.forEach((label, count) -> clusters.add(new Size("C" + label, count[0], count[1])));
		// Stable: equal sizes stay in the order of their labels.
		clusters.sort(Comparator.comparingInt(Size::before).reversed());
		return new ClusterSizes(List.copyOf(clusters), new Size("noise", noise[0], noise[1]));
	}

	/** Largest before reassignment first. */
	public List<Size> clusters() {
		return clusters;
	}

	/** Samples in no cluster. */
	public Size noise() {
		return noise;
	}

	/** A run of the clusters, added up. */
	Size together(String name, int from, int to) {
		return clusters.subList(from, to).stream().reduce(new Size(name, 0, 0), Size::plus);
	}
}
