package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.core.series.Bars;
import org.cairnfield.ui.charts.colour.Categorical;
import org.cairnfield.ui.charts.colour.Contrast;
import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class RowChartsTest {

	private static final double NONE = Double.NaN;
	private static final RGB FIRST = Categorical.style(0).colour().on(Screen.WHITE);
	private static final RGB SECOND = Categorical.style(1).colour().on(Screen.WHITE);

	@RegisterExtension
	final Screen screen = new Screen();

	private PairedBars paired(Fingerprints fingerprints, int height) {
		PairedBars chart = screen.chart(parent -> new PairedBars(parent, SWT.NONE), 500, height);
		chart.setFingerprints(fingerprints);
		return chart;
	}

	/** A line through the middle of a row. */
	private static int middle(Chart chart, int item, int height) {
		int first = IntStream.range(0, height).filter(y -> chart.itemAt(250, y) == item).findFirst().orElseThrow();
		int last = IntStream.range(first, height).takeWhile(y -> chart.itemAt(250, y) == item).max().getAsInt();
		return (first + last) / 2;
	}

	@Test
	void barsAreLongAsTheLevelIsAboveTheFloor() {
		PairedBars chart = paired(new Fingerprints(List.of("S1", "S2"), List.of("A", "B"),
				new double[][] { { -40, -70 }, { -40, -85 } }), 200);
		ImageData picture = chart.snapshot(500, 200);
		int full = Screen.countInLine(picture, FIRST, middle(chart, 0, 200));
		assertTrue(full > 60, "longest bar " + full);
		assertEquals(full * 0.5, Screen.countInLine(picture, FIRST, middle(chart, 1, 200)), 2);
		assertEquals(full * 0.25, Screen.countInLine(picture, SECOND, middle(chart, 1, 200)), 4);
		chart.setFloorDbm(-85);
		picture = chart.snapshot(500, 200);
		assertEquals(full / 3.0, Screen.countInLine(picture, FIRST, middle(chart, 1, 200)), 2);
	}

	@Test
	void whatOneAloneHearsIsHollow() {
		PairedBars chart = paired(new Fingerprints(List.of("S1", "S2"), List.of("A", "B"),
				new double[][] { { -40, -50 }, { -40, NONE } }), 200);
		ImageData picture = chart.snapshot(500, 200);
		int y = middle(chart, 1, 200);
		assertTrue(Screen.countInLine(picture, FIRST, y) < 10, "only the rim");
		assertTrue(Screen.count(picture, FIRST) > 100);
		assertEquals("B: S1 \u221250\u00a0dBm, S2 not heard", chart.itemText(1));
	}

	@Test
	void summarySaysHowManyAreShared() {
		PairedBars chart = paired(new Fingerprints(List.of("S1", "S2"), List.of("A", "B"),
				new double[][] { { -40, -50 }, { -40, NONE } }), 200);
		assertEquals("S1, S2: 2 access points, 1 heard by more than one", chart.summary());
	}

	@Test
	void scrollsToWhatTheKeysChoose() {
		PairedBars chart = paired(Demo.fingerprints(2, 60), 200);
		assertTrue(chart.getVerticalBar().getVisible());
		Screen.press(chart, SWT.END, 0);
		assertEquals(59, chart.getChosen());
		assertEquals(59, chart.itemAt(250, 198));
		assertTrue(chart.getVerticalBar().getSelection() > 0);
		Screen.press(chart, SWT.HOME, 0);
		assertEquals(0, chart.getVerticalBar().getSelection());
		Screen.press(chart, SWT.PAGE_DOWN, 0);
		assertTrue(chart.getChosen() > 3 && chart.getChosen() < 20, "a page is " + chart.getChosen());
	}

	@Test
	void theChosenAccessPointStaysChosenInAnotherOrder() {
		PairedBars chart = paired(Demo.fingerprints(2, 30), 200);
		chart.setChosen(20);
		String label = chart.accessPoints().get(20);
		chart.setOrder(Fingerprints.Order.SHARED_FIRST);
		assertEquals(label, chart.accessPoints().get(chart.getChosen()));
		assertFalse(chart.accessPoints().indexOf(label) == 20, "it has moved");
		chart.setFingerprints(null);
		assertEquals(-1, chart.getChosen());
	}

	@Test
	void fewRowsNeedNoScrollBar() {
		assertFalse(paired(Demo.fingerprints(2, 4), 400).getVerticalBar().getVisible());
	}

	private BarChart sizes() {
		BarChart chart = screen.chart(parent -> new BarChart(parent, SWT.NONE), 500, 300);
		chart.setBars(new Bars(List.of("noise", "C1"), List.of("before", "after"), new double[] { 226, 300 },
				new double[] { 61, NONE }), Axis.linear("Samples", ""), 0);
		chart.setHollow(place -> place == 0);
		return chart;
	}

	@Test
	void barsOfNoiseAreHollow() {
		BarChart chart = sizes();
		ImageData picture = chart.snapshot(500, 300);
		int noise = 0;
		int cluster = 0;
		for (int y = 0; y < 300; y++) {
			int count = Screen.countInLine(picture, FIRST, y);
			noise = chart.itemAt(250, y) == 0 ? noise + count : noise;
			cluster = chart.itemAt(250, y) == 1 ? cluster + count : cluster;
		}
		assertTrue(cluster > 3 * noise, cluster + " filled, " + noise + " hollow");
		RGB rim = Contrast.rim(SECOND, Screen.WHITE);
		assertTrue(Screen.count(picture, rim) > 20, "a rim of the second group");
	}

	@Test
	void tellsValuesByGroup() {
		assertEquals("noise: before 226, after 61", sizes().itemText(0));
		assertEquals("C1: before 300, after \u2013", sizes().itemText(1));
	}
}
