package org.cairnfield.ui.plan.internal.view;

import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** In a narrow view the lists of a row show only the beginning of what is chosen, so that they take fewer lines. */
final class NarrowRow {

	/** Points of width, and of a list in a row that has less. */
	private static final int NARROW = 700;
	private static final int LIST = 70;

	private NarrowRow() {
	}

	/** @param row with lists behind their labels */
	static void watch(Composite row) {
		int[] last = { SWT.DEFAULT };
		row.addListener(SWT.Resize, event -> {
			int wanted = row.getSize().x < NARROW ? LIST : SWT.DEFAULT;
			if (wanted != last[0]) {
				last[0] = wanted;
				Stream.of(row.getChildren()).filter(Composite.class::isInstance).flatMap(pair -> Stream.of(((Composite) pair).getChildren()))
						.filter(Combo.class::isInstance).forEach(combo -> combo.setLayoutData(GridDataFactory.swtDefaults().hint(wanted, SWT.DEFAULT).create()));
				row.getDisplay().asyncExec(() -> { // the row is being laid out now
					if (!row.isDisposed()) {
						row.getParent().layout(true, true);
					}
				});
			}
		});
	}
}
