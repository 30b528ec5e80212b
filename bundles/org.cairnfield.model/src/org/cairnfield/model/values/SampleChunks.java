package org.cairnfield.model.values;

import java.util.Arrays;

/** Makes chunks from chunks. */
final class SampleChunks {

	private SampleChunks() {
	}

	/** A chunk of the samples in the given rows, in that order. */
	static SampleChunk gather(SampleChunk[] from, int[] rows) {
		SampleChunk made = new SampleChunk();
		int n = rows.length;
		made.size = n;
		made.id = new String[n];
		made.floorLevel = new short[n];
		made.xMetres = new double[n];
		made.yMetres = new double[n];
		made.start = new int[n + 1];
		long[] times = new long[n];
		String[] reasons = new String[n];
		for (int i = 0; i < n; i++) {
			SampleChunk chunk = from[rows[i] / SampleChunk.ROWS];
			int at = rows[i] % SampleChunk.ROWS;
			made.id[i] = chunk.id[at];
			made.floorLevel[i] = chunk.floorLevel[at];
			made.xMetres[i] = chunk.xMetres[at];
			made.yMetres[i] = chunk.yMetres[at];
			made.start[i + 1] = made.start[i] + chunk.heard(at);
			times[i] = chunk.timeMillis(at);
			reasons[i] = chunk.reason(at);
		}
		made.timeMillis = Arrays.stream(times).allMatch(t -> t == SampleTable.NO_TIME) ? null : times;
		made.reason = Arrays.stream(reasons).allMatch(r -> r == null) ? null : reasons;
		made.accessPoint = new int[made.start[n]];
		made.rssiDbm = new byte[made.start[n]];
		for (int i = 0; i < n; i++) {
			SampleChunk chunk = from[rows[i] / SampleChunk.ROWS];
			int at = chunk.start[rows[i] % SampleChunk.ROWS];
			System.arraycopy(chunk.accessPoint, at, made.accessPoint, made.start[i], made.start[i + 1] - made.start[i]);
			System.arraycopy(chunk.rssiDbm, at, made.rssiDbm, made.start[i], made.start[i + 1] - made.start[i]);
		}
		return made;
	}
}
