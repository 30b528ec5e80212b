package org.cairnfield.ui.internal.rules;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.cleaning.CleaningRules;
import org.cairnfield.ui.internal.rules.model.RuleDrafts;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;

/** All rules, by what they are about, each with how it is told. */
final class RuleTree {

	private final TreeViewer viewer;
	private final Consumer<Rule> shown;

	/** @param shown hears of the rule that is selected */
	RuleTree(Composite parent, Supplier<RuleDrafts> drafts, Consumer<Rule> shown) {
		this.shown = shown;
		Tree tree = Marked.named(new Tree(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER),
				Messages.RuleTree_rules);
		tree.setHeaderVisible(true);
		tree.setData("org.cairnfield.id", "rules.tree");
		viewer = new TreeViewer(tree);
		column(Messages.RuleTree_rule, 360,
				element -> element instanceof Rule rule ? rule.title() : title((Topic) element));
		column(Messages.RuleTree_setting, 190, element -> element instanceof Rule rule ? drafts.get().words(rule) : "");
		viewer.setContentProvider(new Content());
		viewer.setInput(Topic.values());
		viewer.expandAll();
		viewer.addSelectionChangedListener(event -> again());
	}

	private static String title(Topic topic) {
		return NLS.bind(Messages.RuleTree_about, topic == Topic.COVERAGE ? topic.title() : topic.title() + 's');
	}

	private void column(String title, int width, Function<Object, String> text) {
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(text));
	}

	/** Selects a rule and shows it. */
	void select(String rule) {
		Tree tree = viewer.getTree();
		viewer.setSelection(new StructuredSelection(CleaningRules.registry().rule(rule)), true);
		tree.setFocus();
		tree.getDisplay().asyncExec(() -> { // a page that is being made has no size yet to scroll in
			if (!tree.isDisposed()) {
				tree.showSelection();
			}
		});
	}

	/** Shows the rule that is selected anew. */
	void again() {
		if (viewer.getStructuredSelection().getFirstElement() instanceof Rule rule) {
			shown.accept(rule);
		}
	}

	void refresh() {
		viewer.refresh();
	}

	private static final class Content implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object input) {
			return (Object[]) input;
		}

		@Override
		public Object[] getChildren(Object parent) {
			return parent instanceof Topic topic ? of(topic).toArray() : new Object[0];
		}

		private static List<Rule> of(Topic topic) {
			return CleaningRules.registry().all().stream().filter(rule -> rule.topic() == topic).toList();
		}

		@Override
		public Object getParent(Object element) {
			return element instanceof Rule rule ? rule.topic() : null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof Topic;
		}
	}
}
