package org.cairnfield.model.values;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What may be an id. Ids of sites, surveys, splits, ledgers and releases name files on any file system; those of access
 * points stand in lines of readings. Ids of samples come from survey files and may be nearly any text.
 */
public final class Ids {

	/** The most characters of an id, and of a sample's id. */
	public static final int LONGEST = 100;

	private static final Pattern USABLE = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9._-]{0," + (LONGEST - 1) + "}");
	/** Names that some file systems keep for devices, with or without an extension. */
	private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4",
			"com5",
			"com6", "com7", "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

	private Ids() {
	}

	/**
	 * Whether a text can be an id: up to 100 of the letters A–Z, a–z, digits, '_', '-' and '.', not beginning with '-' or
	 * '.', not ending with '.', and no name that is reserved for a device. Null is not.
	 */
	public static boolean isUsable(String id) {
		if (id == null || !USABLE.matcher(id).matches() || id.endsWith(".")) {
			return false;
		}
		int dot = id.indexOf('.');
		return !RESERVED.contains((dot < 0 ? id : id.substring(0, dot)).toLowerCase(Locale.ROOT));
	}

	/**
	 * Whether a text can be the id of a sample: 1 to 100 characters, no control characters, no blank at either end. Null is
	 * not.
	 */
	public static boolean isUsableForSample(String id) {
		if (id == null || id.isEmpty() || id.length() > LONGEST || id.charAt(0) <= ' '
				|| id.charAt(id.length() - 1) <= ' ') {
			return false;
		}
		for (int i = 0; i < id.length(); i++) {
			char c = id.charAt(i);
			if (c < ' ' || c >= 0x7f && c < 0xa0 || c == '\u2028' || c == '\u2029') {
				return false;
			}
		}
		return true;
	}

	/** An id made from any text: what an id cannot have becomes '-'. Different texts may give the same id. */
	public static String from(String text) {
		StringBuilder id = new StringBuilder();
		for (int i = 0; i < text.length() && id.length() < LONGEST; i++) {
			char c = text.charAt(i);
			boolean plain = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '_'
					|| c == '.';
			if (plain) {
				id.append(c);
			} else if (id.length() > 0 && id.charAt(id.length() - 1) != '-') {
				id.append('-');
			}
		}
		while (id.length() > 0 && (id.charAt(id.length() - 1) == '-' || id.charAt(id.length() - 1) == '.')) {
			id.setLength(id.length() - 1);
		}
		while (id.length() > 0 && id.charAt(0) == '.') {
			id.deleteCharAt(0);
		}
		String made = id.toString();
		return isUsable(made) ? made : ('_' + made).substring(0, Math.min(LONGEST, made.length() + 1));
	}
}
