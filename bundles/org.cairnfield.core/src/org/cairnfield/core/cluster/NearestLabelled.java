package org.cairnfield.core.cluster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/** For every noise sample the nearest labelled sample, of equals the first in the map. */
public final class NearestLabelled {

	/** Neighbours by whose distance the first look around is measured. */
	private static final int LIKELY = 8;
	/** Looks around, each twice as far as the one before, after which everything is looked at. */
	private static final int LOOKS = 6;

	private final PointSet points;
	private final Clustering clustering;
	/** By point: its first labelled sample, or −1. */
	private final int[] labelled;
	private final int[] nearest;
	private final double[] distance;

	private NearestLabelled(PointSet points, Clustering clustering) {
		this.points = points;
		this.clustering = clustering;
		labelled = new int[points.size()];
		Arrays.fill(labelled, -1);
		for (int s = points.samples() - 1; s >= 0; s--) {
			if (!clustering.isNoise(s)) {
				labelled[points.pointOf(s)] = s;
			}
		}
		nearest = new int[points.samples()];
		Arrays.fill(nearest, -1);
		distance = new double[points.samples()];
		Arrays.fill(distance, Double.NaN);
	}

	/** Finds them for one clustering of the points. */
	public static NearestLabelled of(PointSet points, Clustering clustering, Workers workers) {
		NearestLabelled found = new NearestLabelled(points, clustering);
		workers.progress().begin(Messages.NearestLabelled_nearestLabelled, points.size());
		workers.forRanges(points.size(), () -> {
			PointSet.Surroundings around = points.surroundings();
			double[] likely = new double[LIKELY];
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					if (found.asks(p)) {
						found.find(p, around, likely);
					}
				}
			};
		});
		return found;
	}

	/** Labels by clustering and sample, noise labelled as the nearest labelled sample; without any, it stays noise. */
	public static List<int[]> labels(PointSet points, List<Clustering> clusterings, Workers workers) {
		List<int[]> labels = new ArrayList<>();
		for (Clustering clustering : clusterings) {
			NearestLabelled found = of(points, clustering, workers);
			int[] by = clustering.labels();
			for (int s = 0; s < by.length; s++) {
				if (found.nearest[s] >= 0) {
					by[s] = clustering.label(found.nearest[s]);
				}
			}
			labels.add(by);
		}
		return labels;
	}

	/** As above, for the samples of a map. */
	public static List<int[]> labels(Signals signals, List<Clustering> clusterings, Workers workers) {
		return labels(PointSet.of(signals), clusterings, workers);
	}

	/** The labelled sample nearest to a noise sample; −1 where nothing is labelled, and for labelled samples. */
	public int sample(int noise) {
		return nearest[noise];
	}

	/** Its distance; NaN where there is none. */
	public double distance(int noise) {
		return distance[noise];
	}

	/** Whether there is noise at a point, and anything labelled at all. */
	private boolean asks(int point) {
		boolean noise = false;
		for (int i = 0; i < points.weight(point); i++) {
			noise |= clustering.isNoise(points.sample(point, i));
		}
		return noise && clustering.clusters() > 0;
	}

	private void find(int point, PointSet.Surroundings around, double[] likely) {
		if (labelled[point] >= 0) {
			set(point, labelled[point], 0);
			return;
		}
		around.nearest(point, likely);
		double reach = Math.max(1, likely[LIKELY - 1]);
		for (int look = 0; look <= LOOKS; look++) {
			Found found = around.within(point, look == LOOKS ? Double.POSITIVE_INFINITY : reach);
			int best = -1;
			double least = Double.POSITIVE_INFINITY;
			for (int i = 0; i < found.size(); i++) {
				int sample = labelled[found.point(i)];
				double d = found.distance(i);
				if (sample >= 0 && (d < least || d == least && sample < best)) {
					best = sample;
					least = d;
				}
			}
			if (best >= 0) {
				set(point, best, least);
				return;
			}
			reach *= 2;
		}
	}

	private void set(int point, int sample, double d) {
		for (int i = 0; i < points.weight(point); i++) {
			int own = points.sample(point, i);
			if (clustering.isNoise(own)) {
				nearest[own] = sample;
				distance[own] = d;
			}
		}
	}
}
