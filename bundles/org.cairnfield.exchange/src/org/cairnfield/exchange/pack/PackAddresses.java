package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Optional;

import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.exchange.export.Pseudonyms;

/** The 64-bit numbers that stand for access points in a pack, compared without sign. */
public final class PackAddresses {

	private PackAddresses() {
	}

	/**
	 * The number of an access point: the six octets of a MAC address in the upper 48 bits; of any other name the first eight
	 * octets of its SHA-256.
	 */
	public static long of(String name) {
		Optional<MacAddress> address = MacAddress.find(name);
		return address.isPresent() ? address.get().value() << 16 : first8(sha256(name));
	}

	/** The number under a pseudonym: the first eight octets of the keyed hash. */
	public static long of(String name, Pseudonyms pseudonyms) {
		return first8(pseudonyms.hash(name));
	}

	private static byte[] sha256(String name) {
		try {
			return MessageDigest.getInstance("SHA-256").digest(name.getBytes(StandardCharsets.UTF_8));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	private static long first8(byte[] hash) {
		return ByteBuffer.wrap(hash).getLong();
	}
}
