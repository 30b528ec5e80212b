package org.cairnfield.curation.internal.rules.evidence;

import java.util.Arrays;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.RuleInput;

/** For each access point the samples of a unit that heard it, by index. */
public final class AccessPoints {

	private final int[] start;
	private final int[] sample;
	private final int[] reading;

	private AccessPoints(RadioMap map) {
		start = new int[map.accessPointCount() + 1];
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				start[map.accessPoint(k) + 1]++;
			}
		}
		for (int a = 1; a < start.length; a++) {
			start[a] += start[a - 1];
		}
		int[] next = Arrays.copyOf(start, start.length);
		sample = new int[start[start.length - 1]];
		reading = new int[sample.length];
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int at = next[map.accessPoint(k)]++;
				sample[at] = s;
				reading[at] = k;
			}
		}
	}

	public static AccessPoints of(RuleInput input) {
		return input.shared(AccessPoints.class, () -> new AccessPoints(input.map().map()));
	}

	/** How many samples heard it. */
	public int heardBy(int accessPoint) {
		return start[accessPoint + 1] - start[accessPoint];
	}

	/** The i-th sample that heard it. */
	public int sample(int accessPoint, int i) {
		return sample[start[accessPoint] + i];
	}

	/** The reading by which the i-th sample heard it. */
	public int reading(int accessPoint, int i) {
		return reading[start[accessPoint] + i];
	}
}
