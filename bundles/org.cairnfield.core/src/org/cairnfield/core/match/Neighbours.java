package org.cairnfield.core.match;

import java.util.Optional;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceKernel;
import org.cairnfield.core.distance.NearSearch;
import org.cairnfield.core.distance.SignalIndex;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;

/**
 * The nearest samples of a map in signal space. Of equally near samples the one with the smaller place
 * comes first (site name, floor, x, y; then order in the map), so an estimate does not depend on the order
 * in which surveys were taken in.
 */
public final class Neighbours {

	private final Signals signals;
	private final int[] rank;

	public Neighbours(Signals signals) {
		this.signals = signals;
		this.rank = rankByPlace(signals.map());
	}

	/** Rank of each sample by place; the tie-break of every matcher. */
	static int[] rankByPlace(RadioMap map) {
		int[] order = IntStream.range(0, map.size()).boxed().sorted((a, b) -> {
			int by = map.sites().get(map.site(a)).compareTo(map.sites().get(map.site(b)));
			by = by != 0 ? by : Integer.compare(map.floor(a), map.floor(b));
			by = by != 0 ? by : Double.compare(map.x(a), map.x(b));
			by = by != 0 ? by : Double.compare(map.y(a), map.y(b));
			return by != 0 ? by : Integer.compare(a, b);
		}).mapToInt(Integer::intValue).toArray();
		int[] rank = new int[order.length];
		for (int i = 0; i < order.length; i++) {
			rank[order[i]] = i;
		}
		return rank;
	}

	public Signals signals() {
		return signals;
	}

	/** Makes a search with scratch space of its own; one per thread. */
	public Search search() {
		return new Search();
	}

	/** One thread's search; the answer of one call lasts until the next. */
	public final class Search {

		private final Optional<NearSearch> indexed = signals.index().map(SignalIndex::search);
		private final DistanceKernel kernel = signals.kernel();
		private final double[] row = new double[indexed.isPresent() ? 0 : signals.components().largest()];
		private Nearest nearest = new Nearest(1, rank);

		/** The {@code k} samples nearest to a sample of the map, itself left out. */
		public Nearest ofSample(int sample, int k) {
			return find(signals.rows(), sample, k, sample);
		}

		/** The {@code k} samples nearest to a fingerprint that {@link Signals#align} gave. */
		public Nearest of(SignalRows queries, int query, int k) {
			return find(queries, query, k, -1);
		}

		private Nearest find(SignalRows queries, int query, int k, int leftOut) {
			if (nearest.capacity() != k) {
				nearest = new Nearest(k, rank);
			}
			nearest.clear();
			if (indexed.isPresent()) {
				SignalIndex index = signals.index().get();
				indexed.get().nearest(queries, query, (point, d, reach) -> {
					for (int i = 0; i < index.weight(point); i++) {
						offer(index.member(point, i), d, leftOut);
					}
					return (int) Math.min(reach, nearest.reach());
				});
			} else {
				compareAll(queries, query, leftOut);
			}
			return nearest;
		}

		private void compareAll(SignalRows queries, int query, int leftOut) {
			Components components = signals.components();
			for (int c = 0; c < components.count(); c++) {
				int n = kernel.row(queries, query, c, row);
				for (int place = 0; place < n; place++) {
					if (row[place] <= nearest.reach()) {
						offer(components.member(c, place), row[place], leftOut);
					}
				}
			}
		}

		private void offer(int sample, double d, int leftOut) {
			if (sample != leftOut) {
				nearest.offer(sample, d);
			}
		}
	}
}
