package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Continuous;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class GridMapTest {

	@RegisterExtension
	final Screen screen = new Screen();

	private GridMap grid() {
		GridMap chart = screen.chart(parent -> new GridMap(parent, SWT.NONE), 400, 300);
		chart.setAxes(Axis.linear("ε", "dB"), Axis.linear("minPts", ""), Axis.share("Noise share"), 1);
		chart.setGrid(new CellGrid(new double[] { 6, 6.5, 7 }, new double[] { 3, 5 },
				new double[][] { { 0, 0.5, 1 }, { 0.25, 0.125, Double.NaN } }));
		return chart;
	}

	@Test
	void cellsHaveTheColourOfTheirValue() {
		ImageData picture = grid().snapshot(400, 300);
		for (double value : new double[] { 0, 0.5, 1, 0.25, 0.125 }) {
			assertTrue(Screen.count(picture, Continuous.rising().rgb(value)) > 2000, "cell of " + value);
		}
	}

	@Test
	void arrowsWalkTheGrid() {
		GridMap chart = grid();
		List<Integer> told = new ArrayList<>();
		chart.onChosen(told::add);
		for (int key : new int[] { SWT.ARROW_DOWN, SWT.ARROW_UP, SWT.ARROW_RIGHT, SWT.ARROW_UP, SWT.END,
				SWT.ARROW_DOWN }) {
			Screen.press(chart, key, 0);
		}
		assertEquals(List.of(0, 3, 4, 5, 2), told);
	}

	@Test
	void theFirstKeyGoesToTheMarkedCell() {
		GridMap chart = grid();
		chart.setMarked(4, "suggested");
		Screen.press(chart, SWT.ARROW_DOWN, 0);
		assertEquals(4, chart.getChosen());
		assertEquals("ε 6.5\u00a0dB, minPts 5: Noise share 12.5\u00a0% (suggested)", chart.spokenValue());
	}

	@Test
	void clickingChoosesTheCellUnderThePointer() {
		GridMap chart = grid();
		chart.snapshot(400, 300);
		Screen.mouse(chart, SWT.MouseDown, 385, 240);
		assertEquals(2, chart.getChosen());
		assertEquals("ε 7.0\u00a0dB, minPts 3: Noise share 100.0\u00a0%", chart.itemText(2));
	}

	@Test
	void theChosenCellHasAFrame() {
		GridMap chart = grid();
		int before = Screen.count(chart.snapshot(400, 300), Screen.BLACK);
		chart.setChosen(1);
		assertTrue(Screen.count(chart.snapshot(400, 300), Screen.BLACK) > before + 200);
	}

	@Test
	void saysWhereThereIsNoValueYet() {
		assertEquals("ε 7.0\u00a0dB, minPts 5: no value", grid().itemText(5));
	}

	@Test
	void aLegendNeedsMoreLinesWhenNarrow() {
		Legend legend = screen.chart(parent -> new Legend(parent, SWT.NONE), 300, 100);
		List<Legend.Entry> entries = new ArrayList<>();
		for (int i = 0; i < 8; i++) {
			entries.add(Legend.Entry.of("cluster " + i, Categorical.style(i)));
		}
		entries.add(Legend.Entry.noise("noise"));
		legend.setEntries(entries);
		assertTrue(legend.computeSize(150, SWT.DEFAULT).y > 2 * legend.computeSize(2000, SWT.DEFAULT).y);
		ImageData picture = legend.snapshot(300, 200);
		for (Categorical colour : Categorical.values()) {
			assertTrue(Screen.count(picture, colour.on(Screen.WHITE)) > 8, colour.toString());
		}
	}
}
