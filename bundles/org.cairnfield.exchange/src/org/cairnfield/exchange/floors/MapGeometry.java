package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.cairnfield.core.text.Words;

/**
 * Polygons and lines of features (RFC 7946 section 3.1). Heights are left out. Rings of either winding are taken, as section 3.1.6 asks,
 * and made such as it has them: outer ones counter-clockwise, holes clockwise.
 */
final class MapGeometry {

	private static final String WRITE_ANEW = Messages.MapGeometry_writeItAsRfc7946;

	private MapGeometry() {
	}

	/** Polygons, each its rings, the outer one first; a ring does not repeat its first position. */
	static List<List<double[][]>> polygons(MapFeature feature) throws UnfitShapeException {
		JsonObject geometry = geometry(feature);
		String type = type(geometry);
		List<List<double[][]>> polygons = new ArrayList<>();
		if (type.equals("Polygon")) {
			polygons.add(rings(array(geometry.get("coordinates"))));
		} else if (type.equals("MultiPolygon")) {
			for (JsonElement each : array(geometry.get("coordinates"))) {
				polygons.add(rings(array(each)));
			}
		} else {
			throw new UnfitShapeException(Words.bind(Messages.MapGeometry_itsGeometryIsANot, type),
					Messages.MapGeometry_drawItsArea);
		}
		if (polygons.isEmpty()) {
			throw new UnfitShapeException(Messages.MapGeometry_itsGeometryHasNoPolygon,
					Messages.MapGeometry_drawItsArea);
		}
		return polygons;
	}

	/** Lines of at least two positions. */
	static List<double[][]> lines(MapFeature feature) throws UnfitShapeException {
		JsonObject geometry = geometry(feature);
		String type = type(geometry);
		List<double[][]> lines = new ArrayList<>();
		if (type.equals("LineString")) {
			lines.add(line(geometry.get("coordinates")));
		} else if (type.equals("MultiLineString")) {
			for (JsonElement each : array(geometry.get("coordinates"))) {
				lines.add(line(each));
			}
		} else {
			throw new UnfitShapeException(Words.bind(Messages.MapGeometry_itsGeometryIsANot2, type),
					Messages.MapGeometry_drawItAsALine);
		}
		return lines;
	}

	/** The type, or "" for a feature without geometry. */
	static String type(MapFeature feature) {
		return feature.geometry().map(MapGeometry::type).orElse("");
	}

	private static JsonObject geometry(MapFeature feature) throws UnfitShapeException {
		return feature.geometry()
				.orElseThrow(() -> new UnfitShapeException(Messages.MapGeometry_itHasNoGeometry,
						Messages.MapGeometry_drawItsAreaOrLeave));
	}

	private static String type(JsonObject geometry) {
		JsonElement type = geometry.get("type");
		return type != null && type.isJsonPrimitive() ? type.getAsString() : Messages.MapGeometry_geometryOfNoType;
	}

	private static List<double[][]> rings(JsonArray array) throws UnfitShapeException {
		List<double[][]> rings = new ArrayList<>();
		for (JsonElement each : array) {
			rings.add(wound(ring(line(each)), rings.isEmpty()));
		}
		if (rings.isEmpty()) {
			throw new UnfitShapeException(Messages.MapGeometry_aPolygonHasNoRing, WRITE_ANEW);
		}
		return rings;
	}

	private static double[][] wound(double[][] ring, boolean counterClockwise) {
		if (twiceArea(ring) > 0 == counterClockwise) {
			return ring;
		}
		double[][] turned = new double[ring.length][];
		for (int i = 0; i < ring.length; i++) {
			turned[i] = ring[(ring.length - i) % ring.length];
		}
		return turned;
	}

	/** In square degrees, above 0 where the ring runs counter-clockwise. */
	static double twiceArea(double[][] ring) {
		double twice = 0;
		for (int i = 1; i < ring.length - 1; i++) {
			twice += (ring[i][0] - ring[0][0]) * (ring[i + 1][1] - ring[0][1])
					- (ring[i + 1][0] - ring[0][0]) * (ring[i][1] - ring[0][1]);
		}
		return twice;
	}

	/** Section 3.1.6: four positions or more, of which the last is the first; doubled ones are left out. */
	private static double[][] ring(double[][] closed) throws UnfitShapeException {
		if (!Arrays.equals(closed[0], closed[closed.length - 1])) {
			throw new UnfitShapeException(
					Words.bind(Messages.MapGeometry_aRingIsOpenIt, position(closed[closed.length - 1]),
							position(closed[0])),
					Messages.MapGeometry_repeatTheFirstPositionAt);
		}
		List<double[]> corners = new ArrayList<>();
		for (int i = 0; i < closed.length - 1; i++) {
			if (corners.isEmpty() || !Arrays.equals(corners.get(corners.size() - 1), closed[i])) {
				corners.add(closed[i]);
			}
		}
		if (corners.size() < 3) {
			throw new UnfitShapeException(Words.bind(Messages.MapGeometry_aRingHasCornersAnd, corners.size()),
					Messages.MapGeometry_drawAtLeastThreeCorners);
		}
		return corners.toArray(double[][]::new);
	}

	static String position(double[] lonLat) {
		return lonLat[0] + ", " + lonLat[1];
	}

	private static double[][] line(JsonElement element) throws UnfitShapeException {
		JsonArray array = array(element);
		if (array.size() < 2) {
			throw new UnfitShapeException(Messages.MapGeometry_aLineHasFewerThan, WRITE_ANEW);
		}
		double[][] line = new double[array.size()][];
		for (int i = 0; i < line.length; i++) {
			JsonArray position = array(array.get(i));
			if (position.size() < 2 || !EarthSystem.isNumber(position.get(0))
					|| !EarthSystem.isNumber(position.get(1))) {
				throw new UnfitShapeException(Words.bind(Messages.MapGeometry_aPositionIsNotTwo, brief(position)),
						WRITE_ANEW);
			}
			line[i] = new double[] { position.get(0).getAsDouble() + 0.0, position.get(1).getAsDouble() + 0.0 };
		}
		return line;
	}

	private static JsonArray array(JsonElement element) throws UnfitShapeException {
		if (element == null || !element.isJsonArray()) {
			throw new UnfitShapeException(Messages.MapGeometry_itsCoordinatesAreNotLists, WRITE_ANEW);
		}
		return element.getAsJsonArray();
	}

	private static String brief(JsonArray array) {
		String text = array.toString();
		return text.length() > 60 ? text.substring(0, 60) + " …" : text;
	}
}
