package org.cairnfield.exchange.floors;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.exchange.IntakeException;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.cairnfield.core.text.Words;

/** RFC 7946 section 4: coordinates are longitude and latitude in degrees, WGS 84, and nothing else. */
final class EarthSystem {

	private static final String REMEDY = Messages.EarthSystem_exportThePlansInWgs;

	/** Ends of names that older files give to WGS 84; each of these programs writes longitude first. */
	private static final List<String> WGS_84 = List.of("CRS84", "EPSG:4326", "EPSG::4326");

	private static final double EARTH_KILOMETRES = 6371;
	private static final double FARTHEST_KILOMETRES = 100;

	private EarthSystem() {
	}

	/** The member "crs" of files from before RFC 7946. */
	static void check(MapSource source, String text, JsonObject collection) throws IntakeException {
		if (collection.has("crs")) {
			String name = Optional.ofNullable(collection.get("crs")).filter(JsonElement::isJsonObject)
					.map(crs -> crs.getAsJsonObject().get("properties"))
					.filter(JsonElement::isJsonObject).map(properties -> properties.getAsJsonObject().get("name"))
					.filter(JsonElement::isJsonPrimitive)
					.map(JsonElement::getAsString).orElse(Messages.EarthSystem_oneWithoutAName);
			if (WGS_84.stream().noneMatch(name::endsWith)) {
				throw source.refused(text, Words.bind(Messages.EarthSystem_itsCoordinateSystemIsNot, name), REMEDY);
			}
		}
	}

	/** All positions of a feature. */
	static void check(MapFeature feature) throws IntakeException {
		Optional<JsonElement> coordinates = feature.geometry().map(geometry -> geometry.get("coordinates"));
		if (coordinates.isPresent() && coordinates.get() instanceof JsonArray array) {
			check(feature, array);
		}
	}

	private static void check(MapFeature feature, JsonArray array) throws IntakeException {
		if (array.size() > 1 && isNumber(array.get(0)) && isNumber(array.get(1))) {
			double longitude = array.get(0).getAsDouble();
			double latitude = array.get(1).getAsDouble();
			if (!(Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90)) {
				throw feature.refused(
						Words.bind(Messages.EarthSystem_thePositionIsOutside180, array.get(0), array.get(1)),
						REMEDY);
			}
			return;
		}
		for (JsonElement each : array) {
			if (each instanceof JsonArray inner) {
				check(feature, inner);
			}
		}
	}

	/** @throws IllegalArgumentException where a position lies too far from a place for one frame of metres */
	static void requireNear(double[] place, Stream<double[][]> paths) {
		paths.flatMap(Arrays::stream).filter(at -> kilometres(place, at) > FARTHEST_KILOMETRES).findFirst()
				.ifPresent(at -> {
					throw new IllegalArgumentException(String.format(Locale.ROOT, "%s lies %,.0f km from %s",
							MapGeometry.position(at), kilometres(place, at),
							MapGeometry.position(place)));
				});
	}

	/** On a sphere, by the haversine of the angle between two {longitude, latitude}. */
	private static double kilometres(double[] a, double[] b) {
		double north = Math.sin(Math.toRadians(b[1] - a[1]) / 2);
		double east = Math.sin(Math.toRadians(b[0] - a[0]) / 2);
		return 2 * EARTH_KILOMETRES * Math.asin(Math.min(1, Math
				.sqrt(north * north + Math.cos(Math.toRadians(a[1])) * Math.cos(Math.toRadians(b[1])) * east * east)));
	}

	static boolean isNumber(JsonElement element) {
		return element.isJsonPrimitive() && element.getAsJsonPrimitive().isNumber();
	}
}
