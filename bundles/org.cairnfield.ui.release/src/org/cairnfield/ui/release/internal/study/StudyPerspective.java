package org.cairnfield.ui.release.internal.study;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The team lead's over many maps: which way should they be split. */
public final class StudyPerspective implements IPerspectiveFactory {

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		IFolderLayout all = layout.createFolder("all", IPageLayout.TOP, 0.9f, layout.getEditorArea());
		all.addView("org.cairnfield.ui.release.study");
		all.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
	}
}
