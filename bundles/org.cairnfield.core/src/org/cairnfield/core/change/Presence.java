package org.cairnfield.core.change;

import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cairnfield.core.map.RadioMap;

/**
 * At which places that two surveys share an access point was heard by each, and how strongly. Only places where either heard it
 * are held, in ascending order: what is asked of the i-th of them.
 */
final class Presence {

	private static final int FIRST = 8;

	private int size;
	private int[] place = new int[FIRST];
	private double[] shareThen = new double[FIRST];
	private double[] shareNow = new double[FIRST];
	private double[] sumThen = new double[FIRST];
	private double[] sumNow = new double[FIRST];

	private Presence() {
	}

	/** By address, of all access points that either survey heard at a shared place. */
	static SortedMap<String, Presence> of(RadioMap before, RadioMap after, SharedPlaces places) {
		SortedMap<String, Presence> all = new TreeMap<>();
		Presence[] then = new Presence[before.accessPointCount()];
		Presence[] now = new Presence[after.accessPointCount()];
		for (int p = 0; p < places.size(); p++) {
			count(before, places.before(p), p, true, then, all);
			count(after, places.after(p), p, false, now, all);
		}
		return all;
	}

	/** @param known those met so far, by their index in the map */
	private static void count(RadioMap map, int[] samples, int place, boolean then, Presence[] known,
			SortedMap<String, Presence> all) {
		for (int sample : samples) {
			for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
				int a = map.accessPoint(k);
				if (known[a] == null) {
					known[a] = all.computeIfAbsent(map.accessPoints().get(a), address -> new Presence());
				}
				known[a].heard(place, then, 1.0 / samples.length, (double) map.rssiDbm(k) / samples.length);
			}
		}
	}

	/** @param at a place that is the last one so far, or comes after it */
	private void heard(int at, boolean then, double share, double level) {
		if (size == 0 || place[size - 1] != at) {
			if (size == place.length) {
				grow();
			}
			place[size++] = at;
		}
		(then ? shareThen : shareNow)[size - 1] += share;
		(then ? sumThen : sumNow)[size - 1] += level;
	}

	private void grow() {
		int room = 2 * size;
		place = Arrays.copyOf(place, room);
		shareThen = Arrays.copyOf(shareThen, room);
		shareNow = Arrays.copyOf(shareNow, room);
		sumThen = Arrays.copyOf(sumThen, room);
		sumNow = Arrays.copyOf(sumNow, room);
	}

	/** How many places heard it in either survey. */
	int size() {
		return size;
	}

	/** The i-th of them, by its number among all shared places. */
	int place(int i) {
		return place[i];
	}

	/** Share of the samples that heard it there, 0 … 1. @param then in the earlier survey; else in the later one */
	double share(int i, boolean then) {
		return (then ? shareThen : shareNow)[i];
	}

	/** Mean level in dBm of the samples that heard it there; NaN where none did. */
	double level(int i, boolean then) {
		return (then ? sumThen : sumNow)[i] / share(i, then); // 0 / 0 is NaN
	}

	/** Whether a survey heard it anywhere. */
	boolean isHeard(boolean then) {
		for (int i = 0; i < size; i++) {
			if (share(i, then) > 0) {
				return true;
			}
		}
		return false;
	}

	/** Whether half of the samples of a place or more heard it, so that the place counts as one of its own. */
	boolean isSteady(int i, boolean then) {
		return share(i, then) >= ChangeLimits.STEADY;
	}

	/** At how many places it is steady. */
	int steadyPlaces(boolean then) {
		int steady = 0;
		for (int i = 0; i < size; i++) {
			steady += isSteady(i, then) ? 1 : 0;
		}
		return steady;
	}

	/** Whether it was loud enough somewhere for its absence to tell anything. */
	boolean isLoud(boolean then) {
		int loud = 0;
		for (int i = 0; i < size; i++) {
			loud += level(i, then) >= ChangeLimits.TOLD_DBM ? 1 : 0; // not where it is NaN
		}
		return loud >= ChangeLimits.LOUD_PLACES;
	}

	/** Whether both surveys heard it somewhere. */
	boolean stayed() {
		return isHeard(true) && isHeard(false);
	}
}
