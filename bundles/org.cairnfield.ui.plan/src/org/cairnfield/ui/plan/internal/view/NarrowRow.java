package org.cairnfield.ui.plan.internal.view;

import java.util.Arrays;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** In a narrow view the lists of a row take half of it each at most, so that two of them stand in a line and show what is chosen. */
final class NarrowRow {

	/** Points between the lists of a line, and around them. */
	private static final int GAPS = 44;
	/** Points of a list, however narrow the view. */
	private static final int LEAST = 70;

	private NarrowRow() {
	}

	/** @param row with lists behind their labels */
	static void watch(Composite row) {
		int[] last = { 0 };
		row.addListener(SWT.Resize, event -> {
			int width = row.getSize().x;
			if (width == last[0]) {
				return;
			}
			last[0] = width;
			row.getDisplay().asyncExec(() -> { // the row is being laid out now
				if (!row.isDisposed()) {
					fit(row);
				}
			});
		});
	}

	private static List<Combo> lists(Composite row) {
		return Arrays.stream(row.getChildren()).filter(Composite.class::isInstance)
				.flatMap(pair -> Arrays.stream(((Composite) pair).getChildren()))
				.filter(Combo.class::isInstance).map(Combo.class::cast).toList();
	}

	/** Makes lists as wide as their items, but for what is more than half of the row. */
	static void fit(Composite row) {
		for (Combo list : lists(row)) {
			int label = list.getParent().getChildren()[0].computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
			int most = Math.max(LEAST, row.getSize().x / 2 - GAPS - label);
			int wanted = list.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= most ? SWT.DEFAULT : most;
			list.setLayoutData(GridDataFactory.swtDefaults().hint(wanted, SWT.DEFAULT).create());
		}
		row.getParent().layout(true, true);
	}
}
