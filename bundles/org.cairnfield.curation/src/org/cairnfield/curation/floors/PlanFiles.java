package org.cairnfield.curation.floors;

import java.util.Locale;

/** Names of plan images in the folder of an archive. */
public final class PlanFiles {

	private static final int DIGITS = 10;

	private PlanFiles() {
	}

	/**
	 * The content is in the name, so that an image which undo may need is never overwritten.
	 *
	 * @param digest SHA-256 of the content, hexadecimal
	 * @param ending such as "png"
	 */
	public static String name(String siteId, int level, String digest, String ending) {
		return ("plans/" + siteId + '-' + level).toLowerCase(Locale.ROOT) + '-' + digest.substring(0, DIGITS) + '.'
				+ ending;
	}
}
