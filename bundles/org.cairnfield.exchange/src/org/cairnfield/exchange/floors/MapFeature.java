package org.cairnfield.exchange.floors;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.exchange.IntakeException;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.cairnfield.core.text.Words;

/** A GeoJSON feature (RFC 7946 section 3.2), and what its members say. */
final class MapFeature {

	private static final int LONGEST_NUMBER = 20;

	private final MapSource source;
	private final String text;
	private final JsonObject json;
	private final String id;

	private MapFeature(MapSource source, String text, JsonObject json, int index) {
		this.source = source;
		this.text = text;
		this.json = json;
		id = string(json, "id").orElse(Words.bind(Messages.MapFeature_number, index + 1));
	}

	/**
	 * The features of a FeatureCollection (RFC 7946 section 3.3), all of them on Earth in degrees.
	 *
	 * @throws IntakeException where it is none, or where coordinates are not those of WGS 84
	 */
	static List<MapFeature> of(MapSource source, String text) throws IntakeException {
		JsonObject collection = source.read(text);
		if (!string(collection, "type").filter("FeatureCollection"::equals).isPresent()
				|| !(collection.get("features") instanceof JsonArray array)) {
			throw source.refused(text, Messages.MapFeature_thisIsNoFeaturecollection,
					Messages.MapFeature_giveOneAsRfc7946);
		}
		EarthSystem.check(source, text, collection);
		List<MapFeature> features = new ArrayList<>(array.size());
		for (JsonElement each : array) {
			if (!each.isJsonObject() || !string(each.getAsJsonObject(), "type").filter("Feature"::equals).isPresent()) {
				throw source.refused(text,
						Words.bind(Messages.MapFeature_numberOfTheFeaturesIs, features.size() + 1),
						Messages.MapFeature_writeTheFileAnew);
			}
			MapFeature feature = new MapFeature(source, text, each.getAsJsonObject(), features.size());
			EarthSystem.check(feature);
			features.add(feature);
		}
		return features;
	}

	/** Its id, or its number in the file. */
	String id() {
		return id;
	}

	boolean hasId() {
		return string(json, "id").isPresent();
	}

	/** The file and the feature, in words. */
	String where() {
		return Words.bind(Messages.MapFeature_feature, text.isEmpty() ? "" : text + ", ", id);
	}

	IntakeException refused(String what, String remedy) {
		return source.refused(text, Words.bind(Messages.MapFeature_feature2, id, what), remedy);
	}

	/** A top-level member beside those of GeoJSON, such as IMDF's "feature_type". */
	Optional<String> member(String name) {
		return string(json, name);
	}

	/** The geometry; empty for a feature without one. */
	Optional<JsonObject> geometry() {
		return Optional.ofNullable(json.get("geometry")).filter(JsonElement::isJsonObject)
				.map(JsonElement::getAsJsonObject);
	}

	/** A property that is not null. */
	Optional<JsonElement> property(String name) {
		return Optional.ofNullable(json.get("properties")).filter(JsonElement::isJsonObject)
				.map(properties -> properties.getAsJsonObject().get(name)).filter(value -> !value.isJsonNull());
	}

	/** A property that is a text, or a number as one. */
	Optional<String> text(String property) {
		return property(property).filter(value -> value.isJsonPrimitive() && !value.getAsJsonPrimitive().isBoolean())
				.map(JsonElement::getAsString)
				.map(String::strip).filter(value -> !value.isEmpty());
	}

	/** A property that is a list of texts; what else is in it is left out. */
	List<String> texts(String property) {
		List<String> texts = new ArrayList<>();
		property(property).filter(JsonElement::isJsonArray).ifPresent(array -> array.getAsJsonArray().forEach(each -> {
			if (each.isJsonPrimitive()) {
				texts.add(each.getAsString());
			}
		}));
		return texts;
	}

	/** A property that is a whole number a floor may have, written as a number or as a text. */
	Optional<Integer> level(String property) {
		return text(property).flatMap(MapFeature::whole);
	}

	private static Optional<Integer> whole(String text) {
		if (text.length() > LONGEST_NUMBER) { // thousands of digits take their time
			return Optional.empty();
		}
		try {
			int level = new BigDecimal(text).intValueExact();
			return level >= Short.MIN_VALUE && level <= Short.MAX_VALUE ? Optional.of(level) : Optional.empty();
		} catch (ArithmeticException | NumberFormatException e) {
			return Optional.empty();
		}
	}

	private static Optional<String> string(JsonObject object, String name) {
		return Optional.ofNullable(object.get(name)).filter(JsonElement::isJsonPrimitive).map(JsonElement::getAsString)
				.filter(value -> !value.isBlank());
	}
}
