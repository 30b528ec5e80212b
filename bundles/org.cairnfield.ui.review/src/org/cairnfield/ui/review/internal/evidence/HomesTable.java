package org.cairnfield.ui.review.internal.evidence;

import java.util.List;

import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The homes of the sample in hand, a line each. */
final class HomesTable {

	/** Of the width, by column, in per cent. */
	private static final int[] SHARES = { 16, 24, 42, 18 };

	private final Table table;

	HomesTable(Composite parent) {
		table = Marked.named(
				Marked.id(new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.NO_SCROLL), "review.homes"),
				Messages.HomesTable_whatEachHomeWouldDo);
		table.setHeaderVisible(true);
		column(Messages.HomesTable_home, SWT.LEFT, Messages.HomesTable_theClusterProposedThatOf);
		column(Messages.HomesTable_change, SWT.RIGHT, Messages.HomesTable_heldOutTrainingPositionsThat);
		column(Messages.HomesTable_errorThereM, SWT.RIGHT, Messages.HomesTable_changeOfTheErrorAt);
		column(Messages.HomesTable_cost, SWT.RIGHT, Messages.HomesTable_fingerprintsComparedMorePerQuery);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
		table.addListener(SWT.Resize, event -> share());
	}

	/** All columns are in sight, however narrow the view is. */
	private void share() {
		int width = table.getClientArea().width;
		for (int i = 0; i < SHARES.length; i++) {
			table.getColumn(i).setWidth(width * SHARES[i] / 100);
		}
	}

	private void column(String title, int alignment, String tip) {
		TableColumn column = new TableColumn(table, alignment);
		column.setText(title);
		column.setToolTipText(tip);
	}

	/** @param evidence null for none */
	void show(Evidence evidence) {
		List<HomeRow> rows = evidence == null ? List.of() : HomeRow.of(evidence);
		boolean resized = rows.size() != table.getItemCount();
		table.setRedraw(false);
		table.setItemCount(rows.size());
		for (int i = 0; i < rows.size(); i++) {
			TableItem item = table.getItem(i);
			HomeRow row = rows.get(i);
			item.setText(new String[] { row.home(), row.positions(), row.error(), row.compared() });
		}
		table.setRedraw(true);
		if (resized) { // to lay out the text below costs more than all of this
			fit(rows.size());
		}
	}

	private void fit(int rows) {
		((GridData) table.getLayoutData()).heightHint = table.getHeaderHeight() + rows * table.getItemHeight();
		IfChanged.shown(table, rows > 0);
		table.requestLayout();
	}
}
