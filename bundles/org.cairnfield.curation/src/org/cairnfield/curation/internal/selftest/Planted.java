package org.cairnfield.curation.internal.selftest;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.cairnfield.curation.rules.SurveyedMap;

/**
 * A copy of a map with faults.
 *
 * @param map   the copy
 * @param truth ids of samples, or addresses, by the fault planted in them
 */
record Planted(SurveyedMap map, Map<TrialFault, Set<String>> truth) {

	/** Faults noted while they are planted. */
	static final class Truth {
		private final Map<TrialFault, Set<String>> planted = new EnumMap<>(TrialFault.class);

		void add(TrialFault fault, String label) {
			planted.computeIfAbsent(fault, f -> new HashSet<>()).add(label);
		}

		Planted in(SurveyedMap map) {
			return new Planted(map, planted);
		}
	}

	Set<String> of(TrialFault fault) {
		return truth.getOrDefault(fault, Set.of());
	}

	/** Whatever the fault. */
	Set<String> any() {
		Set<String> all = new HashSet<>();
		truth.values().forEach(all::addAll);
		return all;
	}
}
