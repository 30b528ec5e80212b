package org.cairnfield.exchange.internal.text;

import java.util.Set;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A site's name from where its file lies, for tables that have no building column: the file's name without
 * endings and without marks that tell training from test data, so that both parts of one survey agree.
 */
public final class SiteNames {

	private static final Pattern ENDINGS = Pattern.compile("(?i)(\\.(gz|csv|tsv|txt|tab|dat))+$");
	private static final Set<String> MARKS = Set.of("train", "training", "trn", "test", "testing", "tst", "val",
			"valid", "validation", "eval", "evaluation");
	private static final Pattern GLUED = Pattern.compile(
			"(?i)^(training|train|trn|testing|test|tst|validation|val)(?=\\d)");

	private SiteNames() {
	}

	/** The file's name without endings such as .csv.gz. */
	public static String stem(String fileName) {
		return ENDINGS.matcher(fileName).replaceFirst("");
	}

	/** A stem without marks of training and test; may be empty. */
	public static String withoutMarks(String stem) {
		StringBuilder kept = new StringBuilder();
		int start = 0;
		for (int i = 0; i <= stem.length(); i++) {
			if (i == stem.length() || "_-. ".indexOf(stem.charAt(i)) >= 0) {
				String part = stem.substring(start, i);
				if (!part.isEmpty() && !MARKS.contains(part.toLowerCase(Locale.ROOT))) {
					if (kept.length() > 0 && start > 0) {
						kept.append(stem.charAt(start - 1));
					}
					kept.append(GLUED.matcher(part).replaceFirst(""));
				}
				start = i + 1;
			}
		}
		return kept.toString();
	}

	/**
	 * The first of the names, taken from the file outwards through its folders, that still has a letter once
	 * marks are gone.
	 *
	 * @param names the file's stem, then its folders from the innermost outwards
	 */
	public static String choose(Iterable<String> names) {
		for (String name : names) {
			String bare = withoutMarks(name);
			if (bare.chars().anyMatch(Character::isLetter)) {
				return bare;
			}
		}
		return "site";
	}
}
