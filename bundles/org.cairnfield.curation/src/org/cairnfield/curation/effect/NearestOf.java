package org.cairnfield.curation.effect;

import java.util.Arrays;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Nearest;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;

/** The samples of a map that questions resemble most, nearest first. */
final class NearestOf {

	private NearestOf() {
	}

	/** Rows of {@code k} samples, one row a question; −1 where there are not so many. */
	static int[][] find(RadioMap map, RadioMap questions, int k, Workers workers) {
		int[][] found = new int[questions.size()][k];
		if (map.size() == 0) {
			for (int[] row : found) {
				Arrays.fill(row, -1);
			}
			return found;
		}
		Signals signals = Signals.of(map);
		Neighbours neighbours = new Neighbours(signals);
		SignalRows rows = signals.align(questions);
		workers.quietly().forRanges(found.length, () -> {
			Neighbours.Search search = neighbours.search();
			return (from, to) -> {
				for (int q = from; q < to; q++) {
					Nearest nearest = search.of(rows, q, k);
					for (int i = 0; i < k; i++) {
						found[q][i] = i < nearest.size() ? nearest.sample(i) : -1;
					}
				}
			};
		});
		return found;
	}
}
