package org.cairnfield.ui.charts;

import java.util.Locale;
import java.util.Objects;

import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** How often values occur, such as the levels of an access point. Its items are the bins. */
public final class Histogram extends Chart {

	private Bins bins = Bins.of(new double[0], 1);
	private Axis axis = Axis.linear("", "");
	private Axis counts = Axis.linear("", "");
	private Frame frame;

	/** Empty until it is given data. */
	public Histogram(Composite parent, int style) {
		super(parent, style);
	}

	/**
	 * @param axis    of the values
	 * @param counted what is counted, such as "Readings"
	 */
	public void setBins(Bins bins, Axis axis, String counted) {
		this.bins = Objects.requireNonNull(bins);
		this.axis = Objects.requireNonNull(axis);
		counts = Axis.linear(counted, "").between(0, Double.NaN);
		changed();
	}

	@Override
	public int itemCount() {
		return bins.size();
	}

	@Override
	public String itemText(int item) {
		int decimals = decimals();
		return NLS.bind(Messages.Histogram_to,
				new Object[] { ShownNumbers.text(bins.edge(item) * axis.factor(), decimals),
						axis.text(bins.edge(item + 1), decimals), ShownNumbers.text(bins.count(item), 0),
						counts.title().toLowerCase(Locale.ROOT) });
	}

	private int decimals() {
		double width = (bins.edge(1) - bins.edge(0)) * axis.factor();
		return width == Math.rint(width) ? 0 : (int) Math.ceil(-Math.log10(width)) + 1;
	}

	@Override
	public int itemAt(int x, int y) {
		if (isEmpty() || frame == null || !frame.plot().contains(x, y)) {
			return -1;
		}
		double value = frame.xAt(x) / axis.factor();
		int bin = (int) Math.floor((value - bins.edge(0)) / (bins.edge(1) - bins.edge(0)));
		return bin < bins.size() ? bin : -1;
	}

	@Override
	public String summary() {
		return isEmpty() ? ""
				: NLS.bind(Messages.Histogram_overFromTo,
						new Object[] { counts.title(), axis.heading(), ShownNumbers.text(bins.total(), 0),
								axis.text(bins.edge(0), decimals()), axis.text(bins.edge(bins.size()), decimals()) });
	}

	@Override
	boolean isEmpty() {
		return bins.size() == 0;
	}

	@Override
	int step(int from, int keyCode) {
		return switch (keyCode) {
		case SWT.ARROW_RIGHT -> Math.min(bins.size() - 1, from + 1);
		case SWT.ARROW_LEFT -> Math.max(0, from - 1);
		case SWT.HOME -> 0;
		case SWT.END -> bins.size() - 1;
		default -> from;
		};
	}

	@Override
	void draw(Paper paper) {
		Frame.Extent extent = new Frame.Extent(bins.edge(0), bins.edge(bins.size()), 0, bins.most());
		frame = Frame.fit(FramePainter.measures(paper, 0), axis.between(extent.lowX(), extent.highX()), counts, extent);
		new FramePainter(paper, frame).draw(axis, counts, false);
		Rectangle plot = frame.plot();
		for (int bin = 0; bin < bins.size(); bin++) {
			int left = (int) Math.round(frame.xOf(bins.edge(bin) * axis.factor()));
			int right = (int) Math.round(frame.xOf(bins.edge(bin + 1) * axis.factor()));
			if (bin == getChosen()) {
				paper.fill(paper.look.band());
				paper.gc.fillRectangle(left, plot.y, Math.max(1, right - left), plot.height);
			}
			if (bins.count(bin) > 0) {
				int top = (int) Math.round(frame.yOf(bins.count(bin)));
				int gap = right - left > 4 ? 1 : 0;
				paper.bar(left + gap, top, Math.max(1, right - left - gap), plot.y + plot.height - top,
						Categorical.BLUE.on(paper.look.background()), false);
			}
		}
		if (getChosen() >= 0) {
			String text = itemText(getChosen());
			int free = plot.x + plot.width - paper.width(counts.heading()) - 3 * paper.gap;
			paper.textBefore(paper.fit(text, free), plot.x + plot.width, plot.y - paper.line - paper.gap / 2,
					paper.look.foreground());
		}
	}
}
