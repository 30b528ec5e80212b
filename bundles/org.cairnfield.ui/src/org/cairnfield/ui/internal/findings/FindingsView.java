package org.cairnfield.ui.internal.findings;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cairnfield.curation.rules.Finding;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.SessionListener;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.show.Marked;
import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.ITreeSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreePath;
import org.eclipse.jface.viewers.TreeSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.part.ViewPart;

/** What the rules have found, and what can be done about it. */
public final class FindingsView extends ViewPart implements SessionListener {

	/** Behind the ways to group what is open. */
	private static final String WAIVED = Messages.FindingsView_whatIsWaived;
	/** Before the title of a heading where it stands for one that is selected; no key of a finding begins so. */
	private static final String HEADING = "heading ";

	/**
	 * A heading with its findings; two of one title are the same heading, so that it stays open over checks.
	 *
	 * @param waiver that covers them, or null
	 */
	private record Heading(String title, List<Finding> findings, Waiver waiver) {
		@Override
		public boolean equals(Object other) {
			return other instanceof Heading heading && heading.title.equals(title);
		}

		@Override
		public int hashCode() {
			return title.hashCode();
		}
	}

	private Composite page;
	private Combo grouping;
	private Button onlySelected;
	private Label counts;
	private TreeViewer viewer;
	private FindingDetails details;
	private ArchiveSession session;
	private boolean fresh;
	private Command done;

	@Override
	public void createPartControl(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
		Composite top = new Composite(page, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(4).margins(6, 2).applyTo(top);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
		new Label(top, SWT.NONE).setText(Messages.FindingsView_group);
		grouping = new Combo(top, SWT.READ_ONLY);
		for (Grouping each : Grouping.values()) {
			grouping.add(each.title);
		}
		grouping.add(WAIVED);
		grouping.select(0);
		grouping.setData("org.cairnfield.id", "findings.grouping");
		grouping.addListener(SWT.Selection, event -> show());
		onlySelected = new Button(top, SWT.CHECK);
		onlySelected.setText(Messages.FindingsView_onlyOfTheSelectedSamples);
		onlySelected.addListener(SWT.Selection, event -> show());
		counts = new Label(top, SWT.RIGHT);
		counts.setData("org.cairnfield.id", "findings.counts");
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(counts);
		SashForm sash = new SashForm(page, SWT.HORIZONTAL | SWT.SMOOTH);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		createTree(sash);
		details = new FindingDetails(sash, this::say);
		sash.setWeights(60, 40);
		getSite().setSelectionProvider(viewer);
		MenuManager menu = new MenuManager();
		viewer.getTree().setMenu(menu.createContextMenu(viewer.getTree()));
		getSite().registerContextMenu(menu, viewer);
		Sessions.workbench().add(this);
	}

	private void createTree(Composite parent) {
		Tree tree = new Tree(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
		tree.setHeaderVisible(true);
		Marked.named(Marked.id(tree, "findings.tree"), Messages.FindingsView_findings);
		viewer = new TreeViewer(tree);
		viewer.setUseHashlookup(true);
		for (FindingColumn each : FindingColumn.values()) {
			column(each);
		}
		viewer.setContentProvider(new Content());
		viewer.addSelectionChangedListener(event -> details.show(session, selected(), selectedWaivers()));
		viewer.addDoubleClickListener(event -> openPlace());
		viewer.getTree().addListener(SWT.DefaultSelection, event -> openPlace());
	}

	private void column(FindingColumn of) {
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
		column.getColumn().setText(of.title);
		column.getColumn().setWidth(of.width);
		column.getColumn().addListener(SWT.Selection, event -> sortBy(of));
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> {
			if (element instanceof Finding finding) {
				return of.text.apply(finding);
			}
			Heading heading = (Heading) element;
			return of.ordinal() > 0 ? "" : heading.title + "  (" + heading.findings.size() + ")";
		}));
	}

	/** The findings of each heading: up, then down, then as the rules tell them. */
	private void sortBy(FindingColumn column) {
		Tree tree = viewer.getTree();
		boolean again = tree.getSortColumn() == tree.getColumn(column.ordinal());
		boolean end = again && tree.getSortDirection() == SWT.DOWN;
		tree.setSortColumn(end ? null : tree.getColumn(column.ordinal()));
		tree.setSortDirection(end ? SWT.NONE : again ? SWT.DOWN : SWT.UP);
		show();
	}

	private List<Finding> sorted(List<Finding> findings) {
		Tree tree = viewer.getTree();
		if (tree.getSortColumn() == null) {
			return findings;
		}
		Comparator<Finding> order = FindingColumn.values()[tree.indexOf(tree.getSortColumn())].order;
		return findings.stream().sorted(tree.getSortDirection() == SWT.DOWN ? order.reversed() : order).toList();
	}

	private List<Finding> selected() {
		List<Finding> findings = new ArrayList<>();
		for (Object element : viewer.getStructuredSelection()) {
			if (element instanceof Heading heading) {
				findings.addAll(heading.findings);
			} else {
				findings.add((Finding) element);
			}
		}
		return findings.stream().distinct().toList();
	}

	/** Id of the rule that has found what is selected first; empty where nothing is. */
	public Optional<String> selectedRule() {
		return selected().stream().findFirst().map(Finding::rule);
	}

	private List<Waiver> selectedWaivers() {
		List<Waiver> waivers = new ArrayList<>();
		for (TreePath path : ((ITreeSelection) viewer.getSelection()).getPaths()) {
			if (((Heading) path.getFirstSegment()).waiver != null) {
				waivers.add(((Heading) path.getFirstSegment()).waiver);
			}
		}
		return waivers.stream().distinct().toList();
	}

