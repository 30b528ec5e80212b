package org.cairnfield.curation.rules;

import java.time.Instant;
import java.util.Arrays;
import java.util.Objects;

/**
 * Somebody's word that what a rule reported may stay as it is. It holds as long as a finding is about nothing but
 * what it was about then; the same content under another id or in another row is the same. Anything more shows
 * again.
 *
 * @param rule        id
 * @param subjectKeys keys of what the finding was about, ascending; see {@link Finding#subjectKeys}
 */
public record Waiver(String rule, long[] subjectKeys, String reason, String person, Instant when) {

	public Waiver {
		Objects.requireNonNull(rule);
		Objects.requireNonNull(person);
		Objects.requireNonNull(when);
		if (reason.isBlank()) {
			throw new IllegalArgumentException("a waiver needs a reason");
		}
		subjectKeys = subjectKeys.clone();
		Arrays.sort(subjectKeys);
	}

	/** For a finding. */
	public static Waiver of(Finding finding, String reason, String person, Instant when) {
		return new Waiver(finding.rule(), finding.subjectKeys(), reason, person, when);
	}

	@Override
	public long[] subjectKeys() {
		return subjectKeys.clone();
	}

	/** Whether the finding is about nothing that this does not cover. */
	public boolean covers(Finding finding) {
		if (!finding.rule().equals(rule)) {
			return false;
		}
		for (Subject subject : finding.subjects()) {
			if (!has(subject.key()) && !has(subject.keyByName())) {
				return false;
			}
		}
		return true;
	}

	private boolean has(long key) {
		return Arrays.binarySearch(subjectKeys, key) >= 0;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Waiver w && w.rule.equals(rule) && Arrays.equals(w.subjectKeys, subjectKeys)
				&& w.reason.equals(reason) && w.person.equals(person) && w.when.equals(when);
	}

	@Override
	public int hashCode() {
		return Objects.hash(rule, Arrays.hashCode(subjectKeys), reason, person, when);
	}
}
