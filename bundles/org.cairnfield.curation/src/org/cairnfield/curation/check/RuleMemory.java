package org.cairnfield.curation.check;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.curation.internal.selftest.Expectation;
import org.cairnfield.curation.internal.selftest.SelfTests;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.RuleResult;
import org.cairnfield.curation.rules.RunResult;

/**
 * What rules said lately, and what they were worth, by the key of all that it depends on. So an archive that is opened again, a
 * change that is undone, and the gates after the findings cost no second look. Safe for several threads.
 */
final class RuleMemory {

	private record Kept(RuleResult result, Optional<Expectation> worth, boolean tried, int size) {
	}

	private final long most;
	private final Map<Long, Kept> byKey = new LinkedHashMap<>(); // what was used last is last
	private long size;

	/** @param most how many results, findings and subjects are kept; the last check is kept whatever its size */
	RuleMemory(long most) {
		this.most = most;
	}

	synchronized RunResult results() {
		return new RunResult(byKey.values().stream().map(Kept::result).toList());
	}

	synchronized SelfTests tests() {
		Map<Long, Optional<Expectation>> tests = new HashMap<>();
		byKey.forEach((key, kept) -> {
			if (kept.tried) {
				tests.put(key, kept.worth);
			}
		});
		return new SelfTests(tests);
	}

	/** Keeps the results of a check, and forgets those that were not used for the longest time. */
	synchronized void keep(RunResult check, SelfTests tests) {
		int own = 0;
		for (RuleResult result : check.results()) {
			if (!(result.outcome() instanceof RuleOutcome.Failed)) {
				boolean tried = tests.byKey().containsKey(result.key());
				forget(byKey.remove(result.key()));
				Kept kept = new Kept(result, tests.of(result), tried, sizeOf(result));
				byKey.put(result.key(), kept);
				size += kept.size;
				own++;
			}
		}
		for (Iterator<Kept> eldest = byKey.values().iterator(); size > most && byKey.size() > own;) {
			forget(eldest.next());
			eldest.remove();
		}
	}

	private void forget(Kept kept) {
		size -= kept == null ? 0 : kept.size;
	}

	private static int sizeOf(RuleResult result) {
		return 1 + result.outcome().findings().stream()
				.mapToInt(finding -> 1 + finding.subjects().size() + finding.related().size()).sum();
	}
}
