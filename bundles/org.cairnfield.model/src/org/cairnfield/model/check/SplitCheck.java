package org.cairnfield.model.check;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.util.DiagnosticChain;

/** Constraints of a split. */
public final class SplitCheck {

	private SplitCheck() {
	}

	/** @see Split#idIsUsable */
	public static boolean idIsUsable(Split split, DiagnosticChain diagnostics) {
		return Report.usableId(split.getId(), diagnostics, split, Messages.SplitCheck_aSplit);
	}

	/** @see Split#parametersAreInRange */
	public static boolean parametersAreInRange(Split split, DiagnosticChain diagnostics) {
		Double share = split.getPcaShare();
		boolean epsilon = split.getEpsilon() >= 0 && Double.isFinite(split.getEpsilon());
		boolean rule = split.getGate() >= 0 && split.getGate() <= 1 && Math.abs(split.getThreshold()) <= 1;
		return Report.require(epsilon && split.getMinPts() >= 1 && (share == null || share > 0 && share <= 1),
				diagnostics,
				split,
				Words.bind(Messages.SplitCheck_splitCannotHaveBeenMade, split.getId(), split.getEpsilon(),
						split.getMinPts(), share == null ? "" : Words.bind(Messages.SplitCheck_andVariance, share)))
				& Report.require(rule, diagnostics, split, Words.bind(Messages.SplitCheck_proposalsOfSplitCannotHave,
						split.getId(), split.getGate(), split.getThreshold()));
	}
}
