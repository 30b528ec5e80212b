package org.cairnfield.testkit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.cairnfield.core.simulate.Campus;
import org.cairnfield.core.simulate.Floor;
import org.cairnfield.core.simulate.FloorOutline;
import org.cairnfield.core.simulate.Place;
import org.cairnfield.core.simulate.Site;
import org.cairnfield.core.simulate.Wing;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;

/**
 * The invented Marrow Quay Museums as an IMDF archive, with the members that OGC 20-094 requires on its pages Manifest, Venue, Building,
 * Level, Unit, Opening, Fixture and Kiosk. Each level has the outline that the simulation gives it, rooms on both sides of a corridor, a
 * door to each room, and a display case in some.
 */
public final class MuseumPlans {

	/** Where the buildings lie where a test does not care: in the middle of the Atlantic. */
	public static final Map<String, SiteFrame.Anchor> ATLANTIC = Map.of("Sailmakers' Hall",
			new SiteFrame.Anchor(40, -40, 0),
			"Tide House", new SiteFrame.Anchor(40.00004, -39.999, 0), "Lantern Store",
			new SiteFrame.Anchor(40.0006, -39.9999, 30));

	private static final double ROOM_METRES = 9;
	private static final double CORRIDOR_METRES = 3;
	private static final double DOOR_METRES = 1.4;

	private final Map<String, SiteFrame.Anchor> anchors;
	private final Map<String, List<String>> features = new LinkedHashMap<>();
	private SiteProjection projection;
	private int made;

	private MuseumPlans(Map<String, SiteFrame.Anchor> anchors) {
		this.anchors = anchors;
	}

	/** @param anchors where on Earth the frame of each building lies, by its name; others are left out */
	public static Map<String, String> texts(Map<String, SiteFrame.Anchor> anchors) {
		MuseumPlans plans = new MuseumPlans(anchors);
		for (Site site : Campus.marrowQuay().sites()) {
			if (anchors.containsKey(site.name())) {
				plans.building(site);
			}
		}
		return plans.texts();
	}

