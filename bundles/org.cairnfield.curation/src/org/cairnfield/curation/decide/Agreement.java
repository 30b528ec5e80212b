package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.HashMap;
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
 * @param decisions rows and columns of the table
 * @param table     [first reviewer's decision][second reviewer's], counts
 * @param kappa     Cohen's κ of the table
 * @param differing samples on which they differed then, by sample
 */
public record Agreement(List<Decision> decisions, long[][] table, Kappa kappa, List<SampleKey> differing) {

	private static final List<Decision> DECISIONS = List.of(Decision.APPROVE, Decision.REJECT, Decision.DEFER);

	static Agreement of(Standings standings) {
		Set<String> takenBack = Standings.takenBack(standings.entries());
		Map<SampleKey, LedgerEntry> first = new HashMap<>();
		Map<SampleKey, LedgerEntry> second = new HashMap<>();
		long[][] table = new long[DECISIONS.size()][DECISIONS.size()];
		List<SampleKey> differing = new ArrayList<>();
		for (LedgerEntry entry : standings.entries()) {
			if (entry.takesBack() || takenBack.contains(entry.id())) {
				continue;
			}
			if (entry.round() == Round.FIRST) {
				first.put(entry.sample(), entry);
			} else if (entry.round() == Round.SECOND && first.containsKey(entry.sample())
					&& second.putIfAbsent(entry.sample(), entry) == null) {
				Decision one = first.get(entry.sample()).decision();
				table[DECISIONS.indexOf(one)][DECISIONS.indexOf(entry.decision())]++;
				if (one != entry.decision()) {
					differing.add(entry.sample());
				}
			}
		}
		differing.sort(null);
		return new Agreement(DECISIONS, table, Kappa.of(table), List.copyOf(differing));
	}
}
