package org.cairnfield.ui.charts;

import java.util.List;
import java.util.Objects;
import java.util.StringJoiner;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Bars;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.scale.Axis;
import org.cairnfield.ui.charts.scale.Scale;
import org.cairnfield.ui.charts.scale.Ticks;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;

/** Lying bars from zero, a row for each place with one bar per group, such as cluster sizes before and after. */
public final class BarChart extends RowChart {

	private Bars bars = new Bars(List.of(), List.of());
	private Axis axis = Axis.linear("", "");
	private int decimals;
	private IntPredicate hollow = place -> false;

	/** Empty until it is given data. */
	public BarChart(Composite parent, int style) {
		super(parent, style);
	}

	/**
	 * @param bars     values not below 0, in the unit of the axis; NaN for none
	 * @param axis     what is counted
	 * @param decimals of the values
	 */
	public void setBars(Bars bars, Axis axis, int decimals) {
		this.bars = Objects.requireNonNull(bars);
		this.axis = Objects.requireNonNull(axis);
		this.decimals = decimals;
		changed();
	}

	/** Which places have hollow bars: those of noise. None at first. */
	public void setHollow(IntPredicate places) {
		hollow = Objects.requireNonNull(places);
		redraw();
	}

	@Override
	public int itemCount() {
		return bars.size();
	}

	@Override
	public String itemText(int item) {
		StringJoiner text = new StringJoiner(", ", bars.labels().get(item) + ": ", "");
		for (int g = 0; g < groups(); g++) {
			text.add((groups() > 1 ? bars.groups().get(g) + ' ' : "") + axis.text(bars.value(g, item), decimals));
		}
		return text.toString();
	}

	@Override
	public String summary() {
		return isEmpty() ? ""
				: NLS.bind(Messages.BarChart_places,
						new Object[] { axis.heading(), String.join(", ", bars.groups()), itemCount() });
	}

	private int groups() {
		return bars.groups().size();
	}

	@Override
	boolean isEmpty() {
		return bars.size() == 0;
	}

	private Key key(Paper paper) {
		List<Legend.Entry> entries = groups() < 2 ? List.of()
				: IntStream.range(0, groups())
						.mapToObj(g -> Legend.Entry.of(bars.groups().get(g), Categorical.style(g))).toList();
		return new Key(paper, entries, paper.width - 2 * paper.gap);
	}

	@Override
	int header(Paper paper) {
		return key(paper).height() + 2 * paper.line + 2 * paper.gap;
	}

	@Override
	int rowHeight(Paper paper) {
		return Math.max(1, groups()) * paper.line + paper.gap;
	}

	@Override
	void draw(Paper paper, Rows rows) {
		double most = 0;
		for (int g = 0; g < groups(); g++) {
			for (int place = 0; place < bars.size(); place++) {
				most = bars.value(g, place) > most ? bars.value(g, place) : most;
			}
		}
		BarColumns columns = BarColumns.fit(paper.width, paper.widest(bars.labels()) + (groups() > 1 ? paper.line : 0),
				paper.width(axis.text(most, decimals)), paper.gap, 1);
		int ticksMost = Math.max(2, columns.barWidth() / (paper.width(axis.text(most, decimals)) * 2));
		Scale scale = axis.between(0, Double.NaN).scale(0, most, ticksMost);
		Ticks ticks = scale.ticks(ticksMost);
		paper.stroke(paper.look.faint(), 1);
		for (int t = 0; t < ticks.size(); t++) {
			int x = columns.bar(0) + (int) Math.round(scale.fraction(ticks.value(t)) * columns.barWidth());
			paper.gc.drawLine(x, rows.header(), x, Math.min(paper.height, rows.top(rows.count())));
		}
		for (int row = rows.first(); row < rows.end(); row++) {
			drawRow(paper, rows, columns, scale, row);
		}
		paper.fill(paper.look.background());
		paper.gc.fillRectangle(0, 0, paper.width, rows.header());
		key(paper).draw(paper.gap, paper.gap);
		int second = rows.header() - paper.line - paper.gap / 2;
		paper.text(axis.heading(), columns.bar(0), second - paper.line, paper.look.foreground());
		for (int t = 0; t < ticks.size(); t++) {
			int x = columns.bar(0) + (int) Math.round(scale.fraction(ticks.value(t)) * columns.barWidth());
			paper.textAround(ticks.label(t), x, second, paper.look.muted());
		}
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawLine(0, rows.header() - 1, paper.width, rows.header() - 1);
	}

	private void drawRow(Paper paper, Rows rows, BarColumns columns, Scale scale, int row) {
		int top = rows.top(row) + paper.gap / 2;
		int labelY = rows.top(row) + (rows.rowHeight() - paper.line) / 2;
		int room = columns.left() - 2 * paper.gap - (groups() > 1 ? paper.line : 0);
		paper.text(paper.fit(bars.labels().get(row), room), paper.gap, labelY, paper.look.foreground());
		for (int g = 0; g < groups(); g++) {
			double value = bars.value(g, row);
			int y = top + g * paper.line;
			Categorical.Style style = Categorical.style(g);
			if (groups() > 1) {
				paper.marker(style.marker(), columns.left() - paper.gap - paper.line * 0.3, y + paper.line / 2.0,
						paper.line * 0.22, style.colour().on(paper.look.background()));
			}
			int length = value > 0 ? columns.length(scale.clamped(value * axis.factor())) : 0;
			if (length > 0) {
				int inset = Math.max(1, paper.line / 8);
				paper.bar(columns.bar(0), y + inset, length, paper.line - 2 * inset,
						style.colour().on(paper.look.background()), hollow.test(row));
			}
			if (columns.valueWidth() > 0) {
				paper.text(axis.text(value, decimals), columns.bar(0) + length + paper.gap, y, paper.look.foreground());
			}
		}
	}
}