	/** Packs texts by their names. */
	public static Path zip(Path file, Map<String, String> texts) throws IOException {
		try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
			for (Map.Entry<String, String> text : texts.entrySet()) {
				zip.putNextEntry(new ZipEntry(text.getKey()));
				zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
				zip.closeEntry();
			}
		}
		return file;
	}

	private Map<String, String> texts() {
		yard();
		feature("venue", "null",
				"\"category\":\"museum\",\"restriction\":null,\"name\":{\"en\":\"Marrow Quay Museums\"},\"alt_name\":null,\"hours\":null,"
						+ "\"phone\":null,\"website\":null,\"display_point\":null,\"address_id\":null");
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put("manifest.json",
				"{\"version\":\"1.0.0\",\"created\":\"2031-11-20T09:00:00Z\",\"generated_by\":null,\"language\":\"en-GB\",\"extensions\":null}");
		features.forEach((type, all) -> texts.put(type + ".geojson",
				"{\"type\":\"FeatureCollection\",\"features\":[\n" + String.join(",\n", all) + "\n]}"));
		return texts;
	}

	/** Ground outdoors that belongs to no building. */
	private void yard() {
		projection = new SiteProjection(anchors.values().iterator().next());
		feature("level", polygon(-20, -20, 0, 0),
				"\"category\":\"unspecified\",\"restriction\":null,\"outdoor\":true,\"ordinal\":0,\"name\":{\"en\":\"Quay\"},"
						+ "\"short_name\":{\"en\":\"Q\"},\"display_point\":null,\"address_id\":null,\"building_ids\":null");
	}

	private void building(Site site) {
		projection = new SiteProjection(anchors.get(site.name()));
		String building = feature("building", "null",
				"\"category\":\"unspecified\",\"restriction\":null,\"name\":{\"fr\":\"Maison\",\"en\":\"" + site.name()
						+ "\"},\"alt_name\":null,\"display_point\":null,\"address_id\":null");
		for (Floor floor : site.floors()) {
			level(floor, building);
		}
	}

	private void level(Floor floor, String building) {
		String name = floor.level() == 0 ? "Ground floor" : "Gallery " + floor.level();
		FloorOutline outline = floor.outline();
		String level = feature("level", polygon(outline.corners()),
				"\"category\":\"unspecified\",\"restriction\":null,\"outdoor\":false,\"ordinal\":" + floor.level()
						+ ",\"name\":{\"en\":\"" + name + "\"},\"short_name\":{\"en\":\"" + floor.level()
						+ "\"},\"display_point\":null,\"address_id\":null,\"building_ids\":[\""
						+ building + "\"]");
		for (Wing wing : outline.wings()) {
			furnish(wing, level, floor.level());
		}
		if (floor.level() == 0) {
			feature("kiosk", polygon(2, 2, 4, 3), "\"name\":null,\"alt_name\":null,\"anchor_id\":null,\"level_id\":\""
					+ level + "\",\"display_point\":null");
		}
	}

	/** Rooms in the wing's own directions: u along the corridor, v across. */
	private void furnish(Wing wing, String level, int number) {
		double u0 = wing.alongX() ? wing.x0() : wing.y0();
		double u1 = wing.alongX() ? wing.x1() : wing.y1();
		double v0 = wing.alongX() ? wing.y0() : wing.x0();
		double v1 = wing.alongX() ? wing.y1() : wing.x1();
		double low = (v0 + v1 - CORRIDOR_METRES) / 2;
		double high = (v0 + v1 + CORRIDOR_METRES) / 2;
		unit(wing, level, "walkway", u0, low, u1, high);
		int rooms = Math.max(1, (int) Math.round((u1 - u0) / ROOM_METRES));
		double width = (u1 - u0) / rooms;
		for (int room = 0; room < rooms; room++) {
			double from = u0 + room * width;
			double door = from + (width - DOOR_METRES) / 2;
			unit(wing, level, number > 1 && room == 1 ? "opentobelow" : "room", from, v0, from + width, low);
			unit(wing, level, "room", from, high, from + width, v1);
			for (double side : new double[] { low, high }) {
				feature("opening",
						"{\"type\":\"LineString\",\"coordinates\":[" + position(wing, door, side) + ','
								+ position(wing, door + DOOR_METRES, side) + "]}",
						"\"category\":\"pedestrian\",\"accessibility\":null,\"access_control\":null,\"door\":{\"type\":\"door\",\"automatic\":false,\"material\":\"wood\"},"
								+ "\"name\":null,\"alt_name\":null,\"display_point\":null,\"level_id\":\"" + level
								+ '"');
			}
			if (room % 2 == 0) {
				feature("fixture", area(wing, from + width / 2 - 1, v1 - 2.5, from + width / 2 + 1, v1 - 1.5),
						"\"category\":\"furniture\",\"name\":null,\"alt_name\":null,"
								+ "\"anchor_id\":null,\"level_id\":\"" + level + "\",\"display_point\":null");
			}
		}
	}

	private void unit(Wing wing, String level, String category, double u0, double v0, double u1, double v1) {
		feature("unit", area(wing, u0, v0, u1, v1),
				"\"category\":\"" + category
						+ "\",\"restriction\":null,\"accessibility\":null,\"name\":null,\"alt_name\":null,"
						+ "\"level_id\":\"" + level + "\",\"display_point\":null");
	}

	private String area(Wing wing, double u0, double v0, double u1, double v1) {
		return wing.alongX() ? polygon(u0, v0, u1, v1) : polygon(v0, u0, v1, u1);
	}

	private String polygon(double x0, double y0, double x1, double y1) {
		return polygon(List.of(new Place(x0, y0), new Place(x1, y0), new Place(x1, y1), new Place(x0, y1)));
	}

	private String polygon(List<Place> corners) {
		List<String> positions = new ArrayList<>();
		corners.forEach(corner -> positions.add(position(corner.x(), corner.y())));
		positions.add(positions.get(0));
		return "{\"type\":\"Polygon\",\"coordinates\":[[" + String.join(",", positions) + "]]}";
	}

	private String position(Wing wing, double u, double v) {
		return wing.alongX() ? position(u, v) : position(v, u);
	}

	private String position(double x, double y) {
		double[] at = projection.lonLat(x, y);
		return String.format(Locale.ROOT, "[%.10f,%.10f]", at[0], at[1]);
	}

	/** Adds a feature and answers its id, which has the form of a version 4 UUID. */
	private String feature(String type, String geometry, String properties) {
		String id = String.format(Locale.ROOT, "00000000-0000-4000-8000-%012x", ++made);
		features.computeIfAbsent(type, t -> new ArrayList<>())
				.add("{\"id\":\"" + id + "\",\"type\":\"Feature\",\"feature_type\":\"" + type + "\",\"geometry\":"
						+ geometry
						+ ",\"properties\":{" + properties + "}}");
		return id;
	}
}
