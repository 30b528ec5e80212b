package org.cairnfield.ui.review.internal.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Bars;
import org.eclipse.osgi.util.NLS;

/**
 * Sizes of clusters as bars: noise first, with hollow bars, then the largest clusters, then the rest together.
 *
 * @param bars        a group for each state, such as before and after
 * @param noisePlace  which place is noise
 * @param othersPlace which place stands for many small clusters, −1 for none
 */
record ClusterBars(Bars bars, int noisePlace, int othersPlace) {

	/** Empty. */
	static final ClusterBars NONE = new ClusterBars(new Bars(List.of(), List.of()), -1, -1);

	/** One state of the clusters. @param sizes by cluster number */
	record State(String name, int[] sizes, int noise) {
	}

	/**
	 * @param most   clusters with a bar of their own, largest of the first state first
	 * @param states of the same clusters
	 */
	static ClusterBars of(int most, State... states) {
		int clusters = Arrays.stream(states).mapToInt(state -> state.sizes().length).max().orElse(0);
		int[] first = states[0].sizes();
		int[] order = IntStream.range(0, clusters).boxed()
				.sorted(Comparator.comparingInt((Integer c) -> c < first.length ? -first[c] : 0).thenComparing(c -> c))
				.mapToInt(Integer::intValue).toArray();
		int shown = clusters <= most + 1 ? clusters : most;
		List<String> labels = new ArrayList<>(List.of("noise"));
		for (int i = 0; i < shown; i++) {
			labels.add("C" + order[i]);
		}
		if (shown < clusters) {
			labels.add(NLS.bind(Messages.ClusterBars_smaller, clusters - shown));
		}
		double[][] values = new double[states.length][labels.size()];
		for (int s = 0; s < states.length; s++) {
			values[s][0] = states[s].noise();
			for (int i = 0; i < clusters; i++) {
				int size = order[i] < states[s].sizes().length ? states[s].sizes()[order[i]] : 0;
				values[s][Math.min(i, shown) + 1] += size;
			}
		}
		return new ClusterBars(new Bars(labels, Arrays.stream(states).map(State::name).toList(), values), 0,
				shown < clusters ? labels.size() - 1 : -1);
	}
}
