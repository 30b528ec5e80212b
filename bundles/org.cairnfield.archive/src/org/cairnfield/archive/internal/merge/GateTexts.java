package org.cairnfield.archive.internal.merge;

import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The file of gates in the three states of a merge; null where it is not there.
 *
 * @param both both changes together, as far as they touch different lines; otherwise null
 */
public record GateTexts(String base, String mine, String theirs, String both) {

	/**
	 * Merges gate by gate.
	 *
	 * @return the text; null where a side has no file, so that the file is no matter of single gates
	 */
	String merge(ThreeWay values) {
		boolean isThere = mine != null && theirs != null;
		String merged = !isThere ? null
				: mine.equals(theirs) ? mine
						: both != null ? both : base != null ? base : mine.compareTo(theirs) <= 0 ? mine : theirs;
		SortedSet<String> words = new TreeSet<>(values.openAt(GateLines.PLACE));
		if (isThere) {
			words.addAll(GateLines.words(base));
			words.addAll(GateLines.words(mine));
			words.addAll(GateLines.words(theirs));
		}
		for (String word : words) {
			if (!isThere) {
				keepOpen(word, GateLines.value(mine != null ? mine : theirs != null ? theirs : base, word), values);
				continue;
			}
			String value = values.value(GateLines.unit(word), Function.identity(), base != null,
					GateLines.value(base, word), GateLines.value(mine, word),
					GateLines.value(theirs, word));
			if (!Objects.equals(GateLines.value(merged, word), value)) {
				merged = GateLines.with(merged, word, value);
			}
		}
		return merged;
	}

	private static void keepOpen(String word, String value, ThreeWay values) {
		values.value(GateLines.unit(word), Function.identity(), true, value, value, value);
	}
}
