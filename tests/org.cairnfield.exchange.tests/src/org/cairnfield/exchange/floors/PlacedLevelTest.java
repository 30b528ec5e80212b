package org.cairnfield.exchange.floors;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;
import org.junit.jupiter.api.Test;

class PlacedLevelTest {

	private static final SiteFrame.Anchor ORIGIN = new SiteFrame.Anchor(48, 11, 0);
	private static final double MILLIMETRE = 1e-3;

	private static MappedLevel level(double[][]... outerRings) {
		return new MappedLevel("L0", 0, null, List.of(), false,
				List.of(outerRings).stream().map(ring -> List.<double[][]>of(ring)).toList(), List.of());
	}

	private static final double[][] SQUARE = { { 11, 48 }, { 11.001, 48 }, { 11.001, 48.001 }, { 11, 48.001 } };

	/**
	 * East and north from 48°N 11°E by the formulas of EPSG methods 9602 and 9837 (local tangent plane), computed with PROJ's constants
	 * for these tests: a thousandth of a degree in both is E 74.623911 N 111.190816, to the north N 111.190332, to the east E 74.625354.
	 */
	@Test
	void agreesWithTheTangentPlaneToAMillimetre() {
		Polygon outline = PlacedLevel.of(level(SQUARE), ORIGIN).outline().orElseThrow();
		double[][] expected = { { 0, 0 }, { 74.625354, 0.000484 }, { 74.623911, 111.190816 }, { 0, 111.190332 } };
		assertEquals(4, outline.size());
		for (int i = 0; i < 4; i++) {
			assertArrayEquals(expected[i], new double[] { outline.xMetres(i), outline.yMetres(i) }, MILLIMETRE);
		}
	}

	/** With a bearing of 90° y points east, and x south. */
	@Test
	void turnsByTheBearingOfTheSite() {
		Polygon outline = PlacedLevel.of(level(SQUARE), new SiteFrame.Anchor(48, 11, 90)).outline().orElseThrow();
		assertArrayEquals(new double[] { -111.190816, 74.623911 },
				new double[] { outline.xMetres(2), outline.yMetres(2) }, MILLIMETRE);
	}

	@Test
	void goesAroundAllPartsOfALevel() {
		double[][] other = { { 11.002, 48 }, { 11.003, 48 }, { 11.003, 48.001 }, { 11.002, 48.001 } };
		Polygon outline = PlacedLevel.of(level(SQUARE, other), ORIGIN).outline().orElseThrow();
		assertEquals(3 * 74.625 * 111.19, outline.signedArea(), 5, "from the first to the last corner");
		assertTrue(outline.contains(110, 50), "between the two");
	}

	@Test
	void refusesWhatLiesOnAnotherCoast() {
		IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
				() -> PlacedLevel.of(level(SQUARE), new SiteFrame.Anchor(11, 48, 0)));
		assertTrue(e.getMessage().contains(" km from 48.0, 11.0"), e::getMessage); // exchanged coordinates
	}

	/** The south-western corner becomes the origin, so all is in the first quadrant; or the middle goes where samples are. */
	@Test
	void placesAFrameByTheFile() {
		SiteFrame.Anchor corner = FramePlace.of(List.of(level(SQUARE)), null);
		assertArrayEquals(new double[] { 48, 11, 0 },
				new double[] { corner.latitudeDegrees(), corner.longitudeDegrees(), corner.bearingDegrees() }, 1e-8);
		SiteFrame.Anchor middle = FramePlace.of(List.of(level(SQUARE)), new double[] { 30, 12 });
		double[] at = new SiteProjection(middle).metres(11.0005, 48.0005);
		assertArrayEquals(new double[] { 30, 12 }, at, 2 * MILLIMETRE); // a frame elsewhere is turned by the meridians a little
	}

	/** RFC 7946 section 3.1.9: what crosses the 180th meridian has longitudes of both signs. */
	@Test
	void placesABuildingAcrossTheDateLine() {
		double[][] ring = { { 179.9999, 10 }, { -179.9999, 10 }, { -179.9999, 10.0001 }, { 179.9999, 10.0001 } };
		SiteFrame.Anchor anchor = FramePlace.of(List.of(level(ring)), null);
		assertEquals(179.9999, anchor.longitudeDegrees(), 1e-8);
		Polygon outline = PlacedLevel.of(level(ring), anchor).outline().orElseThrow();
		assertEquals(0.0002 * 109_639, outline.xMetres(1), 0.01,
				"a degree of longitude is 109,639 m long at 10° on WGS 84");
	}
}
