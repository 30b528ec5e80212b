package org.cairnfield.core.radio;

import java.util.Locale;
import java.util.Optional;

/**
 * A 48-bit MAC address, as an access point sends it for its BSSID. The bits of the first octet are those of
 * RFC 9542 section 2.1 (before it RFC 7042): 0x01 marks a group address, 0x02 a locally administered one.
 *
 * @param value the six octets, the first in the highest place; within 0 … 2⁴⁸ − 1
 */
public record MacAddress(long value) implements Comparable<MacAddress> {

	private static final long BROADCAST = 0xFFFF_FFFF_FFFFL;
	private static final long DOCUMENTATION = 0x0000_5E00_5300L;
	private static final int OCTETS = 6;

	public MacAddress {
		if (value < 0 || value > BROADCAST) {
			throw new IllegalArgumentException("not a 48-bit address: " + value);
		}
	}

	/**
	 * The address written as {@code 00:00:5E:00:53:01}, {@code 00-00-5e-00-53-01}, {@code 0000.5e00.5301}
	 * or {@code 00005E005301}; one separator throughout, either case.
	 *
	 * @throws IllegalArgumentException where the text is none of these
	 */
	public static MacAddress parse(String text) {
		return find(text).orElseThrow(() -> new IllegalArgumentException("not a MAC address: " + text));
	}

	/** As {@link #parse}, empty where the text is no address. */
	public static Optional<MacAddress> find(String text) {
		int group = switch (text.length()) {
		case 12 -> 12;
		case 14 -> 4;
		case 17 -> 2;
		default -> 0;
		};
		if (group == 0) {
			return Optional.empty();
		}
		char separator = group == 12 ? 0 : text.charAt(group);
		if (group == 4 && separator != '.' || group == 2 && separator != ':' && separator != '-') {
			return Optional.empty();
		}
		long value = 0;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (i % (group + 1) == group) {
				if (c != separator) {
					return Optional.empty();
				}
				continue;
			}
			// Digits of other scripts are no hexadecimal digits here.
			int digit = c < 128 ? Character.digit(c, 16) : -1;
			if (digit < 0) {
				return Optional.empty();
			}
			value = value << 4 | digit;
		}
		return Optional.of(new MacAddress(value));
	}

	/** An address of the range for documentation, 00:00:5E:00:53:00 … FF (RFC 9542), {@code last} 0 … 255. */
	public static MacAddress documentation(int last) {
		if (last < 0 || last > 0xFF) {
			throw new IllegalArgumentException("the documentation range ends at 255: " + last);
		}
		return new MacAddress(DOCUMENTATION | last);
	}

	/** Addressed to many (I/G bit 1); no single station has such an address. */
	public boolean isGroup() {
		return (firstOctet() & 0x01) != 0;
	}

	/**
	 * Locally administered (U/L bit 1): not from a vendor's block. On a BSSID it usually means a virtual
	 * network or a phone's hotspot, which is a hint and no proof (common practice).
	 */
	public boolean isLocal() {
		return (firstOctet() & 0x02) != 0;
	}

	/** All bits 1. */
	public boolean isBroadcast() {
		return value == BROADCAST;
	}

	/** In the range that RFC 9542 sets aside for documentation. */
	public boolean isDocumentation() {
		return (value & ~0xFFL) == DOCUMENTATION;
	}

	/** False where no access point can have the address: group addresses, broadcast among them, and zero. */
	public boolean canBeBssid() {
		return !isGroup() && value != 0;
	}

	/** Upper case, colons: {@code 00:00:5E:00:53:01}. */
	@Override
	public String toString() {
		StringBuilder text = new StringBuilder(17);
		for (int i = OCTETS - 1; i >= 0; i--) {
			int octet = (int) (value >>> 8 * i) & 0xFF;
			text.append(octet < 16 ? "0" : "").append(Integer.toHexString(octet).toUpperCase(Locale.ROOT));
			text.append(i == 0 ? "" : ":");
		}
		return text.toString();
	}

	@Override
	public int compareTo(MacAddress other) {
		return Long.compare(value, other.value);
	}

	private int firstOctet() {
		return (int) (value >>> 40);
	}
}
