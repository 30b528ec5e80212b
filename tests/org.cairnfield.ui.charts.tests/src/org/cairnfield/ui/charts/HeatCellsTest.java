package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class HeatCellsTest {

	private final HeatCells cells = HeatCells.fit(new Rectangle(10, 20, 100, 61), 3, 2);

	@Test
	void rowZeroIsAtTheBottom() {
		assertEquals(81, cells.bounds(0).y + cells.bounds(0).height);
		assertEquals(20, cells.bounds(3).y);
	}

	@Test
	void cellsFillTheAreaWithoutGaps() {
		int covered = 0;
		for (int cell = 0; cell < 6; cell++) {
			covered += cells.bounds(cell).width * cells.bounds(cell).height;
		}
		assertEquals(100 * 61, covered);
	}

	@Test
	void findsTheCellUnderThePointer() {
		for (int cell = 0; cell < 6; cell++) {
			Rectangle box = cells.bounds(cell);
			assertEquals(cell, cells.at(box.x, box.y));
			assertEquals(cell, cells.at(box.x + box.width - 1, box.y + box.height - 1));
		}
		assertEquals(-1, cells.at(9, 30));
	}

	@Test
	void gridRefusesShapesThatDoNotAgree() {
		assertThrows(IllegalArgumentException.class,
				() -> new CellGrid(new double[2], new double[1], new double[1][3]));
		assertThrows(IllegalArgumentException.class,
				() -> new CellGrid(new double[2], new double[1], new double[2][2]));
	}

	@Test
	void gridNumbersCellsFromTheLeftBottom() {
		CellGrid grid = new CellGrid(new double[] { 1, 2, 3 }, new double[] { 10, 20 },
				new double[][] { { 1, 2, 3 }, { 4, 5, 6 } });
		assertEquals(6, grid.size());
		assertEquals(4, grid.value(grid.cell(0, 1)), 0);
		assertEquals(1, grid.column(4));
		assertEquals(1, grid.row(4));
	}
}
