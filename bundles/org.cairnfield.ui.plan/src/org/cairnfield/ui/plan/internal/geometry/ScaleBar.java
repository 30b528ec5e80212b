package org.cairnfield.ui.plan.internal.geometry;

import java.util.Locale;

/** A round length and how long it is on the canvas. */
public record ScaleBar(double metres, int pixels) {

	private static final int[] ROUND = { 5, 2, 1 };

	/** The longest of 1, 2 or 5 times a power of ten metres that fits. */
	public static ScaleBar within(double pixelsPerMetre, int mostPixels) {
		double most = mostPixels / pixelsPerMetre;
		double power = Math.pow(10, Math.floor(Math.log10(most)));
		for (int factor : ROUND) {
			if (factor * power <= most * (1 + 1e-9)) {
				return new ScaleBar(factor * power, (int) Math.round(factor * power * pixelsPerMetre));
			}
		}
		throw new IllegalArgumentException("no length fits " + mostPixels + " pixels");
	}

	/** Such as "5 m", "20 cm" or "2 km". */
	public String label() {
		if (metres >= 1000) {
			return String.format(Locale.ROOT, Messages.ScaleBar_km, metres / 1000);
		}
		return metres >= 0.995 ? String.format(Locale.ROOT, "%.0f\u00a0m", metres)
				: String.format(Locale.ROOT, Messages.ScaleBar_cm, metres * 100);
	}
}
