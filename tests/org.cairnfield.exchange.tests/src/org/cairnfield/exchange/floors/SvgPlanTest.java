package org.cairnfield.exchange.floors;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SvgPlanTest {

	private static final SiteFrame.Anchor HERE = new SiteFrame.Anchor(40, -40, 20);
	private static final SiteProjection PROJECTION = new SiteProjection(HERE);

	private static double[][] path(double... xy) {
		double[][] path = new double[xy.length / 2][];
		for (int i = 0; i < path.length; i++) {
			path[i] = PROJECTION.lonLat(xy[2 * i], xy[2 * i + 1]);
		}
		return path;
	}

	private static SvgPlan plan(double width, double depth, MappedShape... shapes) {
		List<double[][]> polygon = List.<double[][]>of(path(0, 0, width, 0, width, depth, 0, depth));
		return SvgPlan.of(PlacedLevel
				.of(new MappedLevel("L0", 0, null, List.of(), false, List.of(polygon), List.of(shapes)), HERE));
	}

	private static Element parsed(SvgPlan plan) throws Exception {
		ByteArrayInputStream bytes = new ByteArrayInputStream(plan.text().getBytes(StandardCharsets.UTF_8));
		return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(bytes).getDocumentElement();
	}

	/** A metre around 40 by 20 metres, at 5 cm a pixel; the view box is in metres and exactly as large. */
	@Test
	void drawsMetresToScale() throws Exception {
		SvgPlan plan = plan(40, 20);
		Element svg = parsed(plan);
		assertEquals("840", svg.getAttribute("width"));
		assertEquals("440", svg.getAttribute("height"));
		assertEquals("-1 -21 42 22", svg.getAttribute("viewBox"));
		assertArrayEquals(new double[] { 0.05, -1, 21 },
				new double[] { plan.metresPerPixel(), plan.xMetres(), plan.yMetres() }, 1e-9);
		assertEquals("M0 0L40 0L40 -20L0 -20Z", ((Element) svg.getElementsByTagName("path").item(0)).getAttribute("d"));
	}

	@Test
	void drawsDoorsOverWalls() throws Exception {
		SvgPlan plan = plan(40, 20,
				new MappedShape(DrawnAs.OPENING, "O", false, List.<double[][]>of(path(5, 8, 6.4, 8))),
				new MappedShape(DrawnAs.ROOM, "U", true,
						List.of(path(0, 0, 10, 0, 10, 8, 0, 8), path(2, 2, 3, 3, 3, 2))));
		String room = " d=\"M0 0L10 0L10 -8L0 -8ZM2 -2L3 -3L3 -2Z\"/>";
		String door = " d=\"M5 -8L6.4 -8\"/>";
		assertTrue(plan.text().contains(room), plan::text);
		assertTrue(plan.text().indexOf(door) > plan.text().indexOf(room),
				"a door is drawn last, whatever the order of the file");
		assertTrue(plan.text().indexOf("stroke=\"#ffffff\"") > plan.text().indexOf(room), "as a gap");
		assertTrue(plan.text().lastIndexOf(door) > plan.text().indexOf(door), "with a line in it");
	}

	/** A terminal of a kilometre becomes a picture that can be held in memory. */
	@Test
	void drawsLargeFloorsCoarser() {
		SvgPlan plan = plan(1000, 600);
		assertEquals(0.4, plan.metresPerPixel(), 1e-9);
		assertTrue(plan.text().contains("width=\"2505\""), plan::text);
	}

	/** The reader of the workbench takes 2,000 elements and no more. */
	@Test
	void drawsAnyNumberOfRoomsInFewElements() throws Exception {
		MappedShape[] rooms = new MappedShape[5000];
		for (int i = 0; i < rooms.length; i++) {
			double x = i % 100;
			double y = i / 100;
			rooms[i] = new MappedShape(DrawnAs.ROOM, "U" + i, true,
					List.<double[][]>of(path(x, y, x + 1, y, x + 1, y + 1, x, y + 1)));
		}
		assertEquals(2, parsed(plan(100, 50, rooms)).getElementsByTagName("path").getLength(),
				"the rooms and the outline");
	}

	@Test
	void drawsNothingOfNothing() {
		assertNull(SvgPlan
				.of(PlacedLevel.of(new MappedLevel("L0", 0, null, List.of(), false, List.of(), List.of()), HERE)));
	}
}
