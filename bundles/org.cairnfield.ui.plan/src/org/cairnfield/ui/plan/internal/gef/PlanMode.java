package org.cairnfield.ui.plan.internal.gef;

/** What a drag on the floor does. */
public enum PlanMode {
	/** Selects the samples in a rectangle. */
	SELECT,
	/** Selects those in a free line. */
	LASSO,
	/** Shifts the plan. */
	PAN
}
