package org.cairnfield.archive.internal.git;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The bytes of a tag or commit, taken apart as Git does.
 *
 * @param payload   what is signed
 * @param signature in its armour; empty where there is none
 */
record SignedObject(byte[] payload, byte[] signature) {

	static final String PGP = "-----BEGIN PGP SIGNATURE-----";
	static final String SSH = "-----BEGIN SSH SIGNATURE-----";
	private static final String HEADER = "gpgsig ";
	/** Of the same object under another kind of name. */
	private static final String OTHER_HEADER = "gpgsig-sha256 ";
	private static final String[] OPENINGS = { PGP, "-----BEGIN PGP MESSAGE-----", SSH,
			"-----BEGIN SIGNED MESSAGE-----" };

	/** Of a tag the last line that opens an armour begins the signature, which reaches to the end and covers all bytes before. */
	static SignedObject ofTag(byte[] tag) {
		int from = tag.length;
		for (int line = 0; line < tag.length; line = next(tag, line)) {
			if (opens(tag, line)) {
				from = line;
			}
		}
		return new SignedObject(Arrays.copyOf(tag, from), Arrays.copyOfRange(tag, from, tag.length));
	}

	/** Of a commit the signature is a header, its lines after the first indented; it covers all bytes but those of signatures. */
	static SignedObject ofCommit(byte[] commit) {
		ByteArrayOutputStream payload = new ByteArrayOutputStream();
		ByteArrayOutputStream signature = new ByteArrayOutputStream();
		ByteArrayOutputStream target = payload;
		int end;
		for (int line = 0; line < commit.length; line = end) {
			end = Math.min(next(commit, line), commit.length);
			if (commit[line] == '\n') { // the message, which may hold anything
				payload.write(commit, line, commit.length - line);
				break;
			}
			int from = line;
			if (starts(commit, line, " ")) {
				from += target == payload ? 0 : 1;
			} else if (starts(commit, line, HEADER)) {
				target = signature;
				from += HEADER.length();
			} else {
				target = starts(commit, line, OTHER_HEADER) ? new ByteArrayOutputStream() : payload;
			}
			target.write(commit, from, end - from);
		}
		return new SignedObject(payload.toByteArray(), signature.toByteArray());
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
			if (starts(tag, line, opening)) {
				return true;
			}
		}
		return false;
	}

	private static boolean starts(byte[] object, int line, String start) {
		return line + start.length() <= object.length
				&& start.equals(new String(object, line, start.length(), StandardCharsets.ISO_8859_1));
	}

	boolean isSigned() {
		return signature.length > 0;
	}

	/** Whether the signature is one whole armour of a kind and nothing else. */
	boolean isArmour(String opening) {
		String text = new String(signature, StandardCharsets.ISO_8859_1).strip();
		String closing = opening.replace("BEGIN", "END");
		return text.startsWith(opening + '\n') && text.endsWith('\n' + closing)
				&& text.indexOf(closing) == text.length() - closing.length();
	}
}
