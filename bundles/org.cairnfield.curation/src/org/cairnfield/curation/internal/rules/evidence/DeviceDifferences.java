package org.cairnfield.curation.internal.rules.evidence;

import static org.cairnfield.curation.rules.Reason.judged;

import java.util.List;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Median;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;

/**
 * How much more one device reads than another, in dB, at places where both stood: one value a place, the middle over
 * access points that both heard. Offsets already known are taken out. Only levels that are strong on average count,
 * as cutting off what one device no longer hears would hide part of the difference.
 */
public final class DeviceDifferences {

	private static final Threshold STRONG_DBM = new Threshold(Messages.DeviceDifferences_meanLevelFromWhichDevices, -75,
			"dBm",
			judged(Messages.DeviceDifferences_wellAboveWhatIsCut));
	private static final Threshold FEWEST_SHARED = new Threshold(Messages.DeviceDifferences_accessPointsThatBothHeard,
			2,
			judged(Messages.DeviceDifferences_aMiddleOfOneIs));

	/** The numbers that it goes by. */
	public static final List<Threshold> THRESHOLDS = Threshold.all(List.of(STRONG_DBM, FEWEST_SHARED),
			PlacePairs.THRESHOLDS);

	private final Spots spots;
	private final PlacePairs pairs;
	private final int reference;
	private final int[] samples;

	/** @param metres how near two spots must be to count as one place */
	public DeviceDifferences(RuleInput input, double metres) {
		spots = Spots.of(input);
		pairs = new PlacePairs(input, metres);
		RadioMap map = input.map().map();
		samples = new int[map.devices().size()];
		for (int s = 0; s < map.size(); s++) {
			if (map.device(s) != RadioMap.NO_DEVICE) {
				samples[map.device(s)]++;
			}
		}
		int most = samples.length == 0 ? RadioMap.NO_DEVICE : 0;
		for (int d = 1; d < samples.length; d++) {
			// The name decides between equals, so that order in the map does not.
			boolean first = samples[d] == samples[most] && map.devices().get(d).compareTo(map.devices().get(most)) < 0;
			most = samples[d] > samples[most] || first ? d : most;
		}
		reference = most;
	}

	/** The device with most samples, or {@link RadioMap#NO_DEVICE}; others are compared with it. */
	public int reference() {
		return reference;
	}

	/** Samples of a device. */
	public int samples(int device) {
		return samples[device];
	}

	/** What a device reads more than the reference, in dB, one value a place. */
	public double[] of(int device) {
		RadioMap map = spots.map();
		Doubles differences = new Doubles();
		for (int s = 0; s < spots.size(); s++) {
			int other = spots.deviceOf(s) != device ? -1 : pairs.nearest(s, o -> spots.deviceOf(o) == reference);
			if (other < 0) {
				continue;
			}
			Doubles shared = new Doubles();
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int level = map.rssiDbm(other, map.accessPoint(k), 1);
				if (level != 1 && (level + map.rssiDbm(k)) / 2.0 >= STRONG_DBM.value()) {
					shared.add(map.rssiDbm(k) - level);
				}
			}
			if (shared.size() >= FEWEST_SHARED.count()) {
				differences.add(Median.of(shared.toArray()));
			}
		}
		return differences.toArray();
	}
}
