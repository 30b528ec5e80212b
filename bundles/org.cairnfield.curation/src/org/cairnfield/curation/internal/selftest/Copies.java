package org.cairnfield.curation.internal.selftest;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** Copies of samples with something changed. */
final class Copies {

	private Copies() {
	}

	/** Begins a sample with the device and time of another. */
	static void place(RadioMap from, int sample, int floor, double x, double y, RadioMapBuilder to) {
		to.sample(from.sites().get(from.site(sample)), floor, x, y);
		if (from.device(sample) != RadioMap.NO_DEVICE) {
			to.device(from.devices().get(from.device(sample)));
		}
		if (from.timeMillis(sample) != RadioMap.NO_TIME) {
			to.time(from.timeMillis(sample));
		}
	}

	/** Begins a sample like another. */
	static void place(RadioMap from, int sample, RadioMapBuilder to) {
		place(from, sample, from.floor(sample), from.x(sample), from.y(sample), to);
	}
}
