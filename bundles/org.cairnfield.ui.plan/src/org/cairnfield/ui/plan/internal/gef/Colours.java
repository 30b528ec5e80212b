package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.swt.graphics.Color;

/** Colours of SWT, which need no disposal. */
public final class Colours {

	private Colours() {
	}

	/** Of 0xRRGGBB. */
	public static Color of(int rgb) {
		return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
	}
}
