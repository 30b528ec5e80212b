package org.cairnfield.core.correlate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.cairnfield.core.distance.SignalIndex;
import org.cairnfield.core.task.Workers;

/**
 * Labelled samples in groups of near ones, each with a pivot, so that most of them need not be correlated: Pearson's r is the
 * cosine of the angle between two centred rows, and angles obey the triangle inequality. With a the r of a row with the pivot's
 * and b that of the pivot's row with another, the r of these two is at most cos(arccos a − arccos b) = ab + √((1 − a²)(1 − b²)).
 */
final class PivotGroups {

	/** Far above the rounding of a bound, which is largest where one of the two is near 1. */
	private static final double MARGIN = 1e-5;

	/** First group of each component; then their number. */
	final int[] ofComponent;
	/** First place of each group, that of its pivot; then the number of places. */
	final int[] start;
	/** By place. */
	final int[] sample;
	/** By place: r with the pivot; NaN where undefined. */
	final double[] r;
	/** By group: the least r with the pivot; NaN where one is undefined. */
	final double[] least;

	private PivotGroups(int[] ofComponent, int[] start, int[] sample) {
		this.ofComponent = ofComponent;
		this.start = start;
		this.sample = sample;
		r = new double[sample.length];
		least = new double[start.length - 1];
	}

	/** @param labelled by component, samples of one leaf together */
	static PivotGroups of(SignalIndex index, int[][] labelled, RowMoments moments, Supplier<RowProducts> products,
			Workers workers) {
		int[] ofComponent = new int[labelled.length + 1];
		List<Integer> starts = new ArrayList<>();
		int count = 0;
		for (int[] samples : labelled) {
			count += samples.length;
		}
		int[] all = new int[count];
		List<int[]> batches = new ArrayList<>();
		int place = 0;
		for (int c = 0; c < labelled.length; c++) {
			for (int i = 0; i < labelled[c].length; i++) {
				int leaf = index.leafOf(labelled[c][i]);
				if (i == 0 || index.leafOf(labelled[c][i - 1]) != leaf) {
					starts.add(place);
				}
				all[place] = labelled[c][i];
				int pivot = starts.get(starts.size() - 1);
				if (index.toCentre(all[place]) < index.toCentre(all[pivot])) {
					int other = all[pivot];
					all[pivot] = all[place];
					all[place] = other;
				}
				place++;
			}
			ofComponent[c + 1] = starts.size();
			for (int from = ofComponent[c]; from < ofComponent[c + 1]; from += RowProducts.BATCH) {
				batches.add(new int[] { from, Math.min(from + RowProducts.BATCH, ofComponent[c + 1]) });
			}
		}
		starts.add(place);
		PivotGroups groups = new PivotGroups(ofComponent, starts.stream().mapToInt(Integer::intValue).toArray(), all);
		workers.progress().begin("pivots", batches.size());
		workers.forRanges(batches.size(), () -> {
			RowProducts rows = products.get();
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					groups.measure(batches.get(i)[0], batches.get(i)[1], rows, moments);
				}
			};
		});
		return groups;
	}

	private void measure(int from, int to, RowProducts rows, RowMoments moments) {
		int[] pivots = new int[to - from];
		for (int g = from; g < to; g++) {
			pivots[g - from] = sample[start[g]];
		}
		rows.begin(pivots);
		for (int g = from; g < to; g++) {
			least[g] = 1;
			for (int place = start[g]; place < start[g + 1]; place++) {
				r[place] = moments.correlation(pivots[g - from], sample[place], rows.with(g - from, sample[place]));
				least[g] = Math.min(least[g], r[place]); // NaN stays
			}
		}
	}

	/** Whether no sample of a group can correlate as well. @param withPivot r of the noise sample and the pivot */
	boolean isBelow(int group, double withPivot, double wanted) {
		return withPivot < least[group] && most(withPivot, least[group]) < wanted - MARGIN;
	}

	/** Whether one sample cannot. */
	boolean isPlaceBelow(int place, double withPivot, double wanted) {
		return most(withPivot, r[place]) < wanted - MARGIN;
	}

	private static double most(double a, double b) {
		return a * b + Math.sqrt((1 - a * a) * (1 - b * b));
	}
}
