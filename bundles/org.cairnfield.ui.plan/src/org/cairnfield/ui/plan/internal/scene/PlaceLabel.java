package org.cairnfield.ui.plan.internal.scene;

import java.util.regex.Pattern;

/** What the plan calls an access point where there is little room. */
public final class PlaceLabel {

	/** Names up to this long are shown whole. */
	private static final int LONGEST = 14;
	private static final Pattern HARDWARE = Pattern.compile("\\p{XDigit}{2}(:\\p{XDigit}{2}){5}");
	/** Two bytes and what is between them. */
	private static final int TAIL = 5;

	private PlaceLabel() {
	}

	/** The last two bytes of a hardware address, which tell neighbours apart; a name as it is, of a long one its end. */
	public static String of(String address) {
		if (HARDWARE.matcher(address).matches()) {
			return address.substring(address.length() - TAIL);
		}
		return address.length() <= LONGEST ? address : "…" + address.substring(address.length() - LONGEST + 1);
	}
}
