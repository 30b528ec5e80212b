package org.cairnfield.core.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Measured on the heap, so it sees whatever a sample or a reading drags along. */
@Isolated
class RadioMapMemoryTest {

	private static final int SAMPLES = 1_000_000;
	private static final int HEARD = 20;
	private static final long MEBIBYTE = 1 << 20;

	@Test
	void holdsAMillionSamplesInLessThan200MebibytesAndAViewInFive() {
		long before = used();
		RadioMap map = build();
		long held = used() - before;
		assertEquals((long) SAMPLES * HEARD, map.readingCount());
		assertTrue(held < 200 * MEBIBYTE, held / MEBIBYTE + " MiB");
		assertTrue(held > 100 * MEBIBYTE, "measured nothing: " + held);
		RadioMap view = map.where(s -> true);
		long more = used() - before - held;
		assertEquals(SAMPLES, view.size());
		assertTrue(more < 5 * MEBIBYTE, more / MEBIBYTE + " MiB");
		assertEquals(SAMPLES, map.size());
	}

	private static RadioMap build() {
		RadioMapBuilder builder = new RadioMapBuilder();
		int[] accessPoints = new int[520];
		for (int a = 0; a < accessPoints.length; a++) {
			accessPoints[a] = builder.accessPoint("AP " + a);
		}
		for (int s = 0; s < SAMPLES; s++) {
			builder.sample("Tide House", s & 3, s * 0.01, s * 0.02).device("guide " + (s & 7)).time(s);
			int from = s % (accessPoints.length - HEARD);
			for (int k = 0; k < HEARD; k++) {
				builder.reading(accessPoints[from + k], -30 - (s + k) % 60);
			}
		}
		return builder.build();
	}

	/** What survives collection; the least of several looks, since others may still be at work. */
	private static long used() {
		Runtime runtime = Runtime.getRuntime();
		long least = Long.MAX_VALUE;
		for (int i = 0; i < 2; i++) {
			System.gc();
			least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
		}
		return least;
	}
}
