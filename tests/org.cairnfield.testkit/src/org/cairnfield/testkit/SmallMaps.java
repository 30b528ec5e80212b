package org.cairnfield.testkit;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;

/** Radio maps for tests. */
public final class SmallMaps {

	private static final long SEED = 11;

	private SmallMaps() {
	}

	/** Samples of one building of two floors. */
	public static RadioMap simulated(int samples) {
		return RandomMap.of(SEED, CampusSize.of(1, 2, 24), samples, Workers.inline());
	}

	/** Another day in the same building. */
	public static RadioMap visit(int samples) {
		return RandomMap.testOf(SEED, CampusSize.of(1, 2, 24), samples, Workers.inline());
	}

	/** Samples a metre apart on a line, each with its levels of access points A, B, C …; 1 for not heard. */
	public static RadioMap of(int[]... levels) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < levels.length; s++) {
			builder.sample("Tide House", 0, s, 0);
			for (int ap = 0; ap < levels[s].length; ap++) {
				int index = builder.accessPoint(Character.toString('A' + ap));
				if (levels[s][ap] <= 0) {
					builder.reading(index, levels[s][ap]);
				}
			}
		}
		return builder.build();
	}

	/**
	 * Two tight groups of five (samples 0 … 4, 5 … 9), far from each other, and a sample (10) that is like
	 * the second group but too far from it for ε = 5.
	 */
	public static RadioMap twoGroupsAndAStray() {
		return of(new int[] { -40, -60, 1 }, new int[] { -41, -60, 1 }, new int[] { -40, -61, 1 },
				new int[] { -41, -61, 1 },
				new int[] { -40, -62, 1 }, new int[] { 1, -60, -40 }, new int[] { 1, -60, -41 },
				new int[] { 1, -61, -40 },
				new int[] { 1, -61, -41 }, new int[] { 1, -62, -40 }, new int[] { 1, -66, -47 });
	}
}
