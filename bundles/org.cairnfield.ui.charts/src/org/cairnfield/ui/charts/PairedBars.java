package org.cairnfield.ui.charts;

import java.util.List;
import java.util.StringJoiner;

import org.cairnfield.ui.charts.Fingerprints.Order;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.charts.scale.Scale;
import org.cairnfield.ui.charts.scale.Ticks;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;

/**
 * Fingerprints side by side: a row for each access point, a column of bars for each sample, all from the same floor
 * level up. An access point that one sample alone hears has a hollow bar, and the other samples say so.
 */
public final class PairedBars extends RowChart {

	/** Bars begin here unless set otherwise. */
	public static final double USUAL_FLOOR_DBM = -100;

	private static final String UNIT = "dBm";
	private static final String NOT_HEARD = Messages.PairedBars_notHeard;

	private Fingerprints data;
	private Fingerprints shown;
	private Order order = Order.STRENGTH;
	private double floorDbm = USUAL_FLOOR_DBM;

	/** Empty until it is given data. */
	public PairedBars(Composite parent, int style) {
		super(parent, style);
	}

	/** Null for nothing. */
	public void setFingerprints(Fingerprints fingerprints) {
		data = fingerprints;
		sort();
	}

	/** In which order access points are listed. */
	public void setOrder(Order order) {
		this.order = order;
		sort();
	}

	/** The level at which bars have no length. */
	public void setFloorDbm(double levelDbm) {
		floorDbm = levelDbm;
		redraw();
	}

	/** The chosen access point stays chosen wherever it comes to lie. */
	private void sort() {
		String chosen = getChosen() < 0 ? null : shown.accessPoints().get(getChosen());
		shown = data == null ? null : data.sorted(order);
		changed();
		setChosen(chosen == null ? -1 : accessPoints().indexOf(chosen));
	}

	/** The access points, from top to bottom; items are their numbers. */
	public List<String> accessPoints() {
		return shown == null ? List.of() : shown.accessPoints();
	}

	@Override
	public int itemCount() {
		return accessPoints().size();
	}

	@Override
	boolean isEmpty() {
		return itemCount() == 0;
	}

	@Override
	public String itemText(int item) {
		StringJoiner text = new StringJoiner(", ", shown.accessPoints().get(item) + ": ", "");
		for (int s = 0; s < shown.samples().size(); s++) {
			double level = shown.levelDbm(s, item);
			text.add(shown.samples().get(s) + ' ' + (Double.isNaN(level) ? NOT_HEARD : level(level)));
		}
		return text.toString();
	}

	@Override
	public String summary() {
		if (isEmpty()) {
			return "";
		}
		int samples = shown.samples().size();
		String heard = itemCount()
				+ (itemCount() == 1 ? Messages.PairedBars_accessPoint : Messages.PairedBars_accessPoints);
		return String.join(", ", shown.samples()) + ": " + heard
				+ (samples == 1 ? "" : NLS.bind(Messages.PairedBars_heardByMoreThanOne, shown.shared()));
	}

	private static String level(double levelDbm) {
		return level(levelDbm, UNIT);
	}

	private static String level(double levelDbm, String unit) {
		return ShownNumbers.text(levelDbm, levelDbm == Math.rint(levelDbm) ? 0 : 1, unit);
	}

	@Override
	int header(Paper paper) {
		return 2 * paper.line + 2 * paper.gap;
	}

	@Override
	int rowHeight(Paper paper) {
		return paper.line + Math.max(2, paper.gap / 2);
	}

