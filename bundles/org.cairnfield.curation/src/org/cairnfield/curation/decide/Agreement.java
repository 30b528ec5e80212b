package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cairnfield.core.stats.Kappa;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.values.SampleKey;

/**
 * How far two reviewers agreed when the second had not seen what the first decided: of each sample its first second
 * verdict counts, against the first verdict that stood then. What either decided later plays no part.
 *
 * @param decisions rows and columns of the table, such as "approve" or "move 7", in the order in which they were given
 * @param table     [first reviewer's decision][second reviewer's], counts
 * @param kappa     Cohen's κ of the table
 * @param differing samples on which they differed then, by sample
 */
public record Agreement(List<String> decisions, long[][] table, Kappa kappa, List<SampleKey> differing) {

	static Agreement of(Standings standings) {
		Set<String> takenBack = Standings.takenBack(standings.entries());
		Map<SampleKey, LedgerEntry> first = new HashMap<>();
		Map<SampleKey, LedgerEntry> second = new HashMap<>();
		List<LedgerEntry[]> pairs = new ArrayList<>();
		List<SampleKey> differing = new ArrayList<>();
		for (LedgerEntry entry : standings.entries()) {
			if (entry.takesBack() || takenBack.contains(entry.id())) {
				continue;
			}
			if (entry.round() == Round.FIRST) {
				first.put(entry.sample(), entry);
			} else if (entry.round() == Round.SECOND && first.containsKey(entry.sample())
					&& second.putIfAbsent(entry.sample(), entry) == null) {
				LedgerEntry one = first.get(entry.sample());
				pairs.add(new LedgerEntry[] { one, entry });
				if (!one.agreesWith(entry)) {
					differing.add(entry.sample());
				}
			}
		}
		differing.sort(null);
		Map<String, Integer> decisions = new LinkedHashMap<>();
		pairs.forEach(pair -> {
			decisions.putIfAbsent(word(pair[0]), decisions.size());
			decisions.putIfAbsent(word(pair[1]), decisions.size());
		});
		long[][] table = new long[decisions.size()][decisions.size()];
		pairs.forEach(pair -> table[decisions.get(word(pair[0]))][decisions.get(word(pair[1]))]++);
		return new Agreement(List.copyOf(decisions.keySet()), table, Kappa.of(table), List.copyOf(differing));
	}

	/** Moves to different clusters are different decisions. */
	private static String word(LedgerEntry entry) {
		return entry.decision().getLiteral() + (entry.decision() == Decision.MOVE ? " " + entry.cluster() : "");
	}
}
