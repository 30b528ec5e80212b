package org.cairnfield.core.change;

import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.map.RadioMap;

/** At which places that two surveys share an access point was heard by each, and how strongly. */
final class Presence {

	/** A place where at least so many samples hear it counts as one of its own. */
	static final double STEADY = 0.5;

	/** By place: share of the samples that heard it, 0 … 1, in the earlier and the later survey. */
	final double[] shareThen;
	final double[] shareNow;
	/** By place: mean level in dBm of the samples that heard it; NaN where none did. */
	final double[] levelThen;
	final double[] levelNow;

	private Presence(int places) {
		shareThen = new double[places];
		shareNow = new double[places];
		levelThen = new double[places];
		levelNow = new double[places];
	}

	/** By address, of all access points that either survey heard at a shared place. */
	static SortedMap<String, Presence> of(RadioMap before, RadioMap after, SharedPlaces places) {
		SortedMap<String, Presence> all = new TreeMap<>();
		for (int p = 0; p < places.size(); p++) {
			count(before, places.before(p), p, true, places.size(), all);
			count(after, places.after(p), p, false, places.size(), all);
		}
		all.values().forEach(Presence::finish);
		return all;
	}

	private static void count(RadioMap map, int[] samples, int place, boolean then, int places, SortedMap<String, Presence> all) {
		for (int sample : samples) {
			for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
				Presence one = all.computeIfAbsent(map.accessPoints().get(map.accessPoint(k)), address -> new Presence(places));
				(then ? one.shareThen : one.shareNow)[place] += 1.0 / samples.length;
				(then ? one.levelThen : one.levelNow)[place] += (double) map.rssiDbm(k) / samples.length;
			}
		}
	}

	private void finish() {
		for (int p = 0; p < shareThen.length; p++) {
			levelThen[p] /= shareThen[p]; // 0 / 0 is NaN
			levelNow[p] /= shareNow[p];
		}
	}

	boolean wasHeard() {
		return Arrays.stream(shareThen).anyMatch(share -> share > 0);
	}

	boolean isHeard() {
		return Arrays.stream(shareNow).anyMatch(share -> share > 0);
	}

	/** How many places had half of their samples or more hear it. */
	static int steadyPlaces(double[] shares) {
		return (int) Arrays.stream(shares).filter(share -> share >= STEADY).count();
	}
}
