package org.cairnfield.ui.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.ui.charts.scale.Axis;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class ChartTest {

	@RegisterExtension
	final Screen screen = new Screen();

	private Histogram histogram() {
		Histogram chart = screen.chart(parent -> new Histogram(parent, SWT.NONE), 300, 200);
		chart.setBins(Bins.of(new double[] { -71, -71, -68, -65 }, 2), Axis.linear("Level", "dBm"), "Readings");
		return chart;
	}

	@Test
	void anEmptyChartShowsItsText() {
		Histogram chart = screen.chart(parent -> new Histogram(parent, SWT.NONE), 300, 200);
		assertEquals(300 * 200, Screen.count(chart.snapshot(300, 200), Screen.WHITE));
		chart.setEmptyText("Select an access point to see its levels.");
		assertTrue(Screen.count(chart.snapshot(300, 200), Screen.WHITE) < 300 * 200 - 100);
	}

	@Test
	void usesTheColoursOfTheControl() {
		Histogram chart = histogram();
		chart.setBackground(new Color(30, 31, 34));
		chart.setForeground(new Color(220, 221, 224));
		ImageData picture = chart.snapshot(300, 200);
		assertEquals(new RGB(30, 31, 34), Screen.pixel(picture, 0, 0));
		assertTrue(Screen.count(picture, new RGB(220, 221, 224)) > 5, "text in the foreground colour");
		assertEquals(0, Screen.count(picture, Screen.BLACK));
	}

	@Test
	void followsThePlatformUntilToldOtherwise() {
		Histogram chart = histogram();
		chart.setBackground(null);
		RGB expected = chart.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
		assertEquals(expected, Screen.pixel(chart.snapshot(50, 50), 0, 0));
	}

	@Test
	void growsWithTheFont() {
		PairedBars chart = screen.chart(parent -> new PairedBars(parent, SWT.NONE), 400, 300);
		chart.setFingerprints(Demo.fingerprints(2, 30));
		chart.snapshot(400, 300);
		int before = chart.itemAt(200, 290);
		FontData[] data = chart.getFont().getFontData();
		data[0].setHeight(data[0].getHeight() * 2);
		Font large = new Font(chart.getDisplay(), data);
		try {
			chart.setFont(large);
			chart.snapshot(400, 300);
			assertTrue(chart.itemAt(200, 290) < before * 2 / 3, "rows are higher");
		} finally {
			chart.dispose();
			large.dispose();
		}
	}

	@Test
	void keysChooseAndListenersAreTold() {
		Histogram chart = histogram();
		List<Integer> told = new ArrayList<>();
		chart.onChosen(told::add);
		Screen.press(chart, SWT.ARROW_RIGHT, 0);
		Screen.press(chart, SWT.ARROW_RIGHT, 0);
		Screen.press(chart, SWT.END, 0);
		Screen.press(chart, SWT.ARROW_RIGHT, 0);
		assertEquals(List.of(0, 1, chart.itemCount() - 1), told, "the end is not chosen twice");
		assertEquals(chart.itemText(chart.getChosen()), chart.spokenValue());
	}

	@Test
	void keysWithModifiersAreLeftToOthers() {
		Histogram chart = histogram();
		Screen.press(chart, SWT.ARROW_RIGHT, SWT.MOD1);
		assertEquals(-1, chart.getChosen());
	}

	@Test
	void choosingByProgramTellsNobody() {
		Histogram chart = histogram();
		List<Integer> told = new ArrayList<>();
		chart.onChosen(told::add);
		chart.setChosen(1);
		assertEquals(1, chart.getChosen());
		chart.setChosen(99);
		assertEquals(-1, chart.getChosen());
		assertEquals(List.of(), told);
	}

	@Test
	void hoveringShowsAndHidesTheItemsText() {
		Histogram chart = histogram();
		chart.snapshot(300, 200);
		Screen.mouse(chart, SWT.MouseMove, 60, 120);
		assertEquals("\u221272 to \u221270\u00a0dBm: 2 readings", chart.getToolTipText());
		Screen.mouse(chart, SWT.MouseMove, 1, 1);
		assertNull(chart.getToolTipText());
	}

	@Test
	void assistiveTechnologyIsToldNameSummaryAndChosenItem() {
		Histogram chart = histogram();
		chart.setName("Levels of AP 14");
		chart.setChosen(0);
		AccessibleListener names = Spoken.names(chart::getName, chart::description);
		AccessibleEvent event = new AccessibleEvent(chart);
		names.getName(event);
		assertEquals("Levels of AP 14", event.result);
		names.getDescription(event);
		assertEquals("Readings over Level (dBm): 4 from \u221272\u00a0dBm to \u221264\u00a0dBm", event.result);
		AccessibleControlEvent value = new AccessibleControlEvent(chart);
		AccessibleControlListener values = Spoken.values(chart::spokenValue);
		values.getRole(value);
		assertEquals(ACC.ROLE_GRAPHIC, value.detail);
		values.getValue(value);
		assertEquals("\u221272 to \u221270\u00a0dBm: 2 readings", value.result);
	}

	@Test
	void whatNoLongerExistsIsNotChosen() {
		Histogram chart = histogram();
		chart.setChosen(2);
		chart.setBins(Bins.of(new double[] { 1 }, 1), Axis.linear("Level", "dBm"), "Readings");
		assertEquals(-1, chart.getChosen());
	}
}
