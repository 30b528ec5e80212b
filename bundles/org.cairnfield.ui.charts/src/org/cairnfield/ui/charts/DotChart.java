package org.cairnfield.ui.charts;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Dots over two axes, one of them ringed, with a limit along x. Its items are the dots. */
public final class DotChart extends Chart {

	/**
	 * One dot, in the units of the axes.
	 *
	 * @param text what it is, for its tip
	 * @param kind its place in the list of kinds, which gives it colour and shape
	 */
	public record Dot(double x, double y, String text, int kind) {
	}

	private List<Dot> dots = List.of();
	private List<String> kinds = List.of();
	private Axis xAxis = Axis.linear("", "");
	private Axis yAxis = Axis.linear("", "");
	private Frame.Extent extent = new Frame.Extent(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
	private Guide limit;
	private int marked = -1;
	private String markedText = "";
	private Frame frame;

	/** Empty until it is given data. */
	public DotChart(Composite parent, int style) {
		super(parent, style);
	}

	/** What the axes are of. */
	public void setAxes(Axis x, Axis y) {
		xAxis = Objects.requireNonNull(x);
		yAxis = Objects.requireNonNull(y);
		measure();
	}

	/** The dots, and what their kinds are called; a dot without a value on an axis is not drawn. */
	public void setDots(List<Dot> dots, List<String> kinds) {
		this.dots = List.copyOf(dots);
		this.kinds = List.copyOf(kinds);
		marked = -1;
		measure();
	}

	/** A dashed line across x, such as a budget; NaN for none. */
	public void setLimit(double x, String label) {
		limit = Double.isNaN(x) ? null : new Guide(true, x, label);
		measure();
	}

	/** Rings a dot, such as the one chosen by a rule, and says why; −1 for none. */
	public void setMarked(int dot, String why) {
		marked = dot;
		markedText = Objects.requireNonNull(why);
		redraw();
	}

	private void measure() {
		Span x = new Span(xAxis.logarithmic());
		Span y = new Span(yAxis.logarithmic());
		dots.stream().filter(DotChart::isDrawn).forEach(dot -> {
			x.add(dot.x);
			y.add(dot.y);
		});
		extent = new Frame.Extent(x.low(), x.high(), y.low(), y.high());
		if (limit != null && !isEmpty()) {
			extent = extent.with(limit);
		}
		frame = null;
		changed();
	}

	private static boolean isDrawn(Dot dot) {
		return !Double.isNaN(dot.x) && !Double.isNaN(dot.y);
	}

	@Override
	public int itemCount() {
		return dots.size();
	}

	@Override
	public String itemText(int item) {
		Dot dot = dots.get(item);
		int xDecimals = frame == null ? 1 : frame.xTicks().readoutDecimals();
		int yDecimals = frame == null ? 1 : frame.yTicks().readoutDecimals();
		return dot.text + ": " + yAxis.title() + ' ' + yAxis.text(dot.y, yDecimals) + ", " + xAxis.title() + ' '
				+ xAxis.text(dot.x, xDecimals)
				+ (item == marked ? " (" + markedText + ')' : "");
	}

	/** The dot nearest to the place, within reach of the pointer. */
	@Override
	public int itemAt(int x, int y) {
		int best = -1;
		double least = LinePainter.REACH;
		for (int i = 0; frame != null && i < dots.size(); i++) {
			double away = isDrawn(dots.get(i)) ? Math.hypot(xOf(i) - x, yOf(i) - y) : Double.POSITIVE_INFINITY;
			if (away < least) {
				least = away;
				best = i;
			}
		}
		return best;
	}

	private double xOf(int dot) {
		return frame.xOf(dots.get(dot).x * xAxis.factor());
	}

	private double yOf(int dot) {
		return frame.yOf(dots.get(dot).y * yAxis.factor());
	}

	@Override
	public String summary() {
		return isEmpty() ? ""
				: NLS.bind(Messages.DotChart_dotsOver, new Object[] { dots.size(), yAxis.heading(), xAxis.heading(),
						limit == null ? "" : ", " + limit.label() + ' ' + xAxis.text(limit.value(), 1) });
	}

	@Override
	boolean isEmpty() {
		return dots.stream().noneMatch(DotChart::isDrawn);
	}

	/** Left and right go from dot to dot along x, Home and End to the ends, up and down to the better and the worse along y. */
	@Override
	int step(int from, int keyCode) {
		if (from < 0) {
			return marked >= 0 ? marked : order(true).get(0);
		}
		boolean alongX = keyCode == SWT.ARROW_LEFT || keyCode == SWT.ARROW_RIGHT || keyCode == SWT.HOME
				|| keyCode == SWT.END;
		List<Integer> order = order(alongX);
		int at = order.indexOf(from);
		return switch (keyCode) {
		case SWT.ARROW_LEFT, SWT.ARROW_DOWN -> order.get(Math.max(0, at - 1));
		case SWT.ARROW_RIGHT, SWT.ARROW_UP -> order.get(Math.min(order.size() - 1, at + 1));
		case SWT.HOME -> order.get(0);
		case SWT.END -> order.get(order.size() - 1);
		default -> from;
		};
	}

	private List<Integer> order(boolean alongX) {
		return IntStream.range(0, dots.size()).filter(i -> isDrawn(dots.get(i))).boxed()
				.sorted(Comparator.comparingDouble((Integer i) -> alongX ? dots.get(i).x : dots.get(i).y)).toList();
	}

	@Override
	void draw(Paper paper) {
		Key key = new Key(paper, IntStream.range(0, kinds.size())
				.mapToObj(kind -> Legend.Entry.of(kinds.get(kind), Categorical.style(kind))).toList(),
				paper.width - 2 * paper.gap);
		frame = Frame.fit(FramePainter.measures(paper, key.height()), xAxis, yAxis, extent);
		key.draw(paper.gap, paper.gap);
		new FramePainter(paper, frame).draw(xAxis, yAxis, true);
		double radius = paper.line * 0.26;
		for (int i = 0; i < dots.size(); i++) {
			if (isDrawn(dots.get(i))) {
				Categorical.Style style = Categorical.style(dots.get(i).kind);
				paper.marker(style.marker(), xOf(i), yOf(i), radius, style.colour().on(paper.look.background()));
			}
		}
		if (limit != null) {
			new LinePainter(paper, frame, List.of(), false).drawGuide(true, limit.value() * xAxis.factor(),
					limit.label() + ' ' + xAxis.text(limit.value(), frame.xTicks().readoutDecimals()), false);
		}
		if (marked >= 0 && marked < dots.size() && isDrawn(dots.get(marked))) {
			paper.ring(xOf(marked), yOf(marked), radius * 2.2, paper.look.foreground());
		}
		if (getChosen() >= 0 && isDrawn(dots.get(getChosen()))) {
			paper.stroke(paper.look.foreground(), paper.line / 9f);
			int half = (int) Math.round(radius * 2.2);
			paper.gc.drawRectangle((int) Math.round(xOf(getChosen())) - half, (int) Math.round(yOf(getChosen())) - half,
					2 * half, 2 * half);
		}
	}
}
