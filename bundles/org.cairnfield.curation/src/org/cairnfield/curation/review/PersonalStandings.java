package org.cairnfield.curation.review;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.decide.Ruling;
import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;

/**
 * How the samples of a split stand, for all and as far as one person may know. After a verdict only what it touches is
 * computed again. Immutable.
 */
final class PersonalStandings {

	/** What standings are made from; two that are equal make the same. */
	record Basis(MapState map, double threshold, Reviewer reviewer, List<Verdict> ledger) {

		static Basis of(Archive archive, Split split, Reviewer reviewer) {
			List<Verdict> ledger = archive.getLedgers().stream().filter(each -> split.getId().equals(each.getId()))
					.findFirst()
					.map(Ledger::getVerdicts).map(List::copyOf).orElse(List.of());
			return new Basis(MapState.of(archive, split), split.getThreshold(), reviewer, ledger);
		}

		private boolean differsInVerdictsOnly(Basis other) {
			return new Basis(map, threshold, reviewer, other.ledger).equals(other);
		}

		/** Samples of the lines that only one of them has; ledgers differ at their ends. */
		private Set<SampleKey> touched(Basis other) {
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
	private final SampleKey predicted;

	private PersonalStandings(Basis basis, Standings standings, Map<SampleKey, Standing> seen, SampleKey predicted) {
		this.basis = basis;
		this.standings = standings;
		this.seen = seen;
		this.predicted = predicted;
	}

	/** @param before how they stood, null for not known */
	static PersonalStandings of(Archive archive, Split split, Basis now, PersonalStandings before) {
		boolean little = before != null && before.basis.differsInVerdictsOnly(now);
		String person = now.reviewer.person();
		Set<SampleKey> touched = little ? before.basis.touched(now) : Set.of();
		if (little && before.predicted != null) {
			touched.add(before.predicted);
		}
		Standings standings = little ? before.standings.renewed(archive, split, touched)
				: Standings.of(archive, split, now.reviewer.policy());
		Map<SampleKey, Standing> seen = new HashMap<>();
		if (little) {
			seen.putAll(before.seen);
			touched.forEach(
					sample -> standings.of(sample).ifPresent(standing -> seen.put(sample, standing.seenBy(person))));
		} else {
			standings.all().forEach(standing -> seen.put(standing.sample(), standing.seenBy(person)));
		}
		return new PersonalStandings(now, standings, seen, null);
	}

	/** The same with one sample as a verdict will leave it, so that the next one need not wait for the ledger to be read. */
	PersonalStandings expecting(SampleKey sample, ReviewState state, Ruling ruling) {
		LedgerEntry given = new LedgerEntry(null, standings.split(), sample, ruling.cluster(), ruling.decision(),
				ruling.reasonCode(),
				ruling.text(), basis.reviewer.person(), Instant.EPOCH, null, Round.FIRST, null, null, null, null);
		Map<SampleKey, Standing> now = new HashMap<>(seen);
		now.computeIfPresent(sample,
				(key, was) -> new Standing(key, was.proposal(), was.made(), state, was.entries(), Optional.of(given),
						Optional.empty(), Optional.empty(), false, false, false));
		return new PersonalStandings(basis, standings, now, sample);
	}

	/** Whether they follow from this, and nothing in them is expected only. */
	boolean isOf(Basis now) {
		return predicted == null && now.equals(basis);
	}

	/** The sample whose standing is only expected; null for none. */
	SampleKey predicted() {
		return predicted;
	}

	/** As the ledger has it; what this holds may have to be hidden from the person. */
	Standings all() {
		return standings;
	}

	/** How a sample stands, as far as the person may know; null for one that is not noise. */
	Standing seen(SampleKey sample) {
		return seen.get(sample);
	}

	boolean showsTheSameAs(PersonalStandings other) {
		return seen.equals(other.seen);
	}

	/** Samples that are to be decided now and were not before. */
	List<SampleKey> reopenedSince(PersonalStandings before) {
		return seen.values().stream().filter(PersonalStandings::isLeft).map(Standing::sample)
				.filter(sample -> before.seen.containsKey(sample) && !isLeft(before.seen.get(sample))).toList();
	}

	/** Whether the person still has something to decide. */
	static boolean isLeft(Standing standing) {
		ReviewState state = standing.state();
		return standing.made()
				&& (state == ReviewState.UNDECIDED || state == ReviewState.STALE || state == ReviewState.DISPUTED);
	}
}
