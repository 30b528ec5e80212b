package org.cairnfield.ui.internal.samples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

import org.cairnfield.ui.show.Marked;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Slider;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/**
 * A window onto many rows: a table of the platform that has items for the rows in sight only, and a scroll bar beside it. A
 * virtual table would do for thousands; for a million GTK takes seconds to count its items up, half a minute to count them
 * down, and a second to select them. Here nothing depends on their number, and rows are filled before they are painted.
 */
final class RowWindow extends Composite {

	/** What the rows hold. */
	interface Rows {
		int size();

		/** Fills an item with the row at a position. */
		void fill(TableItem item, int position);

		boolean isChosen(int position);
	}

	/** What a person does. */
	interface Gestures {
		/** @param state keys held, as of an event */
		void pick(int position, int state);

		void pickAll();

		/** Position that keys go on from, or −1. */
		int focus();
	}

	private static final int WHEEL_ROWS = 3;

	private final Table table;
	private final Slider slider;
	private final List<IntConsumer> scrollListeners = new ArrayList<>();
	private Rows rows;
	private Gestures gestures;
	private int top;
	private int told;
	private boolean syncing;

	RowWindow(Composite parent) {
		super(parent, SWT.NONE);
		GridLayout layout = new GridLayout(2, false);
		layout.marginWidth = 0;
		layout.marginHeight = 0;
		layout.horizontalSpacing = 0;
		setLayout(layout);
		table = new Table(this, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
		table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		table.setHeaderVisible(true);
		table.setLinesVisible(true);
		if (table.getVerticalBar() != null) {
			table.getVerticalBar().setVisible(false);
		}
		slider = Marked.named(new Slider(this, SWT.VERTICAL), Messages.RowWindow_scrollTheRows);
		slider.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
		slider.addListener(SWT.Selection, e -> scrollTo(slider.getSelection()));
		table.addListener(SWT.Resize, e -> resized());
		table.addListener(SWT.MouseVerticalWheel, e -> {
			e.doit = false;
			scrollTo(top - Integer.signum(e.count) * WHEEL_ROWS * Math.max(1, Math.abs(e.count) / 3));
		});
		table.addListener(SWT.MouseDown, this::pressed);
		table.addListener(SWT.Selection, e -> selectedByPlatform());
		table.addListener(SWT.KeyDown, this::key);
	}

	/** Shows other rows. */
	void open(Rows shown, Gestures heard) {
		rows = shown;
		gestures = heard;
		refresh();
	}

	/** For columns, menus and editors. Its items are the rows in sight. */
	Table table() {
		return table;
	}

	/** Hears the position of the first row whenever the window moves. */
	void onScroll(IntConsumer listener) {
		scrollListeners.add(listener);
	}

	/** Position of the first row in sight. */
	int top() {
		return top;
	}

	/** Rows that fit. */
	int fitting() {
		int height = table.getClientArea().height - table.getHeaderHeight();
		return Math.max(1, height / Math.max(1, table.getItemHeight()));
	}

	/** The item of a position, or null where it is not in sight. */
	TableItem item(int position) {
		int line = position - top;
		return line >= 0 && line < table.getItemCount() ? table.getItem(line) : null;
	}

	/** Moves so that the position comes first, as far as there are rows to fill the window. */
	void scrollTo(int position) {
		int most = Math.max(0, rows.size() - fitting());
		int wanted = Math.max(0, Math.min(most, position));
		if (wanted != top) {
			top = wanted;
			refresh();
		}
	}

	/** Moves as little as is needed to see the position. */
	void reveal(int position) {
		int fitting = fitting();
		if (position < top) {
			scrollTo(position);
		} else if (position >= top + fitting) {
			scrollTo(position - fitting + 1);
		}
	}

	/** Fills all rows in sight anew. */
	void refresh() {
		if (rows == null || isDisposed()) {
			return;
		}
		int fitting = fitting();
		int size = rows.size();
		top = Math.max(0, Math.min(top, size - fitting));
		int shown = Math.min(fitting, size - top);
		if (table.getItemCount() != shown) {
			table.setItemCount(shown);
		}
		for (int line = 0; line < shown; line++) {
			rows.fill(table.getItem(line), top + line);
		}
		slider.setValues(top, 0, Math.max(1, size), Math.max(1, Math.min(fitting, size)), 1, Math.max(1, fitting - 1));
		slider.setEnabled(size > fitting);
		refreshSelection();
		if (top != told) {
			told = top;
			scrollListeners.forEach(listener -> listener.accept(top));
		}
	}

	/** Shows what is chosen, and where keys go on from. */
	void refreshSelection() {
		int count = table.getItemCount();
		int focus = gestures.focus() - top;
		int[] lines = new int[count];
		int chosen = 0;
		for (int line = 0; line < count; line++) {
			if (rows.isChosen(top + line)) {
				lines[chosen++] = line;
				if (line == focus) { // the first is where the platform, and who reads it aloud, takes the cursor to be
					lines[chosen - 1] = lines[0];
					lines[0] = line;
				}
			}
		}
		if (chosen == 0) {
			table.deselectAll();
		} else {
			table.setSelection(Arrays.copyOf(lines, chosen));
		}
	}

	/** What keys go on from stays in sight where it was. */
	private void resized() {
		if (rows != null) {
			int focus = gestures.focus();
			boolean seen = item(focus) != null;
			refresh();
			if (seen) {
				reveal(focus);
			}
		}
	}

	private void pressed(Event e) {
		Point at = new Point(e.x, e.y);
		int line = lineAt(at);
		if (line < 0) {
			return;
		}
		int position = top + line;
		if (e.button == 1 || !rows.isChosen(position)) {
			gestures.pick(position, e.button == 1 ? e.stateMask : 0);
			selectedByPlatform();
		}
	}

	private int lineAt(Point at) {
		TableItem item = table.getItem(at);
		return item == null ? -1 : table.indexOf(item);
	}

	/** The platform has its own idea of what is selected after a click, or when the table gets the focus; ours is right. */
	private void selectedByPlatform() {
		if (!syncing) {
			syncing = true;
			getDisplay().asyncExec(() -> {
				syncing = false;
				if (!isDisposed()) {
					refreshSelection();
				}
			});
		}
	}

	private void key(Event e) {
		int size = rows.size();
		int focus = gestures.focus();
		int page = Math.max(1, fitting() - 1);
		int to = switch (e.keyCode) {
		case SWT.ARROW_UP -> focus - 1;
		case SWT.ARROW_DOWN -> focus + 1;
		case SWT.PAGE_UP -> focus - page;
		case SWT.PAGE_DOWN -> focus + page;
		case SWT.HOME -> 0;
		case SWT.END -> size - 1;
		default -> Integer.MIN_VALUE;
		};
		boolean control = (e.stateMask & SWT.MOD1) != 0;
		if (to != Integer.MIN_VALUE) {
			e.doit = false;
			if (size > 0) {
				int position = Math.max(0, Math.min(size - 1, focus < 0 && to != size - 1 ? 0 : to));
				gestures.pick(position, e.stateMask & SWT.SHIFT);
				reveal(position);
			}
		} else if (control && (e.keyCode == 'a' || e.keyCode == 'A')) {
			e.doit = false;
			gestures.pickAll();
		} else if (e.keyCode == ' ' && focus >= 0) {
			e.doit = false;
			gestures.pick(focus, SWT.MOD1);
		} else if (e.character > ' ' && !control && (e.stateMask & SWT.ALT) == 0) {
			e.doit = false; // the platform would search in the rows in sight only
		}
	}

	/** Where the cell of a column is, for an editor. */
	Rectangle bounds(int position, int column) {
		TableItem item = item(position);
		return item == null ? new Rectangle(0, 0, 0, 0) : item.getBounds(column);
	}

	@Override
	public boolean setFocus() {
		return table.setFocus();
	}
}
