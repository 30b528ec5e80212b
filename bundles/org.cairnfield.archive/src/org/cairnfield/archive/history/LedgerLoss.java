package org.cairnfield.archive.history;

import org.cairnfield.model.values.Count;

/**
 * Verdicts of a ledger that were there at one time, and later are gone or other than they were.
 *
 * @param where   digits of the id of the save point after which they are, or "the folder" where no save point has it yet
 * @param file    path of the ledger
 * @param what    gone, changed or moved
 * @param lines   how many
 * @param example the first line, as it was
 * @param putBack whether the present state and all releases since have the lines again
 */
public record LedgerLoss(String where, String file, String what, int lines, String example, boolean putBack) {

	private static final int SHOWN = 100;

	/** In one line. */
	@Override
	public String toString() {
		String shown = example.replace('\t', ' ');
		return file + ", " + where + ": " + Count.of(lines, "verdict") + ' ' + what + ", "
				+ (lines == 1 ? "" : Messages.LedgerLoss_theFirst) + '\''
				+ (shown.length() > SHOWN ? shown.substring(0, SHOWN) + "…" : shown) + '\''
				+ (putBack ? Messages.LedgerLoss_putBackSince : "");
	}
}
