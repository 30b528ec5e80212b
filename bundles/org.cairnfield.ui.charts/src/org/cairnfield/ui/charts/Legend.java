package org.cairnfield.ui.charts;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

/** What shapes and colours mean, for a picture that has none of its own: named entries, or a ramp of colours. */
public final class Legend extends Chart {

	/**
	 * One meaning.
	 *
	 * @param style null for the hollow ring of noise
	 * @param line  whether it stands for a line with marks on it
	 */
	public record Entry(String text, Categorical.Style style, boolean line) {

		public Entry {
			Objects.requireNonNull(text);
		}

		/** For filled marks or bars. */
		public static Entry of(String text, Categorical.Style style) {
			return new Entry(text, Objects.requireNonNull(style), false);
		}

		/** For a line with marks on it. */
		public static Entry line(String text, Categorical.Style style) {
			return new Entry(text, Objects.requireNonNull(style), true);
		}

		/** For the hollow ring. */
		public static Entry noise(String text) {
			return new Entry(text, null, false);
		}
	}

	private List<Entry> entries = List.of();
	private Continuous colours;
	private Axis axis;

	/** Empty until told what to show. */
	public Legend(Composite parent, int style) {
		super(parent, style | SWT.NO_FOCUS);
	}

	/** Shows these, in this order. */
	public void setEntries(List<Entry> entries) {
		this.entries = List.copyOf(entries);
		colours = null;
		changed();
	}

	/** Shows a ramp over the range of an axis, whose ends must be given. */
	public void setRamp(Continuous colours, Axis axis) {
		if (Double.isNaN(axis.low()) || Double.isNaN(axis.high())) {
			throw new IllegalArgumentException("no range: " + axis);
		}
		entries = List.of();
		this.colours = Objects.requireNonNull(colours);
		this.axis = axis;
		changed();
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		GC gc = new GC(this);
		try {
			Paper paper = new Paper(gc, 0, 0, look());
			int width = widthHint == SWT.DEFAULT ? 24 * paper.line : widthHint;
			int inner = colours != null ? Ramp.height(paper) : new Key(paper, entries, width - 2 * paper.gap).height();
			return new Point(width, heightHint == SWT.DEFAULT ? inner + 2 * paper.gap : heightHint);
		} finally {
			gc.dispose();
		}
	}

	@Override
	public int itemCount() {
		return entries.size();
	}

	@Override
	public String itemText(int item) {
		return entries.get(item).text();
	}

	@Override
	public int itemAt(int x, int y) {
		return -1;
	}

	@Override
	public String summary() {
		return colours != null
				? NLS.bind(Messages.Legend_to,
						new Object[] { axis.heading(), axis.text(axis.low(), 1), axis.text(axis.high(), 1) })
				: entries.stream().map(Entry::text).collect(Collectors.joining(", "));
	}

	@Override
	boolean isEmpty() {
		return entries.isEmpty() && colours == null;
	}

	@Override
	void draw(Paper paper) {
		if (colours != null) {
			new Ramp(colours, axis, axis.scale(axis.low(), axis.high(), 6)).draw(paper, paper.gap, paper.gap,
					paper.width - 2 * paper.gap);
		} else {
			new Key(paper, entries, paper.width - 2 * paper.gap).draw(paper.gap, paper.gap);
		}
	}

	@Override
	int step(int from, int keyCode) {
		return from;
	}
}
