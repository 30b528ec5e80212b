package org.cairnfield.core.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.FalseDiscovery;
import org.cairnfield.core.stats.Wilson;

/**
 * What became of the access points of a site between two surveys, judged at the places that both visited.
 *
 * @param places shared by the two
 * @param fates  of all access points that either survey heard there, by address
 * @param moves  of those that hang elsewhere now, by address
 */
public record SiteChange(int places, List<AccessPointFate> fates, List<Move> moves) {

	private static final double CONFIDENCE = 0.95;

	public SiteChange {
		fates = List.copyOf(fates);
		moves = List.copyOf(moves);
	}

	/**
	 * Compares two surveys of one site.
	 *
	 * @param metres how far apart samples of one place may be, such as {@link ChangeLimits#SAME_PLACE_METRES}
	 */
	public static SiteChange between(RadioMap before, RadioMap after, double metres) {
		SharedPlaces places = SharedPlaces.of(before, after, metres);
		SortedMap<String, Presence> all = Presence.of(before, after, places);
		List<String> addresses = List.copyOf(all.keySet());
		double[] silentNow = silences(all, true);
		double[] silentThen = silences(all, false);
		boolean[] vanished = FalseDiscovery.believed(silentNow, ChangeLimits.FALSE_ONES);
		boolean[] appeared = FalseDiscovery.believed(silentThen, ChangeLimits.FALSE_ONES);
		Map<String, String> successors = Successors.of(all, chosen(addresses, vanished), chosen(addresses, appeared));
		SortedMap<String, Move> moved = Moves.of(all, places);
		List<AccessPointFate> fates = new ArrayList<>();
		for (int a = 0; a < addresses.size(); a++) {
			String address = addresses.get(a);
			Presence presence = all.get(address);
			String successor = successors.getOrDefault(address, "");
			Fate fate = moved.containsKey(address) ? Fate.MOVED
					: presence.stayed() ? Fate.STAYED
							: !successor.isEmpty() ? Fate.REPLACED
									: vanished[a] ? Fate.VANISHED : appeared[a] ? Fate.APPEARED : Fate.NOT_KNOWN;
			fates.add(new AccessPointFate(address, fate, presence.steadyPlaces(true), presence.steadyPlaces(false),
					Math.min(silentNow[a], silentThen[a]), successor));
		}
		return new SiteChange(places.size(), fates, List.copyOf(moved.values()));
	}

	/** @param now whether the later survey was silent, else the earlier one */
	private static double[] silences(SortedMap<String, Presence> all, boolean now) {
		Rehearing rehearing = Rehearing.of(all.values(), now);
		return all.values().stream().mapToDouble(rehearing::silence).toArray();
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
		int at = Collections.binarySearch(fates, new AccessPointFate(address, Fate.NOT_KNOWN, 0, 0, 1, ""),
				Comparator.comparing(AccessPointFate::address));
		return at < 0 ? null : fates.get(at);
	}

	/** Whether so much is gone or new that a map of the earlier survey is to be measured before it is relied on. */
	public boolean isChanged() {
		return leastShare(true) > ChangeLimits.CHANGED_SHARE || leastShare(false) > ChangeLimits.CHANGED_SHARE;
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
			boolean counts = (then ? each.placesThen() : each.placesNow()) >= ChangeLimits.STEADY_PLACES;
			steady += counts ? 1 : 0;
			silent += counts && (then ? each.fate() == Fate.VANISHED || each.fate() == Fate.REPLACED
					: each.fate() == Fate.APPEARED) ? 1 : 0;
		}
		return steady == 0 ? 0 : Wilson.interval(silent, steady, CONFIDENCE).low();
	}
}
