package org.cairnfield.core.simulate;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiChannel;

/**
 * One sender with one address. A box on the ceiling with two radios is two of these.
 *
 * @param site     index of its site in the campus
 * @param level    the floor it hangs on
 * @param x        metres, floor frame
 * @param y        metres, floor frame
 * @param powerDbm radiated power, antenna included
 * @param shadowedAs address of the first one that hung there: what stands around a place shadows each that hangs there alike
 */
public record AccessPoint(MacAddress address, int site, int level, double x, double y, WifiChannel channel,
		double powerDbm, MacAddress shadowedAs) {

	/** The first one at its place. */
	public AccessPoint(MacAddress address, int site, int level, double x, double y, WifiChannel channel,
			double powerDbm) {
		this(address, site, level, x, y, channel, powerDbm, address);
	}

	/** A new one in its place, with another address. */
	public AccessPoint replacedBy(MacAddress other) {
		return new AccessPoint(other, site, level, x, y, channel, powerDbm, shadowedAs);
	}

	/** The same sender elsewhere in its site. */
	public AccessPoint movedTo(int newLevel, double newX, double newY) {
		return new AccessPoint(address, site, newLevel, newX, newY, channel, powerDbm, shadowedAs);
	}
}
