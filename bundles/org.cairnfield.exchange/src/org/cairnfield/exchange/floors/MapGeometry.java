package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/**
 * Polygons and lines of features (RFC 7946 section 3.1). Heights are left out. Rings of either winding are taken, as section 3.1.6 asks,
 * and made such as it has them: outer ones counter-clockwise, holes clockwise.
 */
final class MapGeometry {

	private static final String WRITE_ANEW = "Write it as RFC 7946 section 3.1 defines it";

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
			throw new UnfitShapeException("its geometry is a " + type + ", not a Polygon or MultiPolygon",
					"Draw its area");
		}
		if (polygons.isEmpty()) {
			throw new UnfitShapeException("its geometry has no polygon", "Draw its area");
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
			throw new UnfitShapeException("its geometry is a " + type + ", not a LineString", "Draw it as a line");
		}
		return lines;
	}

	/** The type, or "" for a feature without geometry. */
	static String type(MapFeature feature) {
		return feature.geometry().map(MapGeometry::type).orElse("");
	}

	private static JsonObject geometry(MapFeature feature) throws UnfitShapeException {
		return feature.geometry()
				.orElseThrow(() -> new UnfitShapeException("it has no geometry", "Draw its area, or leave it out"));
	}

	private static String type(JsonObject geometry) {
		JsonElement type = geometry.get("type");
		return type != null && type.isJsonPrimitive() ? type.getAsString() : "geometry of no type";
	}

	private static List<double[][]> rings(JsonArray array) throws UnfitShapeException {
		List<double[][]> rings = new ArrayList<>();
		for (JsonElement each : array) {
			rings.add(wound(ring(line(each)), rings.isEmpty()));
		}
		if (rings.isEmpty()) {
			throw new UnfitShapeException("a polygon has no ring", WRITE_ANEW);
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
					"a ring is open: it ends at " + position(closed[closed.length - 1]) + ", not where it began, at "
							+ position(closed[0]),
					"Repeat the first position at its end");
		}
		List<double[]> corners = new ArrayList<>();
		for (int i = 0; i < closed.length - 1; i++) {
			if (corners.isEmpty() || !Arrays.equals(corners.get(corners.size() - 1), closed[i])) {
				corners.add(closed[i]);
			}
		}
		if (corners.size() < 3) {
			throw new UnfitShapeException("a ring has " + corners.size() + " corners, and encloses nothing",
					"Draw at least three corners");
		}
		return corners.toArray(double[][]::new);
	}

	static String position(double[] lonLat) {
		return lonLat[0] + ", " + lonLat[1];
	}

	private static double[][] line(JsonElement element) throws UnfitShapeException {
		JsonArray array = array(element);
		if (array.size() < 2) {
			throw new UnfitShapeException("a line has fewer than two positions", WRITE_ANEW);
		}
		double[][] line = new double[array.size()][];
		for (int i = 0; i < line.length; i++) {
			JsonArray position = array(array.get(i));
			if (position.size() < 2 || !EarthSystem.isNumber(position.get(0))
					|| !EarthSystem.isNumber(position.get(1))) {
				throw new UnfitShapeException("a position is not two numbers: " + brief(position), WRITE_ANEW);
			}
			line[i] = new double[] { position.get(0).getAsDouble() + 0.0, position.get(1).getAsDouble() + 0.0 };
		}
		return line;
	}

	private static JsonArray array(JsonElement element) throws UnfitShapeException {
		if (element == null || !element.isJsonArray()) {
			throw new UnfitShapeException("its coordinates are not lists of positions", WRITE_ANEW);
		}
		return element.getAsJsonArray();
	}

	private static String brief(JsonArray array) {
		String text = array.toString();
		return text.length() > 60 ? text.substring(0, 60) + " …" : text;
	}
}
