package org.cairnfield.ui.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.StringJoiner;

import org.cairnfield.core.series.Series;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Lines over two axes, with a readout where the mouse is or where the arrow keys have led it, marks, and a guide that mouse
 * and arrow keys move. Its items are the marks.
 */
public final class LineChart extends Chart {

	private static final int FAST = 10;

	private final List<Guide.Listener> guideListeners = new ArrayList<>();
	private List<Series> series = List.of();
	private List<Mark> marks = List.of();
	private Axis xAxis = Axis.linear("", "");
	private Axis yAxis = Axis.linear("", "");
	/** Of the series alone; passing through all points at each drag of the guide would be waste. */
	private Frame.Extent extent = new Frame.Extent(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
	private boolean stepped;
	private Guide guide;
	private boolean dragging;
	/** Shown value of x that the readout is of, NaN for none. */
	private double readoutX = Double.NaN;
	private Frame frame;

	/** Empty until it is given data. */
	public LineChart(Composite parent, int style) {
		super(parent, style);
		addListener(SWT.MouseMove, this::mouseMoved);
		addListener(SWT.MouseExit, event -> readAt(Double.NaN));
		addListener(SWT.MouseDown, event -> {
			dragging = event.button == 1 && isOnGuide(event.x, event.y);
		});
		addListener(SWT.MouseUp, event -> {
			if (dragging) {
				dragGuide(event); // a quick hand lets go before the last move has arrived
				dragging = false;
				tellGuide(true);
			}
		});
	}

	/** What the axes are of. */
	public void setAxes(Axis x, Axis y) {
		xAxis = Objects.requireNonNull(x);
		yAxis = Objects.requireNonNull(y);
		extent = Frame.Extent.of(series, x, y);
		changed();
	}

	/** Lines in the order of their colours; values in the units of the axes, not yet multiplied by a factor. */
	public void setSeries(List<Series> series) {
		this.series = List.copyOf(series);
		readoutX = Double.NaN;
		extent = Frame.Extent.of(series, xAxis, yAxis);
		changed();
	}

	/** Whether each value holds until the next point, as in an empirical distribution. Not so at first. */
	public void setStepped(boolean stepped) {
		this.stepped = stepped;
		redraw();
	}

	/** Points to point out. */
	public void setMarks(List<Mark> marks) {
		this.marks = List.copyOf(marks);
		changed();
	}

	/** Null for none. Listeners are not told. */
	public void setGuide(Guide guide) {
		if (!Objects.equals(guide, this.guide)) {
			this.guide = guide;
			redraw();
		}
	}

	/** The guide where it is now, null for none. */
	public Guide getGuide() {
		return guide;
	}

	/** Called when the user has moved the guide. */
	public void onGuideMoved(Guide.Listener listener) {
		guideListeners.add(Objects.requireNonNull(listener));
	}

	@Override
	public int itemCount() {
		return marks.size();
	}

	@Override
	public String itemText(int item) {
		Mark mark = marks.get(item);
		int xDecimals = frame == null ? 1 : frame.xTicks().readoutDecimals();
		int yDecimals = frame == null ? 1 : frame.yTicks().readoutDecimals();
		return mark.text() + ": " + xAxis.title() + ' ' + xAxis.text(mark.x(), xDecimals) + ", " + yAxis.title() + ' '
				+ yAxis.text(mark.y(), yDecimals);
	}

	@Override
	public int itemAt(int x, int y) {
		for (int i = 0; frame != null && i < marks.size(); i++) {
			double dx = frame.xOf(marks.get(i).x() * xAxis.factor()) - x;
			double dy = frame.yOf(marks.get(i).y() * yAxis.factor()) - y;
			if (Math.hypot(dx, dy) < LinePainter.REACH) {
				return i;
			}
		}
		return -1;
	}

	@Override
	public String summary() {
		StringJoiner text = new StringJoiner(", ", NLS.bind(Messages.LineChart_over, yAxis.heading(), xAxis.heading()),
				"");
		series.forEach(line -> text.add(line.name()));
		return isEmpty() ? "" : text.toString();
	}

	/** The readout, or where the guide is. */
	@Override
	public String spokenValue() {
		return !Double.isNaN(readoutX) ? String.join(", ", readout()) : guide != null ? guideText() : "";
	}

	/** The lines of the readout: x, then each series; empty when there is none. */
	public List<String> readout() {
		List<String> lines = new ArrayList<>();
		if (frame == null || Double.isNaN(readoutX)) {
			return lines;
		}
		lines.add(xAxis.title() + ' ' + ShownNumbers.text(readoutX, frame.xTicks().readoutDecimals(), xAxis.unit()));
		for (Series line : series) {
			int point = Lookup.at(line, readoutX / xAxis.factor(), stepped);
			lines.add(line.name() + ' '
					+ (point < 0 ? ShownNumbers.text(Double.NaN, 0)
							: yAxis.text(line.y(point), frame.yTicks().readoutDecimals())));
		}
		return lines;
	}

	/** The guide's label and value. */
	String guideText() {
		Axis axis = guide.upright() ? xAxis : yAxis;
		int decimals = frame == null ? 2 : (guide.upright() ? frame.xTicks() : frame.yTicks()).readoutDecimals();
		return guide.label() + ' ' + axis.text(guide.value(), decimals);
	}

	@Override
	boolean isEmpty() {
		return series.stream().allMatch(line -> line.size() == 0);
	}

	@Override
	void draw(Paper paper) {
		List<Legend.Entry> entries = new LinePainter(paper, null, series, stepped).entries();
		Key key = new Key(paper, series.size() > 1 ? entries : List.of(), paper.width - 2 * paper.gap);
		frame = Frame.fit(FramePainter.measures(paper, key.height()), xAxis, yAxis,
				guide == null ? extent : extent.with(guide));
		key.draw(paper.gap, paper.gap);
		new FramePainter(paper, frame).draw(xAxis, yAxis, true);
		LinePainter painter = new LinePainter(paper, frame, series, stepped);
		painter.draw(xAxis.factor(), yAxis.factor());
		painter.drawMarks(marks, xAxis.factor(), yAxis.factor());
		if (guide != null) {
			painter.drawGuide(guide.upright(), guide.value() * guideAxis().factor(), guideText(), isFocusControl());
		}
		if (!dragging) {
			painter.drawReadout(readoutX, readout());
		}
	}

	private Axis guideAxis() {
		return guide.upright() ? xAxis : yAxis;
	}

	/** Whether the mouse can take the guide at a place of the control. */
	public boolean isOnGuide(int x, int y) {
		if (guide == null || frame == null) {
			return false;
		}
		double shown = guide.value() * guideAxis().factor();
		double away = guide.upright() ? frame.xOf(shown) - x : frame.yOf(shown) - y;
		return Math.abs(away) <= LinePainter.REACH;
	}

	private void mouseMoved(Event event) {
		if (frame == null || isEmpty()) {
			return;
		}
		if (dragging) {
			dragGuide(event);
			return;
		}
		int pointer = isOnGuide(event.x, event.y) ? guide.upright() ? SWT.CURSOR_SIZEWE : SWT.CURSOR_SIZENS
				: SWT.CURSOR_ARROW;
		setCursor(getDisplay().getSystemCursor(pointer));
		readAt(frame.plot().contains(event.x, event.y) ? frame.xAt(event.x) : Double.NaN);
	}

	private void dragGuide(Event event) {
		double shown = guide.upright() ? frame.xAt(event.x) : frame.yAt(event.y);
		moveGuide(frame.moved(guide.upright(), shown, 0), false);
	}

	private void readAt(double shownX) {
		if (Double.compare(shownX, readoutX) != 0) {
			readoutX = shownX;
			redraw();
			getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
		}
	}

	private void moveGuide(double shown, boolean settled) {
		double value = shown / guideAxis().factor();
		if (value != guide.value()) {
			guide = guide.at(value);
			redraw();
			getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
			tellGuide(settled);
		}
	}

	private void tellGuide(boolean settled) {
		guideListeners.forEach(listener -> listener.moved(guide.value(), settled));
	}

	/** Arrows along the guide's axis move it, by ten with Shift; arrows along x otherwise move the readout. */
	@Override
	void keyDown(Event event) {
		boolean alongX = event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_RIGHT;
		boolean alongY = event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN;
		if (frame == null || isEmpty() || !alongX && !alongY || (event.stateMask & (SWT.MOD1 | SWT.MOD3)) != 0) {
			return;
		}
		int pixels = event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_DOWN ? -1 : 1;
		pixels *= (event.stateMask & SWT.SHIFT) != 0 ? FAST : 1;
		if (guide != null && guide.upright() == alongX) {
			moveGuide(frame.moved(alongX, guide.value() * guideAxis().factor(), pixels), true);
		} else if (alongX) {
			double from = Double.isNaN(readoutX) ? frame.x().value(0.5) : readoutX;
			readAt(frame.moved(true, from, pixels));
		}
	}

	@Override
	int step(int from, int keyCode) {
		return from;
	}
}
