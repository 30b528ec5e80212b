package org.cairnfield.ui.internal.app;

import java.util.List;

import org.eclipse.ui.IPageLayout;

/** Ids of the views, as plugin.xml says them. */
public final class ViewIds {

	public static final String START = "org.cairnfield.ui.start";
	public static final String FIRST_STEPS = "org.cairnfield.ui.firstSteps";
	/** The platform's view of what was logged. */
	public static final String ERROR_LOG = "org.eclipse.pde.runtime.LogView";
	public static final String EXPLORER = "org.cairnfield.ui.explorer";
	public static final String SAMPLES = "org.cairnfield.ui.samples";
	public static final String FINDINGS = "org.cairnfield.ui.findings";
	public static final String FINGERPRINT = "org.cairnfield.ui.fingerprint";
	public static final String ACCESS_POINT = "org.cairnfield.ui.accessPoint";
	public static final String HISTORY = "org.cairnfield.ui.history";
	public static final String CONFLICTS = "org.cairnfield.ui.conflicts";
	public static final String TIMELINE = "org.cairnfield.ui.timeline";
	/** Of the bundle org.cairnfield.ui.plan. */
	public static final String PLAN = "org.cairnfield.ui.plan.view";

	static final List<String> ALL = List.of(EXPLORER, PLAN, SAMPLES, FINGERPRINT, ACCESS_POINT, FINDINGS, HISTORY,
			CONFLICTS, TIMELINE,
			IPageLayout.ID_PROP_SHEET, IPageLayout.ID_PROGRESS_VIEW, ERROR_LOG, FIRST_STEPS, START);

	private ViewIds() {
	}
}
