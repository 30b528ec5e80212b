package org.cairnfield.archive.internal.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Merges values of which one or both sides have changed some. Which side is which makes no difference: where both have set a
 * value, that of the base stays until somebody chooses, and where there is none, the lesser text.
 */
final class ThreeWay {

	private final List<MergeConflict> conflicts = new ArrayList<>();

	/** @param based whether there was anything before; otherwise both sides have added it */
	<T> T value(String where, String what, boolean based, T base, T mine, T theirs) {
		if (Objects.equals(mine, theirs) || based && Objects.equals(theirs, base)) {
			return mine;
		}
		if (based && Objects.equals(mine, base)) {
			return theirs;
		}
		conflict(where, what, base, mine, theirs);
		return based ? base : isLess(mine, theirs) ? mine : theirs;
	}

	private static boolean isLess(Object one, Object other) {
		return String.valueOf(one).compareTo(String.valueOf(other)) <= 0;
	}

	void conflict(String where, String what, Object base, Object mine, Object theirs) {
		conflicts.add(new MergeConflict(where, what, text(base), text(mine), text(theirs)));
	}

	private static String text(Object value) {
		return value == null ? null : value.toString();
	}

	List<MergeConflict> conflicts() {
		return List.copyOf(conflicts);
	}
}
