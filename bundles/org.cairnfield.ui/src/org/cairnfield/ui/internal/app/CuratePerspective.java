package org.cairnfield.ui.internal.app;

import org.cairnfield.ui.show.SmallScreen;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The steward's: where am I, what is there, what is wrong. */
public final class CuratePerspective implements IPerspectiveFactory {

	/** Of the perspective. */
	public static final String ID = "org.cairnfield.ui.curate";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		String area = layout.getEditorArea();
		boolean small = SmallScreen.isThere();
		IFolderLayout bottom = layout.createFolder("bottom", IPageLayout.BOTTOM, small ? 0.6f : 0.71f, area);
		bottom.addView(ViewIds.FINDINGS);
		if (small) { // behind the findings, so that there is room for the plan
			bottom.addView(ViewIds.SAMPLES);
		}
		bottom.addView(ViewIds.HISTORY);
		bottom.addView(ViewIds.CONFLICTS);
		bottom.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		bottom.addPlaceholder(ViewIds.ERROR_LOG);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.19f, area);
		left.addView(ViewIds.EXPLORER);
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.75f, area);
		right.addView(ViewIds.FINGERPRINT);
		right.addView(ViewIds.ACCESS_POINT);
		right.addView(IPageLayout.ID_PROP_SHEET);
		right.addPlaceholder(ViewIds.FIRST_STEPS);
		if (!small) {
			layout.createFolder("samples", IPageLayout.BOTTOM, 0.64f, area).addView(ViewIds.SAMPLES);
		}
		IFolderLayout centre = layout.createFolder("centre", IPageLayout.TOP, 0.64f, area);
		centre.addView(ViewIds.PLAN);
		centre.addPlaceholder(ViewIds.START);
		for (String view : ViewIds.ALL) {
			layout.addShowViewShortcut(view);
		}
	}
}
