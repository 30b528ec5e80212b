package org.cairnfield.archive.internal.merge;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The verdicts of two sides, all of them. A side that has nothing new leaves the other as it is; otherwise lines stand in
 * the order of their times, those of one moment in the order of their ids. A line that is earlier than the one before it on
 * its own side comes after that one.
 */
final class LedgerMerge {

	private final List<String> changed;
	private final Map<String, Instant> times = new HashMap<>();
	private final Map<String, Verdict> lines = new TreeMap<>();

	private LedgerMerge(List<String> changed) {
		this.changed = changed;
	}

	/**
	 * @param base    lines that both began with; they may be missing in neither side, but are kept if they are
	 * @param changed takes the ids of which there are two lines that say something different: one was tampered with
	 * @return copies
	 */
	static List<Verdict> of(List<Verdict> base, List<Verdict> mine, List<Verdict> theirs, List<String> changed) {
		if (hasAll(mine, theirs) && hasAll(mine, base)) {
			return copies(mine);
		}
		if (hasAll(theirs, mine) && hasAll(theirs, base)) {
			return copies(theirs);
		}
		LedgerMerge merge = new LedgerMerge(changed);
		merge.add(base);
		merge.add(mine);
		merge.add(theirs);
		return merge.ordered();
	}

	/** Whether a side has all lines of another, as they are. */
	private static boolean hasAll(List<Verdict> side, List<Verdict> other) {
		Set<List<Object>> lines = new HashSet<>();
		side.forEach(verdict -> lines.add(says(verdict)));
		return other.stream().allMatch(verdict -> lines.contains(says(verdict)));
	}

	private static List<Object> says(Verdict verdict) {
		List<Object> all = new ArrayList<>();
		verdict.eClass().getEAllAttributes().forEach(attribute -> all.add(verdict.eGet(attribute)));
		return all;
	}

	private static List<Verdict> copies(List<Verdict> side) {
		return side.stream().map(EcoreUtil::copy).toList();
	}

	private void add(List<Verdict> side) {
		Instant last = Instant.MIN;
		for (Verdict verdict : side) {
			Instant time = verdict.getTime() == null ? Instant.EPOCH : verdict.getTime();
			last = time.isBefore(last) ? last.plusNanos(1) : time;
			times.merge(verdict.getId(), last, (one, other) -> one.isAfter(other) ? one : other);
			Verdict known = lines.putIfAbsent(verdict.getId(), verdict);
			if (known != null && !says(known).equals(says(verdict))) {
				changed.add(verdict.getId());
			}
		}
	}

	private List<Verdict> ordered() {
		return lines.values().stream()
				.sorted(Comparator.comparing((Verdict verdict) -> times.get(verdict.getId()))
						.thenComparing(Verdict::getId))
				.map(EcoreUtil::copy).toList();
	}
}
