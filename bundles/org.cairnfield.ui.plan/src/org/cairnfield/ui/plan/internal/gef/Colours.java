package org.cairnfield.ui.plan.internal.gef;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;

/** Colours of SWT, which need no disposal. */
public final class Colours {

	private Colours() {
	}

	/** Of 0xRRGGBB. */
	public static Color of(int rgb) {
		return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
	}

	/** 0xRRGGBB of a colour. */
	public static int rgb(Color colour) {
		RGB rgb = colour.getRGB();
		return rgb.red << 16 | rgb.green << 8 | rgb.blue;
	}
}
