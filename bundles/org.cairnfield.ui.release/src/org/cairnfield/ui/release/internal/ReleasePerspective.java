package org.cairnfield.ui.release.internal;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The team lead's: is it better, what changed, may it go. */
public final class ReleasePerspective implements IPerspectiveFactory {

	private static final String VIEWS = "org.cairnfield.ui.release.";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		String area = layout.getEditorArea();
		IFolderLayout bottom = layout.createFolder("bottom", IPageLayout.BOTTOM, 0.68f, area);
		bottom.addView(VIEWS + "measures");
		bottom.addView(VIEWS + "export");
		bottom.addView("org.cairnfield.ui.history");
		bottom.addView("org.cairnfield.ui.conflicts");
		bottom.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.27f, area);
		left.addView(VIEWS + "releases");
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.62f, area);
		right.addView(VIEWS + "errors");
		right.addPlaceholder("org.cairnfield.ui.plan.view");
		IFolderLayout centre = layout.createFolder("centre", IPageLayout.TOP, 0.9f, area);
		centre.addView(VIEWS + "gates");
	}
}
