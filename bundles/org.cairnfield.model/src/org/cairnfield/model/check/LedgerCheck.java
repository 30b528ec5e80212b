package org.cairnfield.model.check;

import java.util.HashSet;
import java.util.Set;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a ledger. */
public final class LedgerCheck {

	private LedgerCheck() {
	}

	/** @see Ledger#idIsUsable */
	public static boolean idIsUsable(Ledger ledger, DiagnosticChain diagnostics) {
		return Report.usableId(ledger.getId(), diagnostics, ledger, Messages.LedgerCheck_aLedger);
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
					Words.bind(Messages.LedgerCheck_verdictSupersedesWhichIsNot, verdict.getId(),
							verdict.getSupersedes(), ledger.getId()));
		}
		return all;
	}
}
