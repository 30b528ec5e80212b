package org.cairnfield.ui.internal.explorer;

import java.util.Set;

import org.cairnfield.model.Survey;
import org.cairnfield.ui.internal.labels.ModelImages;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.dialogs.FilteredTree;
import org.eclipse.ui.dialogs.PatternFilter;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;

/** The archive as a tree; what is selected here is the scope of all other parts. */
public final class ExplorerView extends ViewPart implements SessionListener {

	private Composite page;
	private FilteredTree tree;
	private TreeLabels labels;
	private ArchiveSession session;
	private boolean following;

	@Override
	public void createPartControl(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		labels = new TreeLabels(new ModelImages(page));
		tree = new FilteredTree(page, SWT.H_SCROLL | SWT.V_SCROLL, new NameFilter(), true, true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
		tree.setInitialText(Messages.ExplorerView_filter);
		TreeViewer viewer = tree.getViewer();
		Marked.named(Marked.id(viewer.getTree(), "explorer.tree"), Messages.ExplorerView_archive);
		viewer.setUseHashlookup(true);
		viewer.setContentProvider(new ArchiveTree(labels.counts()));
		viewer.setLabelProvider(labels);
		viewer.addSelectionChangedListener(event -> follow(event.getSelection()));
		viewer.addDoubleClickListener(
				event -> viewer.setExpandedState(((StructuredSelection) event.getSelection()).getFirstElement(),
						!viewer.getExpandedState(((StructuredSelection) event.getSelection()).getFirstElement())));
		MenuManager menu = new MenuManager();
		viewer.getTree().setMenu(menu.createContextMenu(viewer.getTree()));
		getSite().registerContextMenu(menu, viewer);
		getSite().setSelectionProvider(viewer);
		getSite().getService(IContextService.class).activateContext("org.cairnfield.ui.explorer.context");
		FileDrop.onto(viewer.getTree());
		Sessions.workbench().add(this);
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		following = true;
		if (now != null) {
			labels.count(now.archive(), now.findings());
		}
		tree.getViewer().setInput(now == null ? new Object[0] : new Object[] { now.archive() });
		if (now != null) {
			tree.getViewer().expandToLevel(2);
			now.archive().getSites().forEach(site -> tree.getViewer().expandToLevel(site, 1));
		}
		following = false;
	}

	/** The scope is what the person selects in the tree. */
	private void follow(ISelection selection) {
		if (!following && session != null && selection instanceof StructuredSelection structured
				&& structured.getFirstElement() != null) {
			Object element = structured.getFirstElement();
			if (element instanceof Strays strays) {
				session.select(session.selection().withScope(strays.site()).withSamples(strays.samples()));
				return;
			}
			EObject scope = element instanceof Group group ? group.owner() : (EObject) element;
			session.select(session.selection().withScope(scope));
		}
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		Object shown = tree.getViewer().getStructuredSelection().getFirstElement();
		boolean same = shown == now.scope() || shown instanceof Group group && group.owner() == now.scope()
				|| shown instanceof Strays strays && strays.site() == now.scope();
		if (before.scope() != now.scope() && !same) {
			following = true;
			tree.getViewer().setSelection(new StructuredSelection(now.scope()), true);
			following = false;
		}
	}

	@Override
	public void samplesChanged(Set<Survey> surveys) {
		tree.getViewer().refresh(true);
	}

	@Override
	public void structureChanged() {
		following = true;
		tree.getViewer().refresh(true);
		following = false;
	}

	@Override
	public void findingsChanged() {
		if (session != null && !session.findings().isChecking()) {
			labels.count(session.archive(), session.findings());
			tree.getViewer().refresh(true);
		}
	}

	@Override
	public void setFocus() {
		Marked.focus(tree.getViewer().getControl());
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		super.dispose();
	}

	/** By what the tree says, not by what the objects call themselves. */
	private final class NameFilter extends PatternFilter {
		@Override
		protected boolean isLeafMatch(Viewer viewer, Object element) {
			return wordMatches(labels.plain(element));
		}
	}
}
