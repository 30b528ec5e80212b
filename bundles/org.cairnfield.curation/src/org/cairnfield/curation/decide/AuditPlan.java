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
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Decision;
import org.cairnfield.model.values.SampleKey;

/**
 * The audit of a band before the rest of it is approved unseen: a drawn part is looked at, by a plan of limiting
 * quality. It follows from the ledger, so it survives a restart: its lot is what is undecided in the band and what was
 * decided under its name; which are drawn follows from the names of audit and samples. A verdict that was taken back or
 * superseded since still counts against it: an audit that has failed stays failed, and another lot is drawn. From its
 * first verdict on the lot is fixed: whatever is decided about a drawn sample counts, in the audit or beside it. Proposals
 * that carry a mark are in no lot; they are looked at one by one.
 *
 * @param id          name of the audit in the ledger
 * @param marked      proposals of the band that are still to be decided and carry a mark
 * @param lot         the other proposals of the band, drawn and not
 * @param drawn       those to be looked at
 * @param plan        how many, and how many of them may be not approved
 * @param examined    how many of them were decided; one that was deferred is not
 * @param notApproved how many samples were not approved under its name, whatever became of that
 * @param wilson      interval of the share that is not approved, from those examined
 * @param people      who looked at them
 * @param failed      names of the audits of the band that failed before
 */
public record AuditPlan(String id, Band band, int marked, List<SampleKey> lot, List<SampleKey> drawn, SamplingPlan plan,
		int examined,
		int notApproved, Interval wilson, double limitShare, List<String> people, List<String> failed) {

	/** None is allowed to be wrong; the smallest sample for the limit. */
	private static final int ACCEPTANCE = 0;

	/** The one under way, failed or not, or the first or next one. @throws ReviewRefused where there is no such band */
	static AuditPlan of(Standings standings, String bandName, Set<SampleKey> marks) {
		Band band = band(standings, bandName);
		return of(standings, band, marks, AuditRecord.of(standings, band).current());
	}

	/** The same, but another one where that has failed. @throws ReviewRefused where there is no such band */
	static AuditPlan anew(Standings standings, String bandName, Set<SampleKey> marks) {
		Band band = band(standings, bandName);
		AuditRecord record = AuditRecord.of(standings, band);
		AuditPlan current = of(standings, band, marks, record.current());
		return current.isFailed() ? of(standings, band, marks, record.current() + 1) : current;
	}

	private static Band band(Standings standings, String name) {
		ReviewPolicy policy = standings.policy();
		return policy.bands().named(name)
				.orElseThrow(
						() -> new ReviewRefused(
								Words.bind(Messages.AuditPlan_thereIsNoBandThe, name, policy.bands())));
	}

	private static AuditPlan of(Standings standings, Band band, Set<SampleKey> marks, int number) {
		ReviewPolicy policy = standings.policy();
		AuditRecord record = AuditRecord.of(standings, band);
		String id = record.id(number);
		List<LedgerEntry> since = record.since(number);
		Set<SampleKey> decidedSince = since.stream().map(LedgerEntry::sample).collect(Collectors.toSet());
		List<SampleKey> lot = new ArrayList<>();
		int marked = 0;
		for (Standing s : standings.all()) {
			boolean inBand = s.made() && band.has(s.proposal().get().strengthR());
			boolean undecided = s.state() == ReviewState.UNDECIDED || s.state() == ReviewState.STALE;
			if (inBand && marks.contains(s.sample()) && undecided) {
				marked++;
			} else if (!s.stale() && s.first().filter(e -> id.equals(e.batch())).isPresent()
					|| inBand && !marks.contains(s.sample()) && (undecided || decidedSince.contains(s.sample()))) {
				lot.add(s.sample());
			}
		}
		SamplingPlan plan = SamplingPlan.limitingQuality(lot.size(), policy.limitShare(), policy.confidence(),
				ACCEPTANCE);
		List<SampleKey> drawn = draw(standings.split() + '/' + id, lot, plan.size());
		Set<SampleKey> not = new HashSet<>(record.notApproved(number));
		since.stream().filter(e -> AuditRecord.isAgainst(e) && drawn.contains(e.sample()))
				.forEach(e -> not.add(e.sample()));
		Set<SampleKey> examined = new HashSet<>(not);
		Set<String> people = new TreeSet<>();
		for (SampleKey key : drawn) {
			standings.of(key).filter(s -> !s.stale()).flatMap(Standing::first)
					.filter(e -> since.contains(e) && e.decision() != Decision.DEFER).ifPresent(e -> {
						examined.add(key);
						people.add(e.person());
					});
		}
		return new AuditPlan(id, band, marked, List.copyOf(lot), drawn, plan, examined.size(), not.size(),
				Wilson.interval(not.size(), examined.size(), policy.confidence()), policy.limitShare(),
				List.copyOf(people),
				record.failedBefore(number, ACCEPTANCE));
	}

	/** The first by a shuffled order that follows from the names alone, so that one sample more or less changes little. */
	private static List<SampleKey> draw(String name, List<SampleKey> lot, int size) {
		long seed = ContentKeys.of(name);
		return lot.stream()
				.sorted(Comparator
						.comparingLong((SampleKey key) -> ContentKeys.join(seed, ContentKeys.of(key.toString())))
						.thenComparing(Comparator.naturalOrder()))
				.limit(size).collect(Collectors.toUnmodifiableList());
	}

	/** Whether something was decided under its name. */
	public boolean isBegun() {
		return examined > 0;
	}

	/** Whether all that were drawn were looked at. */
	public boolean isComplete() {
		return examined >= plan.size();
	}

	/** Whether the rest may be approved. */
	public boolean isPassed() {
		return isComplete() && !isFailed();
	}

	/** Whether more were not approved than the plan allows; nothing mends that. */
	public boolean isFailed() {
		return !plan.accepts(notApproved);
	}

	/** What would be approved unseen. */
	public List<SampleKey> rest() {
		Set<SampleKey> seen = new HashSet<>(drawn);
		return lot.stream().filter(key -> !seen.contains(key)).toList();
	}

	/** What was done, with its numbers, for the ledger. */
	public String statement() {
		return String.format(Locale.ROOT,
				Messages.AuditPlan_ofProposalsInBandLooked,
				id, failed.isEmpty() ? "" : Words.bind(Messages.AuditPlan_failed, String.join(", ", failed)),
				examined, lot.size(),
				band.title(), people.isEmpty() ? "nobody" : String.join(", ", people), notApproved,
				100 * wilson.low(), 100 * wilson.high(), 100 * wilson.confidence(), 100 * limitShare,
				100 * (1 - wilson.confidence()));
	}
}
