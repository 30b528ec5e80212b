package org.cairnfield.model.check;

import org.cairnfield.model.Verdict;

/**
 * What a line of a ledger says that takes an earlier one back: a ledger only grows, so a verdict is not taken out but
 * followed by a line that makes as if it had not been given.
 */
public final class TakeBack {

	/** The reason code of such a line; what it supersedes is what it takes back. */
	public static final String REASON = "taken-back";

	private TakeBack() {
	}

	/** Whether a verdict does nothing but take an earlier one back. */
	public static boolean isOne(Verdict verdict) {
		return REASON.equals(verdict.getReasonCode()) && verdict.getSupersedes() != null;
	}
}
