package org.cairnfield.ui.charts.colour;

import org.eclipse.swt.graphics.RGB;

/**
 * Eight colours that people with colour vision deficiencies tell apart, each with a shape that says the same: Okabe and
 * Ito, "Color Universal Design (CUD): how to make figures and presentations that are friendly to colorblind people"
 * (2002, revised 2008). The order is ours: neighbours differ much in lightness or hue.
 */
public enum Categorical {
	BLUE(0, 114, 178), ORANGE(230, 159, 0), BLUISH_GREEN(0, 158, 115), VERMILLION(213, 94, 0), SKY_BLUE(86, 180, 233),
	REDDISH_PURPLE(204, 121, 167), YELLOW(240, 228, 66), BLACK(0, 0, 0);

	/** A colour and a shape for one thing of a kind. */
	public record Style(Categorical colour, Marker marker) {
	}

	private final int red;
	private final int green;
	private final int blue;

	Categorical(int red, int green, int blue) {
		this.red = red;
		this.green = green;
		this.blue = blue;
	}

	/**
	 * Colours repeat after eight, but then with another shape, so that 64 styles differ.
	 *
	 * @param index from 0
	 */
	public static Style style(int index) {
		int colour = Math.floorMod(index, values().length);
		int round = Math.floorDiv(index, values().length);
		return new Style(values()[colour], Marker.values()[Math.floorMod(colour + round, Marker.values().length)]);
	}

	/** The fill on this background: as published, except that black turns to white on a dark one. */
	public RGB on(RGB background) {
		return this == BLACK && Contrast.isDark(background) ? new RGB(255, 255, 255) : new RGB(red, green, blue);
	}
}
