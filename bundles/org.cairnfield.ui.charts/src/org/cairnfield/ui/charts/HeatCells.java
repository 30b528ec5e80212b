package org.cairnfield.ui.charts;

import org.eclipse.swt.graphics.Rectangle;

/** Where the cells of a grid lie: they fill the area without gaps, row 0 at the bottom. */
record HeatCells(Rectangle area, int columns, int rows) {

	static HeatCells fit(Rectangle room, int columns, int rows) {
		return new HeatCells(new Rectangle(room.x, room.y, Math.max(columns, room.width), Math.max(rows, room.height)),
				columns, rows);
	}

	Rectangle bounds(int cell) {
		int column = cell % columns;
		int fromTop = rows - 1 - cell / columns;
		int left = area.x + area.width * column / columns;
		int top = area.y + area.height * fromTop / rows;
		return new Rectangle(left, top, area.x + area.width * (column + 1) / columns - left,
				area.y + area.height * (fromTop + 1) / rows - top);
	}

	/** −1 outside. */
	int at(int x, int y) {
		if (!area.contains(x, y)) {
			return -1;
		}
		for (int cell = 0; cell < columns * rows; cell++) {
			if (bounds(cell).contains(x, y)) {
				return cell;
			}
		}
		return -1;
	}
}
