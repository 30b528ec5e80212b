package org.cairnfield.exchange.floors;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Small plans, written by hand. */
final class PlanTexts {

	/** 48°N 11°E and a thousandth of a degree from it, counter-clockwise. */
	static final String SQUARE = "{\"type\":\"Polygon\",\"coordinates\":[[[11,48],[11.001,48],[11.001,48.001],[11,48.001],[11,48]]]}";

	private PlanTexts() {
	}

	static String collection(String... features) {
		return "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}";
	}

	static String feature(String geometry, String properties) {
		return "{\"type\":\"Feature\",\"geometry\":" + geometry + ",\"properties\":{" + properties + "}}";
	}

	/** A feature of IMDF (OGC 20-094, Reference): an id and a "feature_type" beside the members of GeoJSON. */
	static String imdf(String type, String id, String geometry, String properties) {
		return "{\"id\":\"" + id + "\",\"type\":\"Feature\",\"feature_type\":\"" + type + "\",\"geometry\":" + geometry
				+ ",\"properties\":{" + properties + "}}";
	}

	/** An archive of one level of that geometry, and whatever else. */
	static Map<String, String> archive(String geometry, String... others) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put("manifest.json", "{\"version\":\"1.0.0\",\"created\":\"2031-11-20T09:00:00Z\",\"language\":\"en\"}");
		texts.put("level.geojson", collection(imdf("level", "L0", geometry,
				"\"ordinal\":0,\"outdoor\":false,\"name\":{\"en\":\"Ground\"},\"building_ids\":[]")));
		for (int i = 0; i < others.length; i += 2) {
			texts.put(others[i], others[i + 1]);
		}
		return texts;
	}

	static Path folder(Path folder, Map<String, String> texts) throws IOException {
		Files.createDirectories(folder);
		for (Map.Entry<String, String> text : texts.entrySet()) {
			Files.writeString(folder.resolve(text.getKey()), text.getValue());
		}
		return folder;
	}
}
