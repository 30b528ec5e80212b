package org.cairnfield.exchange.export;

import java.util.Locale;

import org.locationtech.proj4j.BasicCoordinateTransform;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.ProjCoordinate;

/**
 * From metres in the frame of a site to WGS 84 and back. The frame is turned by its bearing into the plane of a transverse
 * Mercator projection (EPSG method 9807) with its origin at the site and scale 1 there. Over a kilometre that plane differs from
 * the ground by less than a tenth of a millimetre.
 */
public final class SiteProjection {

	private final BasicCoordinateTransform toEarth;
	private final BasicCoordinateTransform toPlane;
	private final double cos;
	private final double sin;

	/** @throws IllegalArgumentException for an anchor that is no place on Earth, or a pole */
	public SiteProjection(SiteFrame.Anchor anchor) {
		if (!(Math.abs(anchor.latitudeDegrees()) < 90) || !(Math.abs(anchor.longitudeDegrees()) <= 180)) {
			throw new IllegalArgumentException("no place that a frame can have: " + anchor);
		}
		CRSFactory factory = new CRSFactory();
		CoordinateReferenceSystem plane = factory.createFromParameters("site", String.format(Locale.ROOT,
				"+proj=tmerc +lat_0=%.12f +lon_0=%.12f +k_0=1 +x_0=0 +y_0=0 +ellps=WGS84 +towgs84=0,0,0 +units=m +no_defs",
				anchor.latitudeDegrees(), anchor.longitudeDegrees()));
		CoordinateReferenceSystem earth = factory.createFromParameters("WGS 84",
				"+proj=longlat +ellps=WGS84 +towgs84=0,0,0 +no_defs");
		toEarth = new BasicCoordinateTransform(plane, earth);
		toPlane = new BasicCoordinateTransform(earth, plane);
		cos = Math.cos(Math.toRadians(anchor.bearingDegrees()));
		sin = Math.sin(Math.toRadians(anchor.bearingDegrees()));
	}

	/** {longitude, latitude} in degrees, the order of RFC 7946. */
	public double[] lonLat(double xMetres, double yMetres) {
		ProjCoordinate to = new ProjCoordinate();
		toEarth.transform(new ProjCoordinate(xMetres * cos + yMetres * sin, yMetres * cos - xMetres * sin), to);
		return new double[] { to.x, to.y };
	}

	/** {x, y} in metres of the frame. */
	public double[] metres(double longitudeDegrees, double latitudeDegrees) {
		ProjCoordinate to = new ProjCoordinate();
		toPlane.transform(new ProjCoordinate(longitudeDegrees, latitudeDegrees), to);
		return new double[] { to.x * cos - to.y * sin, to.x * sin + to.y * cos };
	}
}
