package org.cairnfield.core.correlate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.DistanceRows;
import org.cairnfield.core.distance.Signals;

/** Some samples of a map, a few near ones at a time. */
final class SampleBatches {

	private SampleBatches() {
	}

	/** Each of one component, and no more than {@link DistanceRows#BATCH}. */
	static List<int[]> of(Signals signals, IntPredicate wanted) {
		List<int[]> batches = new ArrayList<>();
		for (int[] some : byComponent(signals, wanted)) {
			for (int from = 0; from < some.length; from += DistanceRows.BATCH) {
				batches.add(Arrays.copyOfRange(some, from, Math.min(some.length, from + DistanceRows.BATCH)));
			}
		}
		return batches;
	}

	/** Where there is an index, near ones follow each other. */
	static int[][] byComponent(Signals signals, IntPredicate wanted) {
		Components components = signals.components();
		int[][] some = new int[components.count()][];
		for (int c = 0; c < some.length; c++) {
			int component = c;
			IntStream samples = IntStream.range(0, components.size(c)).map(place -> components.member(component, place))
					.filter(wanted);
			some[c] = signals.index()
					.map(index -> samples.mapToLong(s -> (long) index.pointOf(s) << 32 | s).sorted()
							.mapToInt(key -> (int) key))
					.orElse(samples).toArray();
		}
		return some;
	}
}
