package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where a new sample would tell much.
 *
 * @param x           metres, in the frame of the site; likewise {@code y}
 * @param days        since it was last sampled, before the newest survey of the site; −1 where that is not known, or never was
 * @param goneShare   of the access points that its last samples heard, those that are gone, 0 … 1
 * @param errorMetres by how much farther than the next place a map without it puts its samples; NaN where it has none
 * @param gapMetres   to the nearest sample, where it has none; else 0
 * @param worth       of all these together, 0 and more; the more, the sooner it should be visited
 */
public record NextPlace(int floor, double x, double y, long days, double goneShare, double errorMetres,
		double gapMetres, double worth) {

	/** Why, for a surveyor. */
	public String why() {
		if (gapMetres > 0) {
			return String.format(Locale.ROOT, "no sample within %.0f m", gapMetres);
		}
		List<String> reasons = new ArrayList<>();
		if (goneShare > 0) {
			reasons.add(String.format(Locale.ROOT, "%.0f %% of its access points gone", 100 * goneShare));
		}
		if (days > 0) {
			reasons.add(days + (days == 1 ? " day old" : " days old"));
		}
		if (errorMetres >= 1) {
			reasons.add(String.format(Locale.ROOT, "found %.0f m too far off without it", errorMetres));
		}
		return reasons.isEmpty() ? "to check" : String.join(", ", reasons);
	}
}
