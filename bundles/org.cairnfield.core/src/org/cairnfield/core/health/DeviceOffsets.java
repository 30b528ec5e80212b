package org.cairnfield.core.health;

import java.util.Arrays;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;

/**
 * How much higher each device of a map reads than the one with the most samples, in dB, as pairs of neighbouring
 * samples show it. A device that never stood near that one gets 0.
 */
final class DeviceOffsets {

	private static final int AROUND = 5;
	private static final int FEWEST_PAIRS = 10;

	private final double[] offsetDb;

	private DeviceOffsets(double[] offsetDb) {
		this.offsetDb = offsetDb;
	}

	static DeviceOffsets of(RadioMap map, PlaceIndex places) {
		int devices = map.devices().size();
		if (devices < 2) {
			return new DeviceOffsets(new double[devices]);
		}
		int reference = mostUsed(map, devices);
		double[][] differences = new double[devices][16];
		int[] count = new int[devices];
		int[] around = new int[AROUND];
		for (int s = 0; s < map.size(); s++) {
			int found = map.device(s) == reference ? places.nearest(s, around) : 0;
			for (int i = 0; i < found; i++) {
				int device = map.device(around[i]);
				double difference = device < 0 || device == reference ? Double.NaN
						: SharedReadings.of(map, around[i], s).meanDifferenceDb();
				if (!Double.isNaN(difference)) {
					if (count[device] == differences[device].length) {
						differences[device] = Arrays.copyOf(differences[device], 2 * count[device]);
					}
					differences[device][count[device]++] = difference;
				}
			}
		}
		double[] offsets = new double[devices];
		for (int d = 0; d < devices; d++) {
			offsets[d] = count[d] < FEWEST_PAIRS ? 0 : Median.ofFirst(differences[d], count[d]);
		}
		return new DeviceOffsets(offsets);
	}

	private static int mostUsed(RadioMap map, int devices) {
		int[] samples = new int[devices];
		for (int s = 0; s < map.size(); s++) {
			if (map.device(s) >= 0) {
				samples[map.device(s)]++;
			}
		}
		int most = 0;
		for (int d = 1; d < devices; d++) {
			most = samples[d] > samples[most] ? d : most;
		}
		return most;
	}

	/** Offset of a device by index, 0 for {@link RadioMap#NO_DEVICE}. */
	double offsetDb(int device) {
		return device < 0 ? 0 : offsetDb[device];
	}
}
