package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.stats.SamplingPlan;
import org.cairnfield.core.stats.Wilson;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.values.SampleKey;

/**
 * The audit of a band before the rest of it is approved unseen: a drawn part is looked at, by a plan of limiting
 * quality. It follows from the ledger, so it survives a restart: its lot is what is undecided in the band and what was
 * decided under its name; which are drawn follows from the names of audit and samples.
 *
 * @param id       name of the audit in the ledger
 * @param lot      proposals of the band, drawn and not
 * @param drawn    those to be looked at
 * @param plan     how many, and how many of them may be not approved
 * @param examined how many of them were decided
 * @param wilson   interval of the share that is not approved, from those examined
 * @param people   who looked at them
 */
public record AuditPlan(String id, Band band, List<SampleKey> lot, List<SampleKey> drawn, SamplingPlan plan, int examined,
		int notApproved, Interval wilson, double limitShare, List<String> people) {

	/** None is allowed to be wrong; the smallest sample for the limit. */
	private static final int ACCEPTANCE = 0;

	/** @throws ReviewRefused where there is no such band */
	static AuditPlan of(Standings standings, String bandName) {
		ReviewPolicy policy = standings.policy();
		Band band = policy.bands().named(bandName)
				.orElseThrow(() -> new ReviewRefused("there is no band '" + bandName + "'; the bands are " + policy.bands()));
		String id = id(standings, band);
		List<SampleKey> lot = new ArrayList<>();
		for (Standing s : standings.all()) {
			boolean undecided = s.state() == ReviewState.UNDECIDED || s.state() == ReviewState.STALE;
			boolean audited = !s.stale() && s.first().filter(e -> id.equals(e.batch())).isPresent();
			if (s.made() && band.has(s.proposal().get().strengthR()) && (undecided || audited)
					&& s.state() != ReviewState.SET_ASIDE || audited) {
				lot.add(s.sample());
			}
		}
		SamplingPlan plan = SamplingPlan.limitingQuality(lot.size(), policy.limitShare(), policy.confidence(), ACCEPTANCE);
		List<SampleKey> drawn = draw(standings.split() + '/' + id, lot, plan.size());
		int examined = 0;
		int not = 0;
		Set<String> people = new TreeSet<>();
		for (SampleKey key : drawn) {
			Standing s = standings.of(key).orElseThrow();
			if (!s.stale() && s.first().filter(e -> id.equals(e.batch())).isPresent()) {
				examined++;
				not += s.first().get().decision() == Decision.APPROVE ? 0 : 1;
				people.add(s.first().get().person());
			}
		}
		return new AuditPlan(id, band, List.copyOf(lot), drawn, plan, examined, not,
				Wilson.interval(not, examined, policy.confidence()), policy.limitShare(), List.copyOf(people));
	}

	/** Audits that have led to an approval of the band are over. */
	private static String id(Standings standings, Band band) {
		Set<String> over = new HashSet<>();
		for (LedgerEntry entry : standings.entries()) {
			if (entry.round() == Round.FIRST && ReasonCode.BAND_AUDITED.code().equals(entry.reasonCode())) {
				over.add(entry.batch());
			}
		}
		String name = "audit-" + band.name().strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-") + '-';
		int n = 1;
		while (over.contains(name + n)) {
			n++;
		}
		return name + n;
	}

	/** The first by a shuffled order that follows from the names alone, so that one sample more or less changes little. */
	private static List<SampleKey> draw(String name, List<SampleKey> lot, int size) {
		long seed = ContentKeys.of(name);
		return lot.stream()
				.sorted(Comparator.comparingLong((SampleKey key) -> ContentKeys.join(seed, ContentKeys.of(key.toString())))
						.thenComparing(Comparator.naturalOrder()))
				.limit(size).collect(Collectors.toUnmodifiableList());
	}

	/** Whether all that were drawn were looked at. */
	public boolean isComplete() {
		return examined == plan.size();
	}

	/** Whether the rest may be approved. */
	public boolean isPassed() {
		return isComplete() && plan.accepts(notApproved);
	}

	/** What would be approved unseen. */
	public List<SampleKey> rest() {
		Set<SampleKey> seen = new HashSet<>(drawn);
		return lot.stream().filter(key -> !seen.contains(key)).toList();
	}

	/** What was done, with its numbers, for the ledger. */
	public String statement() {
		return String.format(Locale.ROOT,
				"%s: %d of %d proposals in band %s looked at by %s, %d not approved (%.1f to %.1f %% by Wilson, %.0f %%); a band with more than %.3g %% wrong passes this plan with a probability of %.0f %% at most",
				id, examined, lot.size(), band.title(), people.isEmpty() ? "nobody" : String.join(", ", people), notApproved,
				100 * wilson.low(), 100 * wilson.high(), 100 * wilson.confidence(), 100 * limitShare,
				100 * (1 - wilson.confidence()));
	}
}
