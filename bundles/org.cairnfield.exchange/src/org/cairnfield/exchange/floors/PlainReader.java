package org.cairnfield.exchange.floors;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.IntakeException;

/**
 * A single GeoJSON file: features with a floor (ordinal, level or floor), a kind (category, kind or class), a name, and perhaps a
 * building (building or site). An area of no known kind that is alone on its floor is the outline of it.
 */
final class PlainReader {

	private static final List<String> FLOOR = List.of("ordinal", "level", "floor");
	private static final List<String> KIND = List.of("category", "kind", "class");
	private static final List<String> BUILDING = List.of("building", "site");
	private static final Set<String> OUTLINES = Set.of("outline", "level", "floor", "footprint");

	private final MapSource source;
	private final ShapeCollector collector = new ShapeCollector();
	private final SortedMap<Stack, Level> levels = new TreeMap<>();

	PlainReader(MapSource source) {
		this.source = source;
	}

	/** A floor of a building; the name is empty where the file names none. */
	private record Stack(int ordinal, String building) implements Comparable<Stack> {

		@Override
		public int compareTo(Stack other) {
			return ordinal != other.ordinal ? Integer.compare(ordinal, other.ordinal)
					: building.compareTo(other.building);
		}
	}

	/** What is known of one so far. */
	private static final class Level {
		private final List<List<double[][]>> extent = new ArrayList<>();
		private final List<MappedShape> shapes = new ArrayList<>();
		private final List<MapFeature> unnamed = new ArrayList<>();
		private String feature;
		private String name;
	}

	MappedFloors read() throws IntakeException {
		List<MapFeature> features = MapFeature.of(source, "");
		int points = 0;
		for (MapFeature feature : features) {
			Optional<Integer> ordinal = FLOOR.stream().map(feature::level).flatMap(Optional::stream).findFirst();
			if (MapGeometry.type(feature).endsWith("Point")) {
				points++;
			} else if (ordinal.isEmpty()) {
				collector.leaveOut(feature,
						Words.bind(Messages.PlainReader_noneOfItsPropertiesIs, String.join(", ", FLOOR)));
			} else {
				add(feature, levels.computeIfAbsent(new Stack(ordinal.get(), first(feature, BUILDING).orElse("")),
						stack -> new Level()));
			}
		}
		if (levels.isEmpty()) {
			throw new IntakeException(source.file(), 0,
					Words.bind(Messages.PlainReader_noneOfItsFeaturesIs, features.size()),
					Messages.PlainReader_giveEachAPropertyLevel);
		}
		if (points > 0) {
			collector.note(Words.bind(Messages.PlainReader_pointsAreLeftOutPlans, points));
		}
		List<MappedLevel> mapped = new ArrayList<>();
		for (Map.Entry<Stack, Level> each : levels.entrySet()) {
			mapped.add(mapped(each.getKey(), each.getValue()));
		}
		return new MappedFloors(source.file(), "GeoJSON", mapped, collector.notes());
	}

	private static Optional<String> first(MapFeature feature, List<String> properties) {
		return properties.stream().map(feature::text).flatMap(Optional::stream).findFirst();
	}

	private void add(MapFeature feature, Level level) throws IntakeException {
		Optional<String> kind = Stream.of(first(feature, KIND), feature.member("feature_type"))
				.flatMap(Optional::stream).findFirst();
		if (kind.isPresent() && OUTLINES.contains(kind.get())) {
			bound(feature, level);
		} else if (kind.isEmpty()) {
			level.unnamed.add(feature);
		} else {
			collector.add(level.shapes, feature, DrawnAs.word(kind.get()));
		}
	}

	private static void bound(MapFeature feature, Level level) throws IntakeException {
		try {
			List<List<double[][]>> extent = MapGeometry.polygons(feature);
			RingCheck.checkOuter(extent);
			level.extent.addAll(extent);
			level.feature = level.feature == null ? feature.id() : level.feature;
			level.name = level.name == null ? feature.text("name").orElse(null) : level.name;
		} catch (UnfitShapeException e) {
			throw feature.refused(e.getMessage(), e.remedy());
		}
	}

	private MappedLevel mapped(Stack stack, Level level) throws IntakeException {
		if (level.extent.isEmpty() && level.unnamed.size() == 1
				&& MapGeometry.type(level.unnamed.get(0)).endsWith("Polygon")) {
			bound(level.unnamed.get(0), level);
		} else {
			level.unnamed.forEach(each -> collector.add(level.shapes, each, DrawnAs.ROOM));
		}
		return new MappedLevel(
				level.feature == null ? Words.bind(Messages.PlainReader_ofOrdinal, stack.ordinal()) : level.feature,
				stack.ordinal(),
				level.name,
				stack.building().isEmpty() ? List.of() : List.of(stack.building()), false, level.extent, level.shapes);
	}
}
