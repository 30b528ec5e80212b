package org.cairnfield.ui.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntConsumer;

import org.cairnfield.ui.charts.colour.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * What all charts share: they are made of items (rows, bars, cells, points) numbered from 0, one of which may be chosen
 * by mouse or keyboard; hovering shows an item's text, and assistive technology is told the chosen one's. All methods are
 * for the thread of the display. Charts make no system resources that outlive a painting.
 */
public abstract class Chart extends Canvas {

	private final List<IntConsumer> listeners = new ArrayList<>();
	private String name = "";
	private String emptyText = "";
	private int chosen = -1;
	private Color ownForeground;
	private Color ownBackground;

	Chart(Composite parent, int style) {
		super(parent, style | SWT.DOUBLE_BUFFERED);
		addListener(SWT.Paint, this::paint);
		addListener(SWT.MouseMove, event -> showTip(itemAt(event.x, event.y)));
		addListener(SWT.MouseExit, event -> showTip(-1));
		addListener(SWT.MouseDown, this::mouseDown);
		addListener(SWT.KeyDown, this::keyDown);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		// a canvas that listens to keys would keep the tab key to itself
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS || event.detail == SWT.TRAVERSE_ESCAPE
				|| event.detail == SWT.TRAVERSE_RETURN);
		Spoken.picture(this, this::getName, this::description, this::spokenValue);
	}

	/** What the chart is of, for assistive technology. */
	public final void setName(String name) {
		this.name = Objects.requireNonNull(name);
	}

	/** What {@link #setName} was given. */
	public final String getName() {
		return name;
	}

	/** What to say, and what to do next, while there is nothing to draw. */
	public final void setEmptyText(String text) {
		emptyText = Objects.requireNonNull(text);
		redraw();
	}

	/** What {@link #setEmptyText} was given. */
	public final String getEmptyText() {
		return emptyText;
	}

	/** Called with the item whenever the user has chosen another. */
	public final void onChosen(IntConsumer listener) {
		listeners.add(Objects.requireNonNull(listener));
	}

	/** The chosen item, −1 for none. */
	public final int getChosen() {
		return chosen;
	}

	/** Chooses an item without telling the listeners; what does not exist means none. */
	public final void setChosen(int item) {
		int next = item >= 0 && item < itemCount() ? item : -1;
		if (next != chosen) {
			chosen = next;
			if (next >= 0) {
				reveal(next);
			}
			redraw();
			getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
		}
	}

	/** How many items there are. */
	public abstract int itemCount();

	/** All about an item in one line, with units. */
	public abstract String itemText(int item);

	/** The item at a place of the control, −1 for none. */
	public abstract int itemAt(int x, int y);

	/** What the chart shows as a whole, in a sentence or two. */
	public abstract String summary();

	/** The summary, or what to do where there is nothing to draw. */
	final String description() {
		return isEmpty() ? emptyText : summary();
	}

	/** The text of the chosen item; empty for none. */
	public String spokenValue() {
		return chosen < 0 ? "" : itemText(chosen);
	}

	/**
	 * Paints the chart away from the screen, as it stands but for the size.
	 *
	 * @param width  in points
	 * @param height in points
	 * @return the picture at 100 %
	 */
	public final ImageData snapshot(int width, int height) {
		Image image = new Image(getDisplay(), width, height);
		GC gc = new GC(image);
		try {
			gc.setFont(getFont());
			paintOn(new Paper(gc, width, height, look()));
			return image.getImageData(100);
		} finally {
			gc.dispose();
			image.dispose();
			// the picture's layout is not the control's
			redraw();
		}
	}

	/** Null for the colour of the platform's lists. */
	@Override
	public void setForeground(Color color) {
		ownForeground = color;
		super.setForeground(color);
	}

	/** Null for the colour of the platform's lists. */
	@Override
	public void setBackground(Color color) {
		ownBackground = color;
		super.setBackground(color);
	}

	@Override
	public void setFont(Font font) {
		super.setFont(font);
		changed();
	}

	/** Whether there is nothing to draw. */
	abstract boolean isEmpty();

	abstract void draw(Paper paper);

	/** The item that a key leads to, or {@code from} if the key means nothing. */
	abstract int step(int from, int keyCode);

	/** Scrolls to the item where the chart scrolls. */
	void reveal(int item) {
	}

	/** To be called when the data have changed. */
	void changed() {
		if (chosen >= itemCount()) {
			chosen = -1;
		}
		redraw();
	}

	final Palette look() {
		return new Palette(rgb(ownForeground, SWT.COLOR_LIST_FOREGROUND),
				rgb(ownBackground, SWT.COLOR_LIST_BACKGROUND));
	}

	private RGB rgb(Color own, int system) {
		return (own != null ? own : getDisplay().getSystemColor(system)).getRGB();
	}

	private void paint(Event event) {
		Paper paper = new Paper(event.gc, getClientArea().width, getClientArea().height, look());
		paintOn(paper);
		if (isFocusControl()) {
			event.gc.drawFocus(0, 0, paper.width, paper.height);
		}
	}

	private void paintOn(Paper paper) {
		paper.clear();
		if (isEmpty()) {
			paper.textInTheMiddle(emptyText);
		} else {
			draw(paper);
		}
	}

	private void mouseDown(Event event) {
		setFocus();
		int item = itemAt(event.x, event.y);
		if (event.button == 1 && item >= 0) {
			choose(item);
		}
	}

	void keyDown(Event event) {
		if (!isEmpty() && (event.stateMask & SWT.MODIFIER_MASK) == 0) {
			choose(step(chosen, event.keyCode));
		}
	}

	private void choose(int item) {
		if (item != chosen) {
			setChosen(item);
			listeners.forEach(listener -> listener.accept(chosen));
		}
	}

	private void showTip(int item) {
		String text = item < 0 ? null : itemText(item);
		if (!Objects.equals(text, getToolTipText())) {
			setToolTipText(text);
		}
	}
}
