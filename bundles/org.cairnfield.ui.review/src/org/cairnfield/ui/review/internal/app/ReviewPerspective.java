package org.cairnfield.ui.review.internal.app;

import org.cairnfield.ui.show.SmallScreen;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The reviewer's: one sample, three questions, one key. */
public final class ReviewPerspective implements IPerspectiveFactory {

	/** Of the perspective. */
	public static final String ID = "org.cairnfield.ui.review.perspective";
	private static final String QUEUE = "org.cairnfield.ui.review.queue";
	private static final String EVIDENCE = "org.cairnfield.ui.review.evidence";
	private static final String PAIR = "org.cairnfield.ui.review.pair";
	private static final String MEASURE = "org.cairnfield.ui.review.measure";
	private static final String VERDICT = "org.cairnfield.ui.review.verdict";
	private static final String SPLIT = "org.cairnfield.ui.review.split";
	// of other bundles; the perspective does without what is not there
	private static final String PLAN = "org.cairnfield.ui.plan.view";
	private static final String SAMPLES = "org.cairnfield.ui.samples";
	private static final String EXPLORER = "org.cairnfield.ui.explorer";
	private static final String CONFLICTS = "org.cairnfield.ui.conflicts";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		String area = layout.getEditorArea();
		boolean small = SmallScreen.isThere();
		IFolderLayout keys = layout.createFolder("keys", IPageLayout.BOTTOM, small ? 0.81f : 0.83f, area);
		keys.addView(VERDICT);
		keys.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, small ? 0.43f : 0.465f, area);
		left.addView(QUEUE);
		left.addPlaceholder(EXPLORER);
		left.addPlaceholder(CONFLICTS);
		if (!small) {
			layout.createFolder("right", IPageLayout.RIGHT, 0.65f, area).addView(EVIDENCE);
		}
		IFolderLayout pair = layout.createFolder("pair", IPageLayout.BOTTOM, 0.66f, area);
		if (small) { // in the place of the pair, so that there is room for the plan
			pair.addView(EVIDENCE);
		}
		pair.addView(PAIR);
		pair.addView(MEASURE);
		pair.addPlaceholder(SAMPLES);
		IFolderLayout centre = layout.createFolder("centre", IPageLayout.TOP, 0.66f, area);
		centre.addView(PLAN);
		centre.addView(SPLIT);
		for (String view : new String[] { QUEUE, PLAN, SPLIT, EVIDENCE, PAIR, MEASURE, VERDICT, SAMPLES, EXPLORER,
				IPageLayout.ID_PROGRESS_VIEW }) {
			layout.addShowViewShortcut(view);
		}
	}
}
