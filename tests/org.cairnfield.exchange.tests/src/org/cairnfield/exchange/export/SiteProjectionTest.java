package org.cairnfield.exchange.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.locationtech.proj4j.BasicCoordinateTransform;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.ProjCoordinate;

class SiteProjectionTest {

	/** IOGP Guidance Note 7-2, example of method 9807: 50°30'N 0°30'E. The scale printed there is rounded: 1 cm. */
	@Test
	void projectsTheWorkedExampleOfEpsgMethod9807() {
		CRSFactory factory = new CRSFactory();
		String ellipsoid = " +a=6377563.396 +b=" + 6377563.396 * (1 - 1 / 299.32496) + " +towgs84=0,0,0 +no_defs";
		CoordinateReferenceSystem grid = factory.createFromParameters("example",
				"+proj=tmerc +lat_0=49 +lon_0=-2 +k_0=0.9996013 +x_0=400000 +y_0=-100000 +units=m" + ellipsoid);
		CoordinateReferenceSystem earth = factory.createFromParameters("earth", "+proj=longlat" + ellipsoid);
		ProjCoordinate to = new BasicCoordinateTransform(earth, grid).transform(new ProjCoordinate(0.5, 50.5),
				new ProjCoordinate());
		assertEquals(577274.99, to.x, 0.01);
		assertEquals(69740.50, to.y, 0.01);
		ProjCoordinate back = new BasicCoordinateTransform(grid, earth).transform(to, new ProjCoordinate());
		assertEquals(0.5, back.x, 1e-7);
		assertEquals(50.5, back.y, 1e-7);
	}

	/**
	 * East and north of 48.001°N 11.001°E from 48°N 11°E by the formulas of EPSG methods 9602 and 9837 (local tangent plane),
	 * computed for this test. Tangent plane and transverse Mercator differ by less than 0.1 mm there.
	 */
	@Test
	void agreesWithTheTangentPlaneCloseToTheOrigin() {
		double[] metres = new SiteProjection(new SiteFrame.Anchor(48, 11, 0)).metres(11.001, 48.001);
		assertEquals(74.623911, metres[0], 1e-3);
		assertEquals(111.190816, metres[1], 1e-3);
	}

	@Test
	void turnsTheFrameByItsBearing() {
		// y points east, x south
		SiteProjection turned = new SiteProjection(new SiteFrame.Anchor(40, -40, 90));
		double[] alongY = turned.lonLat(0, 100);
		double[] alongX = turned.lonLat(100, 0);
		assertEquals(40, alongY[1], 1e-7);
		assertEquals(-40 + 100 / (111319.490793 * Math.cos(Math.toRadians(40)) * 1.00138), alongY[0], 1e-7);
		assertEquals(-40, alongX[0], 1e-12);
		assertEquals(40 - 100 / 111035.0, alongX[1], 1e-7); // a degree of latitude at 40° is 111,035 m long on WGS 84
	}

	@Test
	void comesBackToATenthOfAMillimetreOverAKilometre() {
		for (double bearing : new double[] { 0, 33.3, 271 }) {
			for (double latitude : new double[] { -71, 0, 52.6 }) {
				SiteProjection projection = new SiteProjection(new SiteFrame.Anchor(latitude, 179.99, bearing));
				double[] earth = projection.lonLat(-612.25, 1000);
				assertArrayEquals(new double[] { -612.25, 1000 }, projection.metres(earth[0], earth[1]), 1e-4);
			}
		}
	}

	@Test
	void refusesWhatIsNoPlace() {
		assertThrows(IllegalArgumentException.class, () -> new SiteProjection(new SiteFrame.Anchor(90, 0, 0)));
		assertThrows(IllegalArgumentException.class, () -> new SiteProjection(new SiteFrame.Anchor(Double.NaN, 0, 0)));
	}
}
