package org.cairnfield.ui.charts;

import org.cairnfield.ui.charts.colour.Contrast;
import org.eclipse.swt.graphics.RGB;

/** The two colours that the platform gives, and the shades between that are made of them. */
record Look(RGB foreground, RGB background) {

	/** For text of second rank; still reads well. */
	RGB muted() {
		return Contrast.between(background, foreground, 0.68);
	}

	/** For lines of a grid. */
	RGB faint() {
		return Contrast.between(background, foreground, 0.14);
	}

	/** For lines of an axis. */
	RGB line() {
		return Contrast.between(background, foreground, 0.45);
	}

	/** Behind what is chosen. */
	RGB band() {
		return Contrast.between(background, foreground, 0.09);
	}
}
