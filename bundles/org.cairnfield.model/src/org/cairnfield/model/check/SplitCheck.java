package org.cairnfield.model.check;

import org.cairnfield.model.Split;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a split. */
public final class SplitCheck {

	private SplitCheck() {
	}

	/** @see Split#idIsUsable */
	public static boolean idIsUsable(Split split, DiagnosticChain diagnostics) {
		return Report.usableId(split.getId(), diagnostics, split, "A split");
	}

	/** @see Split#parametersAreInRange */
	public static boolean parametersAreInRange(Split split, DiagnosticChain diagnostics) {
		Double share = split.getPcaShare();
		boolean epsilon = split.getEpsilon() >= 0 && Double.isFinite(split.getEpsilon());
		boolean rule = split.getGate() >= 0 && split.getGate() <= 1 && Math.abs(split.getThreshold()) <= 1;
		return Report.require(epsilon && split.getMinPts() >= 1 && (share == null || share > 0 && share <= 1),
				diagnostics,
				split, "Split " + split.getId() + " cannot have been made with ε " + split.getEpsilon() + ", minPts "
						+ split.getMinPts() + (share == null ? "" : " and variance " + share) + ": make it anew")
				& Report.require(rule, diagnostics, split, "Proposals of split " + split.getId()
						+ " cannot have been made from a gate of " + split.getGate() + " and a threshold of "
						+ split.getThreshold() + ": propose anew");
	}
}
