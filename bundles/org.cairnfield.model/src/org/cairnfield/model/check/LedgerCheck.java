package org.cairnfield.model.check;

import java.util.HashSet;
import java.util.Set;

import org.cairnfield.model.Ledger;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a ledger. */
public final class LedgerCheck {

	private LedgerCheck() {
	}

	/** @see Ledger#idIsUsable */
	public static boolean idIsUsable(Ledger ledger, DiagnosticChain diagnostics) {
		return Report.usableId(ledger.getId(), diagnostics, ledger, "A ledger");
	}

	/** @see Ledger#superseded */
	public static boolean superseded(Ledger ledger, DiagnosticChain diagnostics) {
		boolean all = true;
		Set<String> given = new HashSet<>();
		for (Verdict verdict : ledger.getVerdicts()) {
			given.add(verdict.getId());
		}
		for (Verdict verdict : ledger.getVerdicts()) {
			all &= Report.require(verdict.getSupersedes() == null || given.contains(verdict.getSupersedes()),
					diagnostics,
					verdict,
					"Verdict " + verdict.getId() + " supersedes " + verdict.getSupersedes()
							+ ", which is not in ledger "
							+ ledger.getId() + ": restore the ledger from the history");
		}
		return all;
	}
}
