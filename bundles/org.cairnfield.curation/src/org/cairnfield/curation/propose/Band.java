package org.cairnfield.curation.propose;

import java.util.Locale;

/**
 * A band of strength. Strength says where a sample fits, not whether it is good.
 *
 * @param name  given by people
 * @param lowR  belongs to it
 * @param highR does not; positive infinity for the uppermost
 */
public record Band(String name, double lowR, double highR) {

	/** Whether a strength is in it. */
	public boolean has(double r) {
		return r >= lowR && r < highR;
	}

	/** Name and bounds, for a person. */
	public String title() {
		if (Double.isInfinite(highR)) {
			return String.format(Locale.ROOT, Messages.Band_rFrom, name, lowR);
		}
		return String.format(Locale.ROOT, Messages.Band_rFromToBelow, name, lowR, highR);
	}
}
