package org.cairnfield.ui.charts;

import java.util.Objects;

import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.charts.scale.Scale;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** A grid of two parameters, each cell with its value as colour and text. Its items are the cells. */
public final class GridMap extends Chart {

	private CellGrid grid = new CellGrid(new double[0], new double[0], new double[0][]);
	private Axis xAxis = Axis.linear("", "");
	private Axis yAxis = Axis.linear("", "");
	private Axis valueAxis = Axis.linear("", "");
	private int decimals;
	private final Continuous colours = Continuous.rising();
	private int marked = -1;
	private String markedText = "";
	private HeatCells cells;

	/** Empty until it is given data. */
	public GridMap(Composite parent, int style) {
		super(parent, style);
	}

	/** What the parameters and the values are; values are shown with so many decimals. */
	public void setAxes(Axis x, Axis y, Axis values, int valueDecimals) {
		xAxis = Objects.requireNonNull(x);
		yAxis = Objects.requireNonNull(y);
		valueAxis = Objects.requireNonNull(values);
		decimals = valueDecimals;
		changed();
	}

	/** The cells; the chosen number stays chosen if it still exists. */
	public void setGrid(CellGrid grid) {
		this.grid = Objects.requireNonNull(grid);
		// until it is drawn nobody can point at it
		cells = null;
		changed();
	}

	/** Rings a cell, such as the one suggested, and says why; −1 for none. */
	public void setMarked(int cell, String why) {
		marked = cell;
		markedText = Objects.requireNonNull(why);
		redraw();
	}

	@Override
	public int itemCount() {
		return grid.size();
	}

	@Override
	public String itemText(int item) {
		double value = grid.value(item);
		return xAxis.title() + ' ' + xAxis.text(grid.xs()[grid.column(item)], decimals(grid.xs(), xAxis)) + ", "
				+ yAxis.title()
				+ ' ' + yAxis.text(grid.ys()[grid.row(item)], decimals(grid.ys(), yAxis)) + ": "
				+ (Double.isNaN(value) ? Messages.GridMap_noValue
						: valueAxis.title() + ' ' + valueAxis.text(value, decimals))
				+ (item == marked ? " (" + markedText + ')' : "");
	}

	@Override
	public int itemAt(int x, int y) {
		return isEmpty() || cells == null ? -1 : cells.at(x, y);
	}

	@Override
	public String summary() {
		return isEmpty() ? ""
				: NLS.bind(Messages.GridMap_overAndByCells, new Object[] { valueAxis.heading(), xAxis.heading(),
						yAxis.heading(), grid.xs().length, grid.ys().length });
	}

	/** As few decimals as tell neighbours apart, three at most. */
	static int decimals(double[] values, Axis axis) {
		for (int decimals = 0; decimals < 3; decimals++) {
			boolean exact = true;
			double power = Math.pow(10, decimals);
			for (double value : values) {
				double scaled = value * axis.factor() * power;
				exact &= Math.abs(scaled - Math.rint(scaled)) < 1e-6 * Math.max(1, Math.abs(scaled));
			}
			if (exact) {
				return decimals;
			}
		}
		return 3;
	}

	@Override
	boolean isEmpty() {
		return grid.size() == 0;
	}

	@Override
	int step(int from, int keyCode) {
		if (from < 0) {
			return marked >= 0 && marked < grid.size() ? marked : 0;
		}
		int column = grid.column(from);
		int row = grid.row(from);
		int right = grid.xs().length - 1;
		int top = grid.ys().length - 1;
		return switch (keyCode) {
		case SWT.ARROW_LEFT -> grid.cell(Math.max(0, column - 1), row);
		case SWT.ARROW_RIGHT -> grid.cell(Math.min(right, column + 1), row);
		case SWT.ARROW_UP -> grid.cell(column, Math.min(top, row + 1));
		case SWT.ARROW_DOWN -> grid.cell(column, Math.max(0, row - 1));
		case SWT.HOME -> grid.cell(0, row);
		case SWT.END -> grid.cell(right, row);
		case SWT.PAGE_UP -> grid.cell(column, top);
		case SWT.PAGE_DOWN -> grid.cell(column, 0);
		default -> from;
		};
	}

