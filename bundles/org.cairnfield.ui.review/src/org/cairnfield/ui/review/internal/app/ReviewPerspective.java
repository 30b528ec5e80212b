package org.cairnfield.ui.review.internal.app;

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
		IFolderLayout keys = layout.createFolder("keys", IPageLayout.BOTTOM, 0.83f, area);
		keys.addView(VERDICT);
		keys.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.465f, area);
		left.addView(QUEUE);
		left.addPlaceholder(EXPLORER);
		left.addPlaceholder(CONFLICTS);
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.65f, area);
		right.addView(EVIDENCE);
		IFolderLayout pair = layout.createFolder("pair", IPageLayout.BOTTOM, 0.66f, area);
		pair.addView(PAIR);
		pair.addView(MEASURE);
		pair.addPlaceholder(SAMPLES);
		IFolderLayout centre = layout.createFolder("centre", IPageLayout.TOP, 0.66f, area);
		centre.addView(PLAN);
		centre.addView(SPLIT);
		for (String view : new String[] { QUEUE, PLAN, SPLIT, EVIDENCE, PAIR, MEASURE, VERDICT, SAMPLES, EXPLORER, IPageLayout.ID_PROGRESS_VIEW }) {
			layout.addShowViewShortcut(view);
		}
	}
}
