package org.cairnfield.exchange.internal.text;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A site's name from where its file lies, for tables that have no building column: the file's name without
 * endings and without marks that tell training from test data, so that both parts of one survey agree.
 */
public final class SiteNames {

	private static final Pattern ENDINGS = Pattern.compile("(?i)(\\.(gz|csv|tsv|txt|tab|dat))+$");
	private static final Set<String> TEST = Set.of("test", "testing", "tst", "val", "valid", "validation", "eval",
			"evaluation");
	private static final Set<String> TRAINING = Set.of("train", "training", "trn");
	private static final Pattern GLUED = Pattern.compile(
			"(?i)^(training|train|trn|testing|test|tst|validation|val)(?=\\d)");
	private static final Pattern PARTS = Pattern.compile("[-_. ]+");

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
				if (!part.isEmpty() && !isMark(part, TEST) && !isMark(part, TRAINING)) {
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

	private static boolean isMark(String part, Set<String> marks) {
		return marks.contains(part.toLowerCase(Locale.ROOT));
	}

	/** Whether a stem has a mark of test data, and none of training. */
	public static boolean saysTest(String stem) {
		List<String> marks = PARTS.splitAsStream(stem).map(part -> {
			Matcher glued = GLUED.matcher(part);
			return glued.find() ? glued.group(1) : part;
		}).toList();
		return marks.stream().anyMatch(mark -> isMark(mark, TEST))
				&& marks.stream().noneMatch(mark -> isMark(mark, TRAINING));
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
