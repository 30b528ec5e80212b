package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;
import static org.cairnfield.model.check.Report.require;

import org.cairnfield.core.text.Words;
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
				Words.bind(Messages.VerdictCheck_verdictOnSampleLacksIts, verdict.getId(), verdict.getSample()))
				& require(reasoned, diagnostics, verdict,
						Words.bind(Messages.VerdictCheck_verdictTakesSampleOutOf, verdict.getId(),
								verdict.getSample()))
				& require(placed, diagnostics, verdict,
						Words.bind(Messages.VerdictCheck_verdictMovesSampleAndNames, verdict.getId(),
								verdict.getSample()));
	}
}
