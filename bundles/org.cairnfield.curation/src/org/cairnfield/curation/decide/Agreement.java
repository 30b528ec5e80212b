package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.stats.Kappa;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.values.SampleKey;

/**
 * How far two reviewers agreed when the second had not seen what the first decided: of each sample its first second
 * verdict counts, against the first verdict that stood then. What either decided later plays no part, nor do proposals that
 * were approved with their band, which nobody looked at.
 *
 * @param decisions rows and columns of the table, such as "approve" or "move 7", in the order in which they were given
 * @param table     [first reviewer's decision][second reviewer's], counts
 * @param kappa     Cohen's κ of the table
 * @param differing samples on which they differed then, by sample
 */
public record Agreement(List<String> decisions, long[][] table, Kappa kappa, List<SampleKey> differing) {

	private static final double CONFIDENCE = 0.95;

	static Agreement of(Standings standings) {
		return of(pairs(standings));
	}

	/** Of a person with all others; rows are that person's decisions. */
	static Agreement of(Standings standings, String person) {
		List<LedgerEntry[]> own = new ArrayList<>();
		for (LedgerEntry[] pair : pairs(standings)) {
			if (pair[0].isBy(person)) {
				own.add(pair);
			} else if (pair[1].isBy(person)) {
				own.add(new LedgerEntry[] { pair[1], pair[0] });
			}
		}
		return of(own);
	}

	/** The first verdict and the second one of each sample that two have judged. */
	private static List<LedgerEntry[]> pairs(Standings standings) {
		Set<String> takenBack = Standings.takenBack(standings.entries());
		Map<SampleKey, LedgerEntry> first = new HashMap<>();
		Map<SampleKey, LedgerEntry> second = new HashMap<>();
		List<LedgerEntry[]> pairs = new ArrayList<>();
		for (LedgerEntry entry : standings.entries()) {
			if (entry.takesBack() || takenBack.contains(entry.id())) {
				continue;
			}
			if (entry.round() == Round.FIRST) {
				if (ReasonCode.BAND_AUDITED.code().equals(entry.reasonCode())) {
					first.remove(entry.sample());
				} else {
					first.put(entry.sample(), entry);
				}
			} else if (entry.round() == Round.SECOND && first.containsKey(entry.sample())
					&& second.putIfAbsent(entry.sample(), entry) == null) {
				pairs.add(new LedgerEntry[] { first.get(entry.sample()), entry });
			}
		}
		return pairs;
	}

	private static Agreement of(List<LedgerEntry[]> pairs) {
		List<SampleKey> differing = pairs.stream().filter(pair -> !pair[0].agreesWith(pair[1]))
				.map(pair -> pair[0].sample()).sorted().toList();
		Map<String, Integer> decisions = new LinkedHashMap<>();
		pairs.forEach(pair -> {
			decisions.putIfAbsent(word(pair[0]), decisions.size());
			decisions.putIfAbsent(word(pair[1]), decisions.size());
		});
		long[][] table = new long[decisions.size()][decisions.size()];
		pairs.forEach(pair -> table[decisions.get(word(pair[0]))][decisions.get(word(pair[1]))]++);
		return new Agreement(List.copyOf(decisions.keySet()), table, Kappa.of(table), differing);
	}

	/** Moves to different clusters are different decisions. */
	private static String word(LedgerEntry entry) {
		return entry.decision().getLiteral() + (entry.decision() == Decision.MOVE ? " " + entry.cluster() : "");
	}

	/** Such as "Cohen's κ 0.40 (95 % interval 0.15 to 0.65)", or why there is none worth giving. */
	public String kappaText() {
		if (isDegenerate()) {
			return Messages.Agreement_saysNothingAsOneOf;
		}
		Interval interval = kappa.interval(CONFIDENCE);
		return String
				.format(Locale.ROOT, "Cohen's κ %.2f (95 %% interval %.2f to %.2f)", kappa.value(), interval.low(),
						interval.high())
				.replace("-", "−");
	}

	/**
	 * Whether κ says nothing, as one of the two gave every sample the same answer: it is 0 then, or undefined, however often
	 * they agreed.
	 */
	public boolean isDegenerate() {
		int n = table.length;
		return kappa.items() > 0 && (IntStream.range(0, n).filter(i -> LongStream.of(table[i]).sum() > 0).count() == 1
				|| IntStream.range(0, n).filter(j -> IntStream.range(0, n).mapToLong(i -> table[i][j]).sum() > 0)
						.count() == 1);
	}
}
