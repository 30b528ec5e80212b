package org.cairnfield.archive.internal.git;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The bytes of a tag, taken apart as Git does: the last line that opens an armour begins the signature, which reaches to the
 * end and covers all bytes before.
 *
 * @param payload   what is signed
 * @param signature in its armour; empty where there is none
 */
record SignedTag(byte[] payload, byte[] signature) {

	static final String PGP = "-----BEGIN PGP SIGNATURE-----";
	static final String SSH = "-----BEGIN SSH SIGNATURE-----";
	private static final String[] OPENINGS = {PGP, "-----BEGIN PGP MESSAGE-----", SSH, "-----BEGIN SIGNED MESSAGE-----"};

	static SignedTag of(byte[] tag) {
		int from = tag.length;
		for (int line = 0; line < tag.length; line = next(tag, line)) {
			if (opens(tag, line)) {
				from = line;
			}
		}
		return new SignedTag(Arrays.copyOf(tag, from), Arrays.copyOfRange(tag, from, tag.length));
	}

	private static int next(byte[] tag, int line) {
		int at = line;
		while (at < tag.length && tag[at] != '\n') {
			at++;
		}
		return at + 1;
	}

	private static boolean opens(byte[] tag, int line) {
		for (String opening : OPENINGS) {
			int end = line + opening.length();
			if (end <= tag.length && opening.equals(new String(tag, line, opening.length(), StandardCharsets.ISO_8859_1))) {
				return true;
			}
		}
		return false;
	}

	boolean isSigned() {
		return signature.length > 0;
	}

	/** Whether the signature is one whole armour of a kind and nothing else. */
	boolean isArmour(String opening) {
		String text = new String(signature, StandardCharsets.ISO_8859_1).strip();
		String closing = opening.replace("BEGIN", "END");
		return text.startsWith(opening + '\n') && text.endsWith('\n' + closing) && text.indexOf(closing) == text.length() - closing.length();
	}
}
