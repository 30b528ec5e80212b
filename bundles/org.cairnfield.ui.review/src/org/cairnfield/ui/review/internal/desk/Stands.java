package org.cairnfield.ui.review.internal.desk;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;

/** How the samples of a split stand, for all and as far as one person may know. After a verdict only what it touches is computed anew. */
final class Stands {

	/** What standings are made from; two that are equal make the same. */
	record Basis(MapState map, double threshold, ReviewPolicy policy, String person, List<Verdict> ledger) {

		static Basis of(Archive archive, Split split, ReviewPolicy policy, String person) {
			List<Verdict> ledger = archive.getLedgers().stream().filter(each -> split.getId().equals(each.getId())).findFirst()
					.map(Ledger::getVerdicts).map(List::copyOf).orElse(List.of());
			return new Basis(MapState.of(archive, split), split.getThreshold(), policy, person, ledger);
		}

		boolean differsInVerdictsOnly(Basis other) {
			return new Basis(map, threshold, policy, person, other.ledger).equals(other);
		}

		/** Samples of the lines that only one of them has; ledgers differ at their ends. */
		Set<SampleKey> touched(Basis other) {
			int same = 0;
			while (same < Math.min(ledger.size(), other.ledger.size()) && ledger.get(same) == other.ledger.get(same)) {
				same++;
			}
			Set<SampleKey> touched = new HashSet<>();
			ledger.subList(same, ledger.size()).forEach(verdict -> touched.add(verdict.getSample()));
			other.ledger.subList(same, other.ledger.size()).forEach(verdict -> touched.add(verdict.getSample()));
			return touched;
		}
	}

	private final Basis basis;
	private final Standings standings;
	private final Map<SampleKey, Standing> seen;

	private Stands(Basis basis, Standings standings, Map<SampleKey, Standing> seen) {
		this.basis = basis;
		this.standings = standings;
		this.seen = seen;
	}

	/** @param before how they stood, null for not known */
	static Stands of(Archive archive, Split split, Basis now, Stands before) {
		boolean little = before != null && before.basis.differsInVerdictsOnly(now);
		Set<SampleKey> touched = little ? before.basis.touched(now) : Set.of();
		Standings standings = little ? before.standings.renewed(archive, split, touched) : Standings.of(archive, split, now.policy);
		Map<SampleKey, Standing> seen = new HashMap<>();
		if (little) {
			seen.putAll(before.seen);
			touched.forEach(sample -> standings.of(sample).ifPresent(standing -> seen.put(sample, standing.seenBy(now.person))));
		} else {
			standings.all().forEach(standing -> seen.put(standing.sample(), standing.seenBy(now.person)));
		}
		return new Stands(now, standings, seen);
	}

	Basis basis() {
		return basis;
	}

	/** As the ledger says; what this holds may have to be hidden from the person. */
	Standings all() {
		return standings;
	}

	/** By sample, as far as the person may know. */
	Map<SampleKey, Standing> seen() {
		return seen;
	}
}
