package org.cairnfield.ui.internal.history;

import org.cairnfield.archive.history.ArchiveDiff;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Shows what differs between two states, as a tree of changes. */
final class DiffTree {

	private final Text heading;
	private final TreeViewer tree;

	DiffTree(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		heading = new Text(page, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		heading.setData("org.cairnfield.id", "history.heading");
		GridDataFactory.fillDefaults().grab(true, false).hint(100, 3 * heading.getLineHeight()).applyTo(heading);
		tree = new TreeViewer(page, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
		tree.getTree().setData("org.cairnfield.id", "history.changes");
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.getControl());
		tree.setContentProvider(new Content());
		tree.setLabelProvider(LabelProvider.createTextProvider(node -> ((DiffNode) node).text()));
	}

	/** A line in place of a comparison. */
	void say(String text) {
		heading.setText(text);
		tree.setInput(null);
	}

	void show(String title, ArchiveDiff diff) {
		heading.setText(title);
		tree.setInput(DiffNode.of(diff));
	}

	private static final class Content implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object input) {
			return ArrayContentProvider.getInstance().getElements(input);
		}

		@Override
		public Object[] getChildren(Object parent) {
			return ((DiffNode) parent).children().toArray();
		}

		@Override
		public Object getParent(Object element) {
			return null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return !((DiffNode) element).children().isEmpty();
		}
	}
}
