package org.cairnfield.archive.history;

import java.util.List;

import org.cairnfield.archive.signature.SignerList;

/**
 * What signatures say of who did what.
 *
 * @param signers  whose key is whose now, as far as leads have signed it
 * @param changes  of that list, in words, the oldest first
 * @param problems with that list, in words: changes that do not count
 * @param verdicts every line of the ledgers of the last save point
 */
public record PeopleReport(SignerList signers, List<String> changes, List<String> problems,
		List<VerdictProof> verdicts) {

	public PeopleReport {
		changes = List.copyOf(changes);
		problems = List.copyOf(problems);
		verdicts = List.copyOf(verdicts);
	}
}
