package org.cairnfield.ui.internal.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The steward's over the years: what has changed, since when, and what helps. */
public final class TimelinePerspective implements IPerspectiveFactory {

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		String area = layout.getEditorArea();
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.68f, area);
		right.addView(ViewIds.PLAN);
		IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.55f, "right");
		below.addView(ViewIds.ACCESS_POINT);
		below.addView(IPageLayout.ID_PROP_SHEET);
		below.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.68f, area);
		left.addView(ViewIds.TIMELINE);
		left.addPlaceholder(ViewIds.EXPLORER);
		left.addPlaceholder(ViewIds.FINDINGS);
		for (String view : ViewIds.ALL) {
			layout.addShowViewShortcut(view);
		}
	}
}
