package org.cairnfield.ui.internal.properties;

import java.util.Set;

import org.cairnfield.model.Survey;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.cairnfield.ui.work.Soon;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;

/** The Properties view beside any of our views: in the order of the source, and up to date while the archive changes. */
final class PropertiesPage extends PropertySheetPage implements SessionListener {

	private final Soon refreshing = new Soon(0, this::refresh); // one change comes in several notifications

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		Marked.named(Marked.id(getControl(), "properties.tree"), Messages.PropertiesPage_properties);
		setSorter(new SourceOrder());
		Sessions.workbench().add(this);
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		super.selectionChanged(part, selection);
		fit();
	}

	@Override
	public void refresh() {
		super.refresh();
		fit();
	}

	/** Names are read in full, and values by scrolling if need be. */
	private void fit() {
		if (getControl() instanceof Tree tree && tree.getItemCount() > 0) {
			for (TreeColumn column : tree.getColumns()) {
				column.pack();
			}
		}
	}

	@Override
	public void makeContributions(IMenuManager menu, IToolBarManager tools, IStatusLineManager status) {
		// nothing is advanced and nothing has a default
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		refreshing.request();
	}

	@Override
	public void structureChanged() {
		refreshing.request();
	}

	@Override
	public void ledgersChanged() {
		refreshing.request();
	}

	@Override
	public void dispose() {
		refreshing.cancel();
		Sessions.workbench().remove(this);
		super.dispose();
	}

	/** Whoever lists properties knows their order. */
	private static final class SourceOrder extends PropertySheetSorter {

		@Override
		public void sort(IPropertySheetEntry[] entries) {
			// they are in order
		}
	}
}
