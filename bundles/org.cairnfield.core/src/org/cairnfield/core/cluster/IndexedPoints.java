package org.cairnfield.core.cluster;

import java.util.Arrays;
import org.cairnfield.core.distance.NearSearch;
import org.cairnfield.core.distance.SignalIndex;

/** Samples in signal space by an index: those of equal readings are one point. */
final class IndexedPoints implements PointSet {

	private final SignalIndex index;

	IndexedPoints(SignalIndex index) {
		this.index = index;
	}

	@Override
	public int size() {
		return index.size();
	}

	@Override
	public int samples() {
		return index.samples();
	}

	@Override
	public int pointOf(int sample) {
		return index.pointOf(sample);
	}

	@Override
	public int weight(int point) {
		return index.weight(point);
	}

	@Override
	public int sample(int point, int i) {
		return index.member(point, i);
	}

	@Override
	public Surroundings surroundings() {
		NearSearch search = index.search();
		Found found = new Found();
		NearSearch.Taker all = (other, d, reach) -> {
			found.add(other, d);
			return reach;
		};
		return new Surroundings() {
			@Override
			public Found within(int point, double reach) {
				found.clear();
				search.around(point, reach, all);
				return found;
			}

			@Override
			public Found before(int point, double reach) {
				found.clear();
				search.before(point, reach, all);
				return found;
			}

			@Override
			public void nearest(int point, double[] distances) {
				Arrays.fill(distances, Double.POSITIVE_INFINITY);
				Found.insert(distances, 0, index.weight(point) - 1);
				int last = distances.length - 1;
				search.nearest(point, (other, d, reach) -> {
					Found.insert(distances, d, index.weight(other));
					return (int) Math.min(reach, distances[last]);
				});
			}
		};
	}
}
