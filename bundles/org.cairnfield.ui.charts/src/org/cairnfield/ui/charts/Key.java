package org.cairnfield.ui.charts;

import java.util.List;

import org.cairnfield.ui.charts.colour.Categorical;
import org.eclipse.swt.graphics.RGB;

/** Draws what shapes and colours mean: a flow of entries. */
final class Key {

	private final Paper paper;
	private final List<Legend.Entry> entries;
	private final Flow flow;

	Key(Paper paper, List<Legend.Entry> entries, int room) {
		this.paper = paper;
		this.entries = entries;
		flow = new Flow(entries.stream().map(entry -> symbol() + paper.width(entry.text())).toList(), 2 * paper.gap,
				room);
	}

	private int symbol() {
		return paper.line + paper.gap;
	}

	int height() {
		return flow.lines() * paper.line;
	}

	void draw(int left, int top) {
		for (int i = 0; i < entries.size(); i++) {
			Legend.Entry entry = entries.get(i);
			int x = left + flow.x(i);
			int y = top + flow.line(i) * paper.line;
			symbol(entry, x + paper.line / 2.0, y + paper.line / 2.0);
			paper.text(entry.text(), x + symbol(), y, paper.look.foreground());
		}
	}

	private void symbol(Legend.Entry entry, double x, double y) {
		double radius = paper.line * 0.28;
		if (entry.style() == null) {
			paper.ring(x, y, radius, paper.look.foreground());
			return;
		}
		Categorical.Style style = entry.style();
		RGB rgb = style.colour().on(paper.look.background());
		if (entry.line()) {
			Polyline dash = new Polyline();
			dash.add((float) (x - paper.line * 0.6), (float) y);
			dash.add((float) (x + paper.line * 0.6), (float) y);
			dash.draw(paper, rgb);
		}
		paper.marker(style.marker(), x, y, radius, rgb);
	}
}