	private void openPlace() {
		List<Finding> findings = selected();
		if (!findings.isEmpty()) {
			session.select(FindingEvidence.of(session, findings.get(0)));
		}
	}

	/** Says what was done, as long as it is the last thing that was. @param command null for nothing */
	private void say(Command command) {
		done = command;
		getViewSite().getActionBars().getStatusLineManager().setMessage(
				command == null ? null : NLS.bind(Messages.FindingsView_doneUndoTakesItBack, command.getLabel()));
	}

	@Override
	public void stateChanged() {
		if (done != null && session.commands().getUndoCommand() != done) {
			say(null);
		}
	}

	@Override
	public void sessionChanged(ArchiveSession now) {
		session = now;
		say(null);
		fresh = true;
		show();
	}

	@Override
	public void findingsChanged() {
		int place = place();
		show();
		if (place >= 0 && viewer.getStructuredSelection().isEmpty()) {
			selectNext(place);
		}
	}

	/** Of the first finding that is selected, among all that are listed; negative where none is. */
	private int place() {
		return viewer.getStructuredSelection().getFirstElement() instanceof Finding finding
				? paths().stream().map(TreePath::getLastSegment).toList().indexOf(finding)
				: -1;
	}

	/** Whoever has remedied or waived a finding goes on with what has come into its place. */
	private void selectNext(int place) {
		List<TreePath> paths = paths();
		if (!paths.isEmpty()) {
			viewer.setSelection(new TreeSelection(paths.get(Math.min(place, paths.size() - 1))), true);
		}
	}

	@SuppressWarnings("unchecked")
	private List<TreePath> paths() {
		return ((List<Heading>) viewer.getInput()).stream()
				.flatMap(heading -> heading.findings.stream()
						.map(finding -> new TreePath(new Object[] { heading, finding })))
				.toList();
	}

	@Override
	public void selectionChanged(ArchiveSelection before, ArchiveSelection now) {
		if (onlySelected.getSelection() && !before.samples().equals(now.samples())) {
			show();
		}
	}

	private void show() {
		counts.setText(session == null ? Messages.FindingsView_noArchiveIsOpen : session.findings().summary());
		List<Heading> headings = grouping.getText().equals(WAIVED) ? waived() : open();
		List<String> keys = keys();
		TreePath[] open = viewer.getExpandedTreePaths();
		viewer.getTree().setRedraw(false);
		viewer.setInput(headings);
		if (fresh && !headings.isEmpty()) {
			fresh = false;
			viewer.expandAll();
		} else {
			viewer.setExpandedTreePaths(open);
		}
		select(headings, keys);
		viewer.getTree().setRedraw(true);
		details.show(session, selected(), selectedWaivers());
	}

	/** A heading for each waiver, with what it covers now. */
	private List<Heading> waived() {
		return session == null ? List.of()
				: session.findings().waivers().stream().map(waiver -> new Heading(waiver.kept().getReason() + " – "
						+ waiver.kept().getPerson() + ", " + waiver.kept().getTime().truncatedTo(ChronoUnit.MINUTES),
						sorted(waiver.covered()), waiver.kept())).toList();
	}

	private List<Heading> open() {
		List<Finding> findings = session == null ? List.of() : session.findings().open();
		if (session != null && onlySelected.getSelection()) {
			List<Finding> wanted = session.selection().samples().stream()
					.flatMap(s -> session.findings().of(s).stream()).distinct().toList();
			findings = findings.stream().filter(wanted::contains).toList();
		}
		ArchiveIndex index = session == null ? null : ArchiveIndex.of(session.archive()); // no session, no findings
		Map<String, List<Finding>> groups = Grouping.values()[grouping.getSelectionIndex()].groups(findings,
				subject -> FindingEvidence.place(index, subject));
		return groups.entrySet().stream().map(group -> new Heading(group.getKey(), sorted(group.getValue()), null))
				.toList();
	}

	private List<String> keys() {
		List<String> keys = new ArrayList<>();
		for (Object element : viewer.getStructuredSelection()) {
			keys.add(element instanceof Finding finding ? finding.contentKey() : HEADING + ((Heading) element).title);
		}
		return keys;
	}

	/** The same findings, by content, as before the check. */
	private void select(List<Heading> headings, List<String> keys) {
		List<TreePath> paths = new ArrayList<>();
		for (Heading heading : keys.isEmpty() ? List.<Heading>of() : headings) {
			if (keys.contains(HEADING + heading.title)) {
				paths.add(new TreePath(new Object[] { heading }));
			}
			for (Finding finding : heading.findings) {
				if (keys.contains(finding.contentKey())) {
					paths.add(new TreePath(new Object[] { heading, finding }));
				}
			}
		}
		viewer.setSelection(
				paths.isEmpty() ? StructuredSelection.EMPTY : new TreeSelection(paths.toArray(new TreePath[0])));
	}

	@Override
	public void setFocus() {
		Marked.focus(viewer.getControl());
	}

	@Override
	public void dispose() {
		Sessions.workbench().remove(this);
		details.dispose();
		super.dispose();
	}

	private static final class Content implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object input) {
			return ArrayContentProvider.getInstance().getElements(input);
		}

		@Override
		public Object[] getChildren(Object parent) {
			return parent instanceof Heading heading ? heading.findings.toArray() : new Object[0];
		}

		@Override
		public Object getParent(Object element) {
			return null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof Heading;
		}
	}
}
