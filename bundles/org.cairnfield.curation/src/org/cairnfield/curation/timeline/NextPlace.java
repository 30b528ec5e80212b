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
			return String.format(Locale.ROOT, Messages.NextPlace_noSampleWithinM, gapMetres);
		}
		List<String> reasons = new ArrayList<>();
		if (goneShare > 0) {
			reasons.add(String.format(Locale.ROOT, Messages.NextPlace_ofItsAccessPointsGone, 100 * goneShare));
		}
		if (days > 0) {
			reasons.add(days + (days == 1 ? Messages.NextPlace_dayOld : Messages.NextPlace_daysOld));
		}
		if (errorMetres >= 1) {
			reasons.add(String.format(Locale.ROOT, Messages.NextPlace_foundMTooFarOff, errorMetres));
		}
		return reasons.isEmpty() ? Messages.NextPlace_toCheck : String.join(", ", reasons);
	}
}
