package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;
import static org.cairnfield.model.check.Report.require;

import org.cairnfield.model.Decision;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a verdict. */
public final class VerdictCheck {

	private VerdictCheck() {
	}

	/** @see Verdict#isAccountedFor */
	public static boolean isAccountedFor(Verdict verdict, DiagnosticChain diagnostics) {
		boolean complete = isSet(verdict.getId()) && isSet(verdict.getSplit()) && verdict.getSample() != null
				&& isSet(verdict.getPerson()) && verdict.getTime() != null;
		boolean leaves = verdict.getDecision() == Decision.REJECT || verdict.getDecision() == Decision.FAULTY;
		boolean reasoned = !leaves || isSet(verdict.getReasonCode());
		boolean placed = verdict.getDecision() != Decision.MOVE || verdict.getCluster() >= 0;
		return require(complete, diagnostics, verdict,
				"Verdict " + verdict.getId() + " on sample " + verdict.getSample()
						+ " lacks its id, split, sample, person or time: nobody could audit it; give it anew")
				& require(reasoned, diagnostics, verdict, "Verdict " + verdict.getId() + " takes sample "
						+ verdict.getSample() + " out of the map without a reason: give one")
				& require(placed, diagnostics, verdict,
						"Verdict " + verdict.getId() + " moves sample " + verdict.getSample()
								+ " and names no cluster: give it anew");
	}
}
