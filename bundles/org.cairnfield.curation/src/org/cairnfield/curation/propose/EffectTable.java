package org.cairnfield.curation.propose;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;

/**
 * What each proposal, approved alone, would do to the error and cost of its floor. Queries are matched as the
 * split is measured: nearest centroid, then nearest sample in its cluster. The estimate is quick because
 * centroids are held still; each proposal is judged alone, so effects do not add up. Queries are the test samples
 * or, where there are none, samples of the map itself, each with its own fingerprint left out of the search but
 * not out of its centroid, which makes errors look a little better than they are.
 */
final class EffectTable {

	private static final int MOST_QUERIES = 4000;

	private final Map<Integer, Effect> byNoise = new HashMap<>();
	private final String basis;

	private EffectTable(String basis) {
		this.basis = basis;
	}

	/** What the effects are computed from, for a person. */
	String basis() {
		return basis;
	}

	/** Of a noise sample that has a target. */
	Effect of(int noise) {
		return byNoise.getOrDefault(noise, Effect.UNKNOWN);
	}

	/**
	 * @param target cluster by noise sample of the split's map
	 * @param test   may be empty
	 */
	static EffectTable of(SplitOnMap split, Map<Integer, Integer> target, RadioMap test, Workers workers) {
		boolean tested = test.size() > 0;
		RadioMap asked = tested ? test : split.map();
		int step = Math.max(1, (asked.size() + MOST_QUERIES - 1) / MOST_QUERIES);
		int[] queries = IntStream.range(0, asked.size()).filter(q -> q % step == 0).toArray();
		EffectTable table = new EffectTable(String.format(Locale.ROOT,
				"estimated from %d %s matched by nearest cluster, nearest sample in it; each approval alone, centroids held still",
				queries.length, tested ? "test samples" : "samples of the map itself, for want of a test survey,"));
		if (split.clustering().clusters() > 0) {
			new Counting(split, target, asked, tested).count(queries, table, workers);
		}
		return table;
	}

	private static final class Counting {
		private final RadioMap map;
		private final Signals signals;
		private final Clustering clustering;
		private final RadioMap asked;
		private final boolean tested;
		private final SignalRows rows;
		private final Centroids centroids;
		private final int[] site;
		/** Noise samples by target cluster. */
		private final int[][] candidates;
		private final double[] change;
		private final int[] affected;
		private final int[] inCell;
		private final Map<Long, Integer> queriesOnFloor = new HashMap<>();

		Counting(SplitOnMap split, Map<Integer, Integer> target, RadioMap asked, boolean tested) {
			map = split.map();
			signals = split.signals();
			clustering = split.clustering();
			this.asked = asked;
			this.tested = tested;
			rows = tested ? signals.align(asked) : signals.rows();
			centroids = Centroids.of(signals, clustering.members(), Centroids.Kind.MEAN);
			site = asked.sites().stream().mapToInt(map.sites()::indexOf).toArray();
			List<Integer> noise = target.keySet().stream().sorted().toList();
			candidates = new int[clustering.clusters()][];
			for (int c = 0; c < candidates.length; c++) {
				int cluster = c;
				candidates[c] = noise.stream().filter(s -> target.get(s) == cluster).mapToInt(Integer::intValue).toArray();
			}
			change = new double[map.size()];
			affected = new int[map.size()];
			inCell = new int[map.size()];
		}

		void count(int[] queries, EffectTable table, Workers workers) {
			workers.progress().begin("effects of approving", queries.length);
			int[] size = clustering.sizes();
			double[] coarse = new double[centroids.size()];
			double[] row = new double[signals.components().largest()];
			double[] distance = new double[map.size()];
			DistanceKernel kernel = signals.kernel();
			for (int q : queries) { // one thread: sums do not depend on how work is shared out
				workers.checkCancelled();
				centroids.distances(rows, q, coarse);
				int cell = -1;
				for (int c = 0; c < coarse.length; c++) {
					cell = size[c] > 0 && (cell < 0 || coarse[c] < coarse[cell]) ? c : cell;
				}
				queriesOnFloor.merge(floor(site[asked.site(q)], asked.floor(q)), 1, Integer::sum);
				if (cell >= 0 && candidates[cell].length > 0) {
					distances(kernel, q, row, distance);
					ask(q, cell, distance);
				}
				workers.progress().advance(1);
			}
			for (int[] of : candidates) {
				for (int s : of) {
					int n = queriesOnFloor.getOrDefault(floor(map.site(s), map.floor(s)), 0);
					if (n > 0) {
						table.byNoise.put(s, new Effect(change[s] / n, affected[s], n, (double) inCell[s] / n));
					}
				}
			}
		}

		private void distances(DistanceKernel kernel, int q, double[] row, double[] distance) {
			Components components = signals.components();
			for (int c = 0; c < components.count(); c++) {
				int n = kernel.row(rows, q, c, row);
				for (int place = 0; place < n; place++) {
					distance[components.member(c, place)] = row[place];
				}
			}
		}

		private void ask(int q, int cell, double[] distance) {
			int nearest = -1;
			for (int s = 0; s < distance.length; s++) {
				if (clustering.label(s) == cell && (tested || s != q) && (nearest < 0 || distance[s] < distance[nearest])) {
					nearest = s;
				}
			}
			for (int s : candidates[cell]) {
				if (site[asked.site(q)] != map.site(s) || asked.floor(q) != map.floor(s) || !tested && s == q) {
					continue;
				}
				inCell[s]++;
				if (nearest >= 0 && distance[s] < distance[nearest]) {
					affected[s]++;
					change[s] += metres(q, s) - metres(q, nearest);
				}
			}
		}

		private double metres(int q, int s) {
			return Math.hypot(asked.x(q) - map.x(s), asked.y(q) - map.y(s));
		}

		private static long floor(int site, int level) {
			return (long) site << 32 | level & 0xffff_ffffL;
		}
	}
}
