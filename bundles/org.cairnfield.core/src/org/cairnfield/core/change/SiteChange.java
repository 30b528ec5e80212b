package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.FalseDiscovery;
import org.cairnfield.core.stats.Wilson;

/**
 * What became of the access points of a site between two surveys, judged at the places that both visited.
 *
 * @param places shared by the two
 * @param fates  of all access points that either survey heard there, by address
 */
public record SiteChange(int places, List<AccessPointFate> fates) {

	/** How far apart samples of one place may be: somewhat more than surveyors stand off. */
	public static final double SAME_PLACE_METRES = 2;

	/** Of the access points said to be gone or new, so many may be wrong. */
	private static final double FALSE_ONES = 0.01;
	/** Steady enough to count: heard by half of the samples at so many places. */
	private static final int STEADY_PLACES = 4;
	/**
	 * Where more of the steady ones than that are gone or new, by the lower end of the interval, the site has changed. On an open
	 * set of twelve surveys of one floor the lower ends were 0.15 and more at the three changes, 0.08 and less otherwise.
	 */
	private static final double CHANGED_SHARE = 0.12;
	private static final double CONFIDENCE = 0.95;

	public SiteChange {
		fates = List.copyOf(fates);
	}

	/**
	 * Compares two surveys of one site.
	 *
	 * @param metres how far apart samples of one place may be, such as {@link #SAME_PLACE_METRES}
	 */
	public static SiteChange between(RadioMap before, RadioMap after, double metres) {
		SharedPlaces places = SharedPlaces.of(before, after, metres);
		SortedMap<String, Presence> all = Presence.of(before, after, places);
		List<String> addresses = List.copyOf(all.keySet());
		double[] silentNow = silences(all, addresses, true);
		double[] silentThen = silences(all, addresses, false);
		boolean[] vanished = FalseDiscovery.believed(silentNow, FALSE_ONES);
		boolean[] appeared = FalseDiscovery.believed(silentThen, FALSE_ONES);
		Map<String, String> successors = Successors.of(all, chosen(addresses, vanished), chosen(addresses, appeared));
		Set<String> moved = Moves.of(all, places);
		List<AccessPointFate> fates = new ArrayList<>();
		for (int a = 0; a < addresses.size(); a++) {
			String address = addresses.get(a);
			Presence presence = all.get(address);
			String successor = successors.getOrDefault(address, "");
			Fate fate = moved.contains(address) ? Fate.MOVED : presence.wasHeard() && presence.isHeard() ? Fate.STAYED : !successor.isEmpty() ? Fate.REPLACED
					: vanished[a] ? Fate.VANISHED : appeared[a] ? Fate.APPEARED : Fate.NOT_KNOWN;
			fates.add(new AccessPointFate(address, fate, Presence.steadyPlaces(presence.shareThen), Presence.steadyPlaces(presence.shareNow),
					Math.min(silentNow[a], silentThen[a]), successor));
		}
		return new SiteChange(places.size(), fates);
	}

	/** @param now whether the later survey was silent, else the earlier one */
	private static double[] silences(SortedMap<String, Presence> all, List<String> addresses, boolean now) {
		Rehearing rehearing = Rehearing.of(all.values(), now);
		return addresses.stream().map(all::get).mapToDouble(one -> now
				? one.isHeard() ? 1 : rehearing.silence(one.shareThen)
				: one.wasHeard() ? 1 : rehearing.silence(one.shareNow)).toArray();
	}

	private static List<String> chosen(List<String> addresses, boolean[] which) {
		List<String> chosen = new ArrayList<>();
		for (int a = 0; a < which.length; a++) {
			if (which[a]) {
				chosen.add(addresses.get(a));
			}
		}
		return chosen;
	}

	/** Those with one of some fates. */
	public List<AccessPointFate> with(Fate... wanted) {
		return fates.stream().filter(each -> List.of(wanted).contains(each.fate())).toList();
	}

	/** What became of one; null where neither survey heard it. */
	public AccessPointFate of(String address) {
		int at = Collections.binarySearch(fates, new AccessPointFate(address, Fate.NOT_KNOWN, 0, 0, 1, ""), Comparator.comparing(AccessPointFate::address));
		return at < 0 ? null : fates.get(at);
	}

	/** Whether so much is gone or new that a map of the earlier survey is to be measured before it is relied on. */
	public boolean isChanged() {
		return leastShare(true) > CHANGED_SHARE || leastShare(false) > CHANGED_SHARE;
	}

	/**
	 * Share of the steady access points of one survey that the other heard nowhere.
	 *
	 * @param then whether of the earlier survey, so that they are gone; else of the later one, so that they are new
	 * @return the lower end of the interval of 95 %; 0 where none was steady
	 */
	public double leastShare(boolean then) {
		int steady = 0;
		int silent = 0;
		for (AccessPointFate each : fates) {
			boolean counts = (then ? each.placesThen() : each.placesNow()) >= STEADY_PLACES;
			steady += counts ? 1 : 0;
			silent += counts && (then ? each.fate() == Fate.VANISHED || each.fate() == Fate.REPLACED : each.fate() == Fate.APPEARED) ? 1 : 0;
		}
		return steady == 0 ? 0 : Wilson.interval(silent, steady, CONFIDENCE).low();
	}
}
