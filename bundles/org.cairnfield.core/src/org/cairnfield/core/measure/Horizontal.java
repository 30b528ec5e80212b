package org.cairnfield.core.measure;

/** Which estimates enter the statistics of horizontal error. Hit rates always count all of them. */
public enum Horizontal {
	/**
	 * Every estimate, with its plane distance, whatever its floor and site. Right where sites share one frame;
	 * where they do not, the distance to another site means nothing: use {@link #RIGHT_SITE}.
	 */
	ALL,
	/** Only estimates at the right site, whatever their floor. */
	RIGHT_SITE,
	/** Only estimates on the right floor of the right site. */
	RIGHT_FLOOR
}
