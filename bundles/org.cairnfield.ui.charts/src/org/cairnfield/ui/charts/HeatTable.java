package org.cairnfield.ui.charts;

import java.util.List;

import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;

/**
 * Named rows over named columns, each cell a value as colour; rows come in groups with a title. Its items are the rows, which
 * scroll when there are many.
 */
public final class HeatTable extends RowChart {

	/**
	 * A row.
	 *
	 * @param group  title of its group; rows of one group follow each other
	 * @param values by column, NaN for none
	 * @param text   all about it in one line
	 */
	public record Row(String name, String group, double[] values, String text) {
	}

	private static final int NARROWEST_LABELS = 9;

	private final Continuous colours = Continuous.falling();
	private List<String> columns = List.of();
	private List<Row> rows = List.of();
	private Axis axis = Axis.share("");
	private int marked = -1;

	/** Empty until it is given data. */
	public HeatTable(Composite parent, int style) {
		super(parent, style);
	}

	/** @param values what the cells show */
	public void setTable(Axis values, List<String> columns, List<Row> rows) {
		axis = values;
		this.columns = List.copyOf(columns);
		this.rows = List.copyOf(rows);
		changed();
	}

	/** Points out a column, such as that of a change; −1 for none. */
	public void setMarkedColumn(int column) {
		marked = column;
		redraw();
	}

	@Override
	public int itemCount() {
		return rows.size();
	}

	@Override
	boolean isEmpty() {
		return rows.isEmpty();
	}

	@Override
	public String itemText(int item) {
		return rows.get(item).text();
	}

	@Override
	public String summary() {
		return isEmpty() ? ""
				: NLS.bind(Messages.HeatTable_ofRowsOverColumns,
						new Object[] { axis.heading(), rows.size(), columns.size() });
	}

	@Override
	int header(Paper paper) {
		return Ramp.height(paper) + paper.line + 3 * paper.gap;
	}

	@Override
	int rowHeight(Paper paper) {
		return paper.line + Math.max(2, paper.gap / 2);
	}

	@Override
	void draw(Paper paper, Rows shown) {
		int groups = paper.widest(rows.stream().map(Row::group).distinct().toList()) + paper.gap;
		int names = Math.min(paper.widest(rows.stream().map(Row::name).toList()), NARROWEST_LABELS * paper.line)
				+ paper.gap;
		int left = groups + names + 2 * paper.gap;
		int room = Math.max(columns.size(), paper.width - left - paper.gap);
		String group = "";
		for (int row = shown.first(); row < shown.end(); row++) {
			Row one = rows.get(row);
			int top = shown.top(row);
			int text = top + (shown.rowHeight() - paper.line) / 2;
			if (!one.group().equals(group)) { // the first that shows has the title, so that it is always there
				group = one.group();
				paper.text(group, paper.gap, Math.max(text, shown.header()), paper.look.foreground());
				paper.stroke(paper.look.line(), 1);
				paper.gc.drawLine(0, top, paper.width, top);
			}
			paper.text(paper.fit(one.name(), names), groups + paper.gap, text, paper.look.muted());
			for (int column = 0; column < columns.size(); column++) {
				int x = left + room * column / columns.size();
				cell(paper, one.values()[column], x, top + 1, left + room * (column + 1) / columns.size() - x - 1,
						shown.rowHeight() - 2);
			}
		}
		paper.fill(paper.look.background());
		paper.gc.fillRectangle(0, 0, paper.width, shown.header());
		drawHeader(paper, shown, left, room);
	}

	private void cell(Paper paper, double value, int x, int y, int wide, int high) {
		if (Double.isNaN(value)) {
			paper.stroke(paper.look.line(), 1); // not visited: a stroke, so that it is no colour of the ramp
			paper.gc.drawLine(x + wide / 3, y + high / 2, x + 2 * wide / 3, y + high / 2);
			return;
		}
		RGB fill = value == 0 ? paper.look.background() : colours.rgb(value);
		paper.fill(fill);
		paper.gc.fillRectangle(x, y, wide, high);
		paper.stroke(value == 0 ? paper.look.line() : Contrast.rim(fill, paper.look.background()), 1);
		paper.gc.drawRectangle(x, y, wide - 1, high - 1);
	}

	private void drawHeader(Paper paper, Rows shown, int left, int room) {
		new Ramp(colours, axis, axis.scale(0, 1, 5)).draw(paper, paper.gap, paper.gap, paper.width - 2 * paper.gap);
		int top = shown.header() - paper.line - paper.gap;
		int free = 0;
		for (int column = 0; column < columns.size(); column++) {
			int middle = left + room * (2 * column + 1) / (2 * columns.size());
			int wide = paper.width(columns.get(column));
			boolean isMarked = column == marked;
			if (isMarked) {
				paper.stroke(paper.look.foreground(), 2);
				paper.gc.drawLine(left + room * column / columns.size(), shown.header() - 2,
						left + room * (column + 1) / columns.size() - 1,
						shown.header() - 2);
			}
			int from = Math.max(0, Math.min(paper.width - wide, middle - wide / 2));
			boolean coversMarked = marked > column
					&& from + wide + paper.gap > left + room * (2 * marked + 1) / (2 * columns.size()) - wide / 2;
			if (from >= free && !coversMarked) { // labels that would touch are left out
				paper.text(columns.get(column), from, top, isMarked ? paper.look.foreground() : paper.look.muted());
				free = from + wide + paper.gap;
			}
		}
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawLine(0, shown.header() - 1, paper.width, shown.header() - 1);
	}
}
