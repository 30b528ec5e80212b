package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Waiver;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a waiver. */
public final class WaiverCheck {

	private WaiverCheck() {
	}

	/** @see Waiver#isAccountedFor */
	public static boolean isAccountedFor(Waiver waiver, DiagnosticChain diagnostics) {
		boolean complete = isSet(waiver.getRule()) && isSet(waiver.getContentKey()) && isSet(waiver.getReason())
				&& isSet(waiver.getPerson()) && waiver.getTime() != null;
		return Report.require(complete, diagnostics, waiver,
				Words.bind(Messages.WaiverCheck_aWaiverOfRuleLacks, waiver.getRule()));
	}
}
