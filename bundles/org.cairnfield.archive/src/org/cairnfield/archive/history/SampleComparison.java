package org.cairnfield.archive.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.cairnfield.model.values.SampleTable;

/** Compares two tables of samples, row by row in the order of ids. */
final class SampleComparison {

	private final SampleTable before;
	private final SampleTable after;
	private final List<SampleChange> changes = new ArrayList<>();
	private final int[] toAfter;
	private long added;
	private long removed;
	private long changed;

	private SampleComparison(SampleTable before, SampleTable after) {
		this.before = before;
		this.after = after;
		toAfter = indices(before.accessPoints(), after.accessPoints());
	}

	static SurveyDiff of(String survey, SampleTable before, SampleTable after) {
		SampleComparison comparison = new SampleComparison(before, after);
		comparison.run();
		return new SurveyDiff(survey, comparison.changes, comparison.added, comparison.removed, comparison.changed);
	}

	/** For each of the names its index in the others, or where it would be: −1 − index. Both ascend. */
	private static int[] indices(List<String> names, List<String> others) {
		int[] indices = new int[names.size()];
		int at = 0;
		for (int i = 0; i < indices.length; i++) {
			while (at < others.size() && others.get(at).compareTo(names.get(i)) < 0) {
				at++;
			}
			boolean there = at < others.size() && others.get(at).equals(names.get(i));
			indices[i] = there ? at : -1 - at;
		}
		return indices;
	}

	private void run() {
		int b = 0;
		int a = 0;
		while (b < before.size() || a < after.size()) {
			int order = b == before.size() ? 1 : a == after.size() ? -1 : before.id(b).compareTo(after.id(a));
			if (order < 0) {
				changes.add(new SampleChange(before.sample(b++), null));
			} else if (order > 0) {
				changes.add(new SampleChange(null, after.sample(a++)));
			} else {
				compare(b++, a++);
			}
		}
	}

	private void compare(int b, int a) {
		boolean same = before.floorLevel(b) == after.floorLevel(a) && before.xMetres(b) == after.xMetres(a)
				&& before.yMetres(b) == after.yMetres(a) && before.timeMillis(b) == after.timeMillis(a)
				&& Objects.equals(before.reason(b), after.reason(a));
		same &= sameReadings(b, a);
		if (!same) {
			changes.add(new SampleChange(before.sample(b), after.sample(a)));
		}
	}

	/** Counts what differs; readings ascend by access point in both. */
	private boolean sameReadings(int b, int a) {
		int i = 0;
		int k = 0;
		boolean same = true;
		while (i < before.heard(b) || k < after.heard(a)) {
			int order;
			if (i == before.heard(b)) {
				order = 1;
			} else if (k == after.heard(a)) {
				order = -1;
			} else {
				int index = toAfter[before.accessPoint(b, i)];
				// an access point that the other table does not know comes before the one at its place
				order = index >= 0 ? Integer.compare(index, after.accessPoint(a, k))
						: -1 - index <= after.accessPoint(a, k) ? -1 : 1;
			}
			if (order < 0) {
				removed++;
				i++;
			} else if (order > 0) {
				added++;
				k++;
			} else {
				boolean sameLevel = before.rssiDbm(b, i++) == after.rssiDbm(a, k++);
				changed += sameLevel ? 0 : 1;
				same &= sameLevel;
				continue;
			}
			same = false;
		}
		return same;
	}
}
