package org.cairnfield.model.values;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives the access points of chunks new indices, and sorts the readings of each sample by them. */
final class AccessPointOrder {

	private AccessPointOrder() {
	}

	/**
	 * Writes into the chunks, which must not be part of a table.
	 *
	 * @param from the list that the readings refer to
	 * @param to   the list that they shall refer to, with all of the first
	 */
	static void apply(SampleChunk[] chunks, List<String> from, List<String> to) {
		Map<String, Integer> indices = new HashMap<>();
		for (int i = 0; i < to.size(); i++) {
			indices.put(to.get(i), i);
		}
		int[] index = from.stream().mapToInt(indices::get).toArray();
		for (SampleChunk chunk : chunks) {
			for (int r = 0; r < chunk.accessPoint.length; r++) {
				chunk.accessPoint[r] = index[chunk.accessPoint[r]];
			}
			for (int i = 0; i < chunk.size; i++) {
				sort(chunk, chunk.start[i], chunk.start[i + 1]);
			}
		}
	}

	/** By insertion, as most samples come sorted. */
	private static void sort(SampleChunk chunk, int from, int to) {
		for (int k = from + 1; k < to; k++) {
			int accessPoint = chunk.accessPoint[k];
			byte level = chunk.rssiDbm[k];
			int at = k - 1;
			while (at >= from && chunk.accessPoint[at] > accessPoint) {
				chunk.accessPoint[at + 1] = chunk.accessPoint[at];
				chunk.rssiDbm[at + 1] = chunk.rssiDbm[at];
				at--;
			}
			chunk.accessPoint[at + 1] = accessPoint;
			chunk.rssiDbm[at + 1] = level;
		}
	}
}
