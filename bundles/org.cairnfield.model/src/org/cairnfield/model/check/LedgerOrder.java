package org.cairnfield.model.check;

import java.time.Instant;
import java.util.List;

import org.cairnfield.model.Ledger;
import org.cairnfield.model.Verdict;

/**
 * The order of a ledger is that of the times of its lines, each later than the one before. So lines of several people can be
 * brought together in one way only, whoever comes first.
 */
public final class LedgerOrder {

	private LedgerOrder() {
	}

	/** The time of a further line: as given, or just after the last line where a clock ran back or stood still. */
	public static Instant next(Ledger ledger, Instant time) {
		Instant last = last(ledger);
		return last == null || time.isAfter(last) ? time : last.plusNanos(1);
	}

	/** Whether a time is not before that of the last line. */
	public static boolean follows(Ledger ledger, Instant time) {
		Instant last = last(ledger);
		return last == null || time == null || !time.isBefore(last);
	}

	private static Instant last(Ledger ledger) {
		List<Verdict> lines = ledger.getVerdicts();
		return lines.isEmpty() ? null : lines.get(lines.size() - 1).getTime();
	}
}
