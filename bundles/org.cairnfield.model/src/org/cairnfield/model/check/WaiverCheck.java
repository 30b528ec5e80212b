package org.cairnfield.model.check;

import static org.cairnfield.model.check.Report.isSet;

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
		return Report.require(complete, diagnostics, waiver, "A waiver of rule " + waiver.getRule()
				+ " lacks its content key, reason, person or time: nobody could audit it; remove it and waive anew");
	}
}