	@Override
	void draw(Paper paper) {
		int labelWidth = 0;
		for (double y : grid.ys()) {
			labelWidth = Math.max(labelWidth, paper.width(label(y, grid.ys(), yAxis)));
		}
		int top = Ramp.height(paper) + 2 * paper.gap + paper.line + paper.gap / 2;
		cells = HeatCells.fit(new Rectangle(labelWidth + 2 * paper.gap, top, paper.width - labelWidth - 3 * paper.gap,
				paper.height - top - 2 * paper.line - 2 * paper.gap), grid.xs().length, grid.ys().length);
		Scale scale = scale();
		new Ramp(colours, valueAxis, scale).draw(paper, paper.gap, paper.gap, paper.width - 2 * paper.gap);
		paper.text(yAxis.heading(), paper.gap, top - paper.line - paper.gap / 2, paper.look.foreground());
		for (int cell = 0; cell < grid.size(); cell++) {
			drawCell(paper, scale, cell);
		}
		drawLabels(paper);
		if (getChosen() >= 0) {
			drawChosen(paper, cells.bounds(getChosen()));
		}
	}

	private Scale scale() {
		Span span = new Span(valueAxis.logarithmic());
		for (double[] row : grid.values()) {
			for (double value : row) {
				span.add(value);
			}
		}
		return valueAxis.scale(span.low(), span.high(), 5);
	}

	private void drawCell(Paper paper, Scale scale, int cell) {
		Rectangle box = cells.bounds(cell);
		double value = grid.value(cell);
		double fraction = Double.isNaN(value) ? value : scale.clamped(value * valueAxis.factor());
		RGB fill = Double.isNaN(fraction) ? paper.look.background() : colours.rgb(fraction);
		RGB text = Double.isNaN(fraction) ? paper.look.muted() : Contrast.textOn(fill);
		paper.fill(fill);
		paper.gc.fillRectangle(box);
		paper.stroke(paper.look.faint(), 1);
		paper.gc.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
		String shown = ShownNumbers.text(value * valueAxis.factor(), decimals);
		int wide = paper.width(shown);
		if (wide <= box.width - 4 && paper.line <= box.height - 2) {
			paper.text(shown, box.x + (box.width - wide) / 2, box.y + (box.height - paper.line) / 2, text);
		}
		if (cell == marked) {
			double radius = Math.min(paper.line * 0.24, Math.min(box.width, box.height) / 5.0);
			paper.ring(box.x + box.width - 1.8 * radius, box.y + 1.8 * radius, radius, text);
		}
	}

	private void drawLabels(Paper paper) {
		int under = cells.area().y + cells.area().height + paper.gap / 2;
		int free = 0;
		for (int column = 0; column < grid.xs().length; column++) {
			Rectangle box = cells.bounds(grid.cell(column, 0));
			String label = label(grid.xs()[column], grid.xs(), xAxis);
			int middle = box.x + box.width / 2;
			// labels that would touch are left out; the cell's tip has them
			if (middle - paper.width(label) / 2 >= free) {
				paper.textAround(label, middle, under, paper.look.muted());
				free = middle + paper.width(label) / 2 + paper.gap;
			}
		}
		for (int row = 0; row < grid.ys().length; row++) {
			Rectangle box = cells.bounds(grid.cell(0, row));
			if (box.height >= paper.line) {
				paper.textBefore(label(grid.ys()[row], grid.ys(), yAxis), box.x - paper.gap,
						box.y + (box.height - paper.line) / 2, paper.look.muted());
			}
		}
		paper.textBefore(xAxis.heading(), cells.area().x + cells.area().width, under + paper.line,
				paper.look.foreground());
	}

	private static String label(double value, double[] all, Axis axis) {
		return ShownNumbers.text(value * axis.factor(), decimals(all, axis));
	}

	/** A frame in both colours of the control, so that it shows on any cell. */
	private void drawChosen(Paper paper, Rectangle box) {
		int wide = Math.max(2, paper.line / 7);
		paper.stroke(paper.look.foreground(), wide);
		paper.gc.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
		paper.stroke(paper.look.background(), 1);
		paper.gc.drawRectangle(box.x + wide, box.y + wide, box.width - 1 - 2 * wide, box.height - 1 - 2 * wide);
	}
}
