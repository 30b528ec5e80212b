package org.cairnfield.exchange.export;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

import org.cairnfield.core.radio.MacAddress;

/**
 * Names in place of addresses, by a keyed hash: HMAC-SHA-256 (RFC 2104, FIPS 198-1) of the address in capital letters with
 * colons, or of the name as it is where it is no address. The same key gives the same pseudonyms, so exports made with it can
 * be joined; whoever has the key can find addresses again by trying them all, so it must be kept as secret as the addresses.
 * The key is never written.
 */
public final class Pseudonyms {

	/** A shorter key could be found by trying. */
	public static final int LEAST_KEY_BYTES = 16;

	private static final String ALGORITHM = "HmacSHA256";
	private static final int SHOWN_BYTES = 8;

	private final SecretKeySpec key;

	/**
	 * @param key copied
	 * @throws IllegalArgumentException for a key shorter than {@link #LEAST_KEY_BYTES}
	 */
	public Pseudonyms(byte[] key) {
		if (key.length < LEAST_KEY_BYTES) {
			throw new IllegalArgumentException(
					"a key has at least " + LEAST_KEY_BYTES + " bytes, this one has " + key.length);
		}
		this.key = new SecretKeySpec(key, ALGORITHM);
	}

	/** What is written in place of a name: {@code p-} and 16 hexadecimal digits. */
	public String of(String name) {
		return "p-" + HexFormat.of().formatHex(Arrays.copyOf(hash(name), SHOWN_BYTES));
	}

	/** All 32 bytes of the keyed hash of a name. */
	public byte[] hash(String name) {
		String text = MacAddress.find(name).map(MacAddress::toString).orElse(name);
		return hmac(key, text.getBytes(StandardCharsets.UTF_8));
	}

	static byte[] hmac(SecretKeySpec key, byte[] message) {
		try {
			Mac mac = Mac.getInstance(ALGORITHM);
			mac.init(key);
			return mac.doFinal(message);
		} catch (NoSuchAlgorithmException | InvalidKeyException e) {
			throw new IllegalStateException("every Java has HMAC-SHA-256", e);
		}
	}
}
