package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cairnfield.exchange.IntakeException;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.cairnfield.core.text.Words;

/**
 * An archive of the Indoor Mapping Data Format, OGC 20-094, by its pages Reference, Manifest, Building, Level, Unit, Opening, Fixture and
 * Kiosk. Levels must be as the standard has them; other features that are not are left out and told.
 */
final class ImdfReader {

	private static final String MANIFEST = "manifest.json";
	private static final String VERSION = "1.0.0";
	private static final String BUILDINGS = "building.geojson";
	private static final String LEVELS = "level.geojson";

	private final MapSource source;
	private final ShapeCollector collector = new ShapeCollector();
	private String language = "";

	ImdfReader(MapSource source) {
		this.source = source;
	}

	MappedFloors read() throws IntakeException {
		if (!source.has(LEVELS)) {
			throw new IntakeException(source.file(), 0,
					Words.bind(Messages.ImdfReader_thereIsNoInIt, LEVELS),
					Messages.ImdfReader_giveAnImdfArchiveOgc);
		}
		readManifest();
		Map<String, String> buildings = buildings();
		Map<String, Level> levels = new TreeMap<>();
		for (MapFeature feature : MapFeature.of(source, LEVELS)) {
			if (levels.put(feature.id(), level(feature, buildings)) != null) {
				throw feature.refused(Messages.ImdfReader_thereAreTwoLevelsOf, Messages.ImdfReader_giveEachAnIdOf);
			}
		}
		if (levels.isEmpty()) {
			throw source.refused(LEVELS, Messages.ImdfReader_thereAreNoLevelsIn, Messages.ImdfReader_giveAnArchiveOfA);
		}
		for (String type : List.of("unit", "fixture", "kiosk", "opening")) {
			draw(type, levels);
		}
		return new MappedFloors(source.file(), Words.bind(Messages.ImdfReader_imdf, VERSION),
				levels.values().stream().map(Level::mapped)
						.sorted(Comparator.comparingInt(MappedLevel::ordinal)).toList(),
				collector.notes());
	}

	private void readManifest() throws IntakeException {
		if (!source.has(MANIFEST)) {
			collector.note(Words.bind(Messages.ImdfReader_isMissingTheArchiveIs, MANIFEST, VERSION));
			return;
		}
		JsonObject manifest = source.read(MANIFEST);
		String version = text(manifest, "version").orElse("none");
		if (!version.equals(VERSION)) {
			collector.note(Words.bind(Messages.ImdfReader_namesVersionOfImdfThe, MANIFEST, version, VERSION));
		}
		language = text(manifest, "language").orElse("");
	}

	private static Optional<String> text(JsonObject object, String member) {
		return Optional.ofNullable(object.get(member)).filter(JsonElement::isJsonPrimitive)
				.map(JsonElement::getAsString);
	}

	/** Names by id. */
	private Map<String, String> buildings() throws IntakeException {
		Map<String, String> names = new HashMap<>();
		if (source.has(BUILDINGS)) {
			for (MapFeature building : MapFeature.of(source, BUILDINGS)) {
				names.put(building.id(), label(building, "name").orElse(building.id()));
			}
		}
		return names;
	}

	/** A level while shapes are added to it. */
	private record Level(MapFeature feature, int ordinal, String name, List<String> buildings, boolean isOutdoor,
			List<List<double[][]>> extent,
			List<MappedShape> shapes) {

		MappedLevel mapped() {
			return new MappedLevel(feature.id(), ordinal, name, buildings, isOutdoor, extent, shapes);
		}
	}

	private Level level(MapFeature feature, Map<String, String> buildings) throws IntakeException {
		requireType(feature, "level");
		int ordinal = feature.level("ordinal").orElseThrow(
				() -> feature.refused(Messages.ImdfReader_itsOrdinalIsNotA,
						Messages.ImdfReader_giveEachLevelItsPlace));
		boolean isOutdoor = feature.property("outdoor").filter(JsonElement::isJsonPrimitive)
				.map(JsonElement::getAsBoolean).orElse(false);
		List<String> in = feature.texts("building_ids").stream().map(id -> buildings.getOrDefault(id, id)).toList();
		try {
			List<List<double[][]>> extent = MapGeometry.polygons(feature);
			RingCheck.checkOuter(extent);
			return new Level(feature, ordinal, label(feature, "name").orElse(null), in, isOutdoor, extent,
					new ArrayList<>());
		} catch (UnfitShapeException e) {
			throw feature.refused(e.getMessage(), e.remedy());
		}
	}

	/** OGC 20-094, Reference, Features: an id and the type of the feature are required. */
	private static void requireType(MapFeature feature, String type) throws IntakeException {
		if (!feature.hasId()) {
			throw feature.refused(Messages.ImdfReader_itHasNoId, Messages.ImdfReader_giveEachFeatureOneAs);
		}
		String found = feature.member("feature_type").orElse("none");
		if (!found.equals(type)) {
			throw feature.refused(Words.bind(Messages.ImdfReader_itsFeatureTypeIsNot, found, type),
					Messages.ImdfReader_putFeaturesOfEachType);
		}
	}

	private void draw(String type, Map<String, Level> levels) throws IntakeException {
		String text = type + ".geojson";
		if (!source.has(text)) {
			return;
		}
		for (MapFeature feature : MapFeature.of(source, text)) {
			requireType(feature, type);
			Level level = feature.text("level_id").map(levels::get).orElse(null);
			if (level == null) {
				collector.leaveOut(feature, Messages.ImdfReader_itsLevelIdNamesNo);
				continue;
			}
			String category = feature.text("category").orElse("unspecified");
			collector.add(level.shapes(), feature, switch (type) {
			case "unit" -> DrawnAs.unit(category);
			case "opening" -> DrawnAs.OPENING;
			default -> DrawnAs.fixture(category);
			});
		}
	}

	/** LABELS: a text for each language; that of the manifest, one of the same first subtag, or else any. */
	private Optional<String> label(MapFeature feature, String property) {
		Optional<JsonObject> labels = feature.property(property).filter(JsonElement::isJsonObject)
				.map(JsonElement::getAsJsonObject);
		return labels.flatMap(all -> all.entrySet().stream().filter(each -> each.getValue().isJsonPrimitive())
				.min(Comparator.comparingInt(each -> distance(each.getKey())))
				.map(each -> each.getValue().getAsString().strip())).filter(label -> !label.isEmpty());
	}

	private int distance(String tag) {
		return tag.equalsIgnoreCase(language) ? 0 : tag.split("-")[0].equalsIgnoreCase(language.split("-")[0]) ? 1 : 2;
	}
}
