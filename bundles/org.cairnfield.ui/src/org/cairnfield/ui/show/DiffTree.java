package org.cairnfield.ui.show;

import java.util.List;

import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;

/** Shows what differs between two states, as a tree of changes; a double click on a sample shows it on the plan, the context menu all that are selected. */
public final class DiffTree {

	private static final int LINES = 3;

	private final Composite page;
	private final Text heading;
	private final TreeViewer tree;

	/** @param id of the view; the parts are called so with ".heading" and ".changes" behind */
	public DiffTree(Composite parent, String id) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		heading = new Text(page, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		Marked.named(Marked.id(heading, id + ".heading"), Messages.DiffTree_whatIsCompared);
		GridDataFactory.fillDefaults().grab(true, false)
				.hint(100, heading.computeSize(100, LINES * heading.getLineHeight()).y).applyTo(heading);
		tree = new TreeViewer(page, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		Marked.named(Marked.id(tree.getTree(), id + ".changes"), Messages.DiffTree_changes);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.getControl());
		tree.setContentProvider(new Content());
		tree.setLabelProvider(LabelProvider.createTextProvider(node -> ((DiffNode) node).text()));
		tree.getTree().setMenu(new Menu(tree.getTree()));
		MenuItem onPlan = new MenuItem(tree.getTree().getMenu(), SWT.PUSH);
		onPlan.setText(Messages.DiffTree_showOnThePlan);
		onPlan.addListener(SWT.Selection, event -> showOnPlan());
		tree.addDoubleClickListener(event -> open((DiffNode) tree.getStructuredSelection().getFirstElement()));
	}

	/** Of the heading and the tree. */
	public Control control() {
		return page;
	}

	private void open(DiffNode node) {
		if (node != null && node.sample() != null) {
			Sessions.workbench().current().ifPresent(session -> OnPlan.show(session, node.sample()));
		} else if (node != null) {
			tree.setExpandedState(node, !tree.getExpandedState(node));
		}
	}

	/** The changes of the lines selected, or of all. */
	@SuppressWarnings("unchecked")
	private void showOnPlan() {
		List<DiffNode> selected = tree.getStructuredSelection().toList();
		List<DiffNode> asked = !selected.isEmpty() ? selected
				: tree.getInput() == null ? List.of() : (List<DiffNode>) tree.getInput();
		Sessions.workbench().current().ifPresent(session -> ChangesOnPlan.show(session,
				asked.stream().flatMap(DiffNode::ofSamples).distinct().toList()));
	}

	/** A line in place of a comparison. */
	public void say(String text) {
		heading.setText(text);
		tree.setInput(null);
	}

	/** What differs, beneath a heading. */
	public void show(String title, ArchiveDiff diff) {
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
