package org.cairnfield.curation.decide;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.curation.propose.Band;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.values.SampleKey;

/** What a ledger tells of the audits of a band, which are numbered from 1; lines that were taken back included. */
final class AuditRecord {

	private final String prefix;
	private final Map<Integer, Set<SampleKey>> notApproved = new HashMap<>();
	private final Set<Integer> passed = new HashSet<>();
	private final List<LedgerEntry> entries;
	private int latest;

	private AuditRecord(String prefix, List<LedgerEntry> entries) {
		this.prefix = prefix;
		this.entries = entries;
		entries.forEach(this::add);
	}

	static AuditRecord of(Standings standings, Band band) {
		return new AuditRecord("audit-" + band.name().strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-") + '-',
				standings.entries().stream().filter(entry -> entry.round() == Round.FIRST).toList());
	}

	private void add(LedgerEntry entry) {
		int number = number(entry.batch());
		if (number == 0) {
			return;
		}
		latest = Math.max(latest, number);
		if (ReasonCode.BAND_AUDITED.code().equals(entry.reasonCode())) {
			passed.add(number);
		} else if (failsAudit(entry)) {
			notApproved.computeIfAbsent(number, n -> new HashSet<>()).add(entry.sample());
		}
	}

	/** 0 for no audit of the band. */
	private int number(String batch) {
		if (batch == null || !batch.startsWith(prefix)) {
			return 0;
		}
		String number = batch.substring(prefix.length());
		return number.matches("[1-9]\\d{0,8}") ? Integer.parseInt(number) : 0;
	}

	/** Whether a verdict was given in an audit and counts against it. */
	static boolean failsAudit(LedgerEntry entry) {
		return entry.batch() != null && isAgainst(entry);
	}

	/** Whether a verdict on a drawn sample counts against an audit. */
	static boolean isAgainst(LedgerEntry entry) {
		return !entry.takesBack() && entry.decision() != Decision.APPROVE && entry.decision() != Decision.DEFER;
	}

	/** First verdicts from the first one in an audit on, in it or beside it; none before it has begun. */
	List<LedgerEntry> since(int number) {
		String id = id(number);
		return entries.stream().dropWhile(entry -> !id.equals(entry.batch())).toList();
	}

	/** The audit under way; the next one where the latest has led to an approval of the band. */
	int current() {
		return passed.contains(latest) ? latest + 1 : Math.max(1, latest);
	}

	String id(int number) {
		return prefix + number;
	}

	/** Samples that were not approved in an audit, whatever became of that. */
	Set<SampleKey> notApproved(int number) {
		return notApproved.getOrDefault(number, Set.of());
	}

	/** Names of earlier audits with more than so many samples not approved. */
	List<String> failedBefore(int number, int allowed) {
		return IntStream.range(1, number).filter(n -> notApproved(n).size() > allowed).mapToObj(this::id).toList();
	}
}
