package org.cairnfield.model.values;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/** Whether two tables have the same samples. Chunks that both share are not looked into. */
final class SameSamples {

	private SameSamples() {
	}

	static boolean in(SampleTable a, SampleTable b) {
		if (a.size() != b.size()) {
			return false;
		}
		int[] toB = a.accessPoints().equals(b.accessPoints()) ? null : indices(a.accessPoints(), b.accessPoints());
		for (int c = 0; c < a.chunks.length; c++) {
			boolean shared = toB == null && a.chunks[c] == b.chunks[c];
			if (!shared && !same(a.chunks[c], b.chunks[c], toB)) {
				return false;
			}
		}
		return true;
	}

	/** For each of {@code names} its index in {@code others}, or −1. */
	private static int[] indices(List<String> names, List<String> others) {
		return names.stream().mapToInt(name -> Math.max(-1, Collections.binarySearch(others, name))).toArray();
	}

	private static boolean same(SampleChunk a, SampleChunk b, int[] toB) {
		return Arrays.equals(a.id, b.id) && Arrays.equals(a.floorLevel, b.floorLevel)
				&& Arrays.equals(a.xMetres, b.xMetres) && Arrays.equals(a.yMetres, b.yMetres)
				&& sameTimesAndReasons(a, b) && Arrays.equals(a.start, b.start) && sameReadings(a, b, toB);
	}

	/** A column that is not there means the same as one without a value. */
	private static boolean sameTimesAndReasons(SampleChunk a, SampleChunk b) {
		for (int i = 0; i < a.size; i++) {
			if (a.timeMillis(i) != b.timeMillis(i) || !Objects.equals(a.reason(i), b.reason(i))) {
				return false;
			}
		}
		return true;
	}

	private static boolean sameReadings(SampleChunk a, SampleChunk b, int[] toB) {
		for (int r = 0, end = a.start[a.size]; r < end; r++) {
			int accessPoint = toB == null ? a.accessPoint[r] : toB[a.accessPoint[r]];
			if (accessPoint != b.accessPoint[r] || a.rssiDbm[r] != b.rssiDbm[r]) {
				return false;
			}
		}
		return true;
	}
}