	@Override
	void draw(Paper paper, Rows rows) {
		int end = paper.width("\u2212100");
		int labels = Math.max(paper.widest(shown.accessPoints()), paper.width(UNIT) + end / 2);
		// narrow columns do without the unit at each value; it stands in the header
		String unit = UNIT;
		BarColumns columns = BarColumns.fit(paper.width, labels, paper.width(level(-99.5)), paper.gap,
				shown.samples().size());
		if (columns.valueWidth() == 0) {
			unit = "";
			columns = BarColumns.fit(paper.width, labels, paper.width(level(-99, unit)), paper.gap,
					shown.samples().size());
		}
		double top = 10 * Math.ceil(strongest() / 10);
		Scale scale = Scale.linear(floorDbm, Math.max(top, floorDbm + 20));
		Ticks ticks = scale.ticks(Math.max(2, columns.barWidth() * 4 / (5 * end)));
		for (int s = 0; s < shown.samples().size(); s++) {
			paper.stroke(paper.look.faint(), 1);
			for (int t = 0; t < ticks.size(); t++) {
				int x = columns.bar(s) + (int) Math.round(scale.fraction(ticks.value(t)) * columns.barWidth());
				paper.gc.drawLine(x, rows.header(), x, Math.min(paper.height, rows.top(rows.count())));
			}
		}
		for (int row = rows.first(); row < rows.end(); row++) {
			drawRow(paper, rows, columns, scale, row, unit);
		}
		paper.fill(paper.look.background());
		paper.gc.fillRectangle(0, 0, paper.width, rows.header());
		drawHeader(paper, rows, columns, scale, ticks);
	}

	private double strongest() {
		double strongest = Double.NEGATIVE_INFINITY;
		for (int ap = 0; ap < itemCount(); ap++) {
			strongest = Math.max(strongest, shown.strongestDbm(ap));
		}
		return strongest;
	}

	private void drawHeader(Paper paper, Rows rows, BarColumns columns, Scale scale, Ticks ticks) {
		int second = paper.gap + paper.line;
		for (int s = 0; s < shown.samples().size(); s++) {
			int x = columns.bar(s);
			Categorical.Style style = Categorical.style(s);
			double radius = paper.line * 0.28;
			paper.marker(style.marker(), x + radius, paper.gap + paper.line / 2.0, radius,
					style.colour().on(paper.look.background()));
			int text = x + paper.line;
			paper.text(paper.fit(shown.samples().get(s), columns.pitch() - paper.line - paper.gap), text, paper.gap,
					paper.look.foreground());
			for (int t = 0; t < ticks.size(); t++) {
				int at = x + (int) Math.round(scale.fraction(ticks.value(t)) * columns.barWidth());
				if (at + paper.width(ticks.label(t)) <= columns.bar(s + 1)) {
					paper.textAround(ticks.label(t), at, second, paper.look.muted());
				}
			}
		}
		paper.textBefore(UNIT, columns.left() - paper.gap - paper.width("\u2212100") / 2, second, paper.look.muted());
		paper.stroke(paper.look.line(), 1);
		paper.gc.drawLine(0, rows.header() - 1, paper.width, rows.header() - 1);
	}

	private void drawRow(Paper paper, Rows rows, BarColumns columns, Scale scale, int row,
			String unit) {
		int y = rows.top(row);
		int textY = y + (rows.rowHeight() - paper.line) / 2;
		boolean alone = shown.isHeardByOneOnly(row);
		int room = columns.left() - 2 * paper.gap;
		paper.text(paper.fit(shown.accessPoints().get(row), room), paper.gap, textY,
				alone ? paper.look.muted() : paper.look.foreground());
		for (int s = 0; s < shown.samples().size(); s++) {
			double level = shown.levelDbm(s, row);
			int x = columns.bar(s);
			if (Double.isNaN(level)) {
				paper.text(paper.fit(NOT_HEARD, columns.pitch() - paper.gap), x, textY, paper.look.muted());
				continue;
			}
			int length = columns.length(scale.clamped(level));
			int inset = Math.max(1, rows.rowHeight() / 6);
			RGB rgb = Categorical.style(s).colour().on(paper.look.background());
			paper.bar(x, y + inset, length, rows.rowHeight() - 2 * inset, rgb, alone);
			if (columns.valueWidth() > 0) {
				paper.text(level(level, unit), x + length + paper.gap, textY, paper.look.foreground());
			}
		}
	}
}
