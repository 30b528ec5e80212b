package org.cairnfield.exchange.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;

import org.cairnfield.core.map.RadioMap;
import org.junit.jupiter.api.Test;

class GeoJsonTest {

	private static String text(MapExport export) throws IOException {
		StringWriter out = new StringWriter();
		GeoJson.write(out, export);
		return out.toString();
	}

	private static List<JsonObject> features(String kind) throws IOException {
		JsonObject all = JsonParser.parseString(text(Exports.export(Exports.map()))).getAsJsonObject();
		return StreamSupport.stream(all.getAsJsonArray("features").spliterator(), false)
				.map(JsonElement::getAsJsonObject)
				.filter(f -> f.getAsJsonObject("properties").get("kind").getAsString().equals(kind)).toList();
	}

	/** RFC 7946 sections 3.3 and 4: a FeatureCollection, no crs member. */
	@Test
	void isAFeatureCollectionWithoutACoordinateSystemOfItsOwn() throws IOException {
		JsonObject all = JsonParser.parseString(text(Exports.export(Exports.map()))).getAsJsonObject();
		assertEquals("FeatureCollection", all.get("type").getAsString());
		assertFalse(all.has("crs"));
		assertEquals("Marrow \"Quay\"", all.get("name").getAsString());
	}

	/** RFC 7946 section 3.1.1: longitude, then latitude. */
	@Test
	void putsLongitudeBeforeLatitude() throws IOException {
		JsonArray origin = features("sample").get(0).getAsJsonObject("geometry").getAsJsonArray("coordinates");
		assertEquals(-40, origin.get(0).getAsDouble());
		assertEquals(40, origin.get(1).getAsDouble());
		JsonArray other = features("sample").get(1).getAsJsonObject("geometry").getAsJsonArray("coordinates");
		double[] metres = new SiteProjection(new SiteFrame.Anchor(40, -40, 0)).metres(other.get(0).getAsDouble(),
				other.get(1).getAsDouble());
		assertEquals(12.4, metres[0], 2e-4);
		assertEquals(7.85, metres[1], 2e-4);
	}

	/** RFC 7946 section 3.1.6: four positions or more, first and last the same, exterior ring counter-clockwise. */
	@Test
	void closesRingsAndWindsThemCounterClockwiseWhicheverWayTheyWereDrawn() throws IOException {
		List<JsonObject> floors = features("floor");
		assertEquals(2, floors.size());
		for (JsonObject floor : floors) {
			JsonArray ring = floor.getAsJsonObject("geometry").getAsJsonArray("coordinates").get(0).getAsJsonArray();
			assertEquals(5, ring.size());
			assertEquals(ring.get(0), ring.get(4));
			double twice = 0;
			for (int i = 0; i < 4; i++) {
				JsonArray a = ring.get(i).getAsJsonArray();
				JsonArray b = ring.get(i + 1).getAsJsonArray();
				twice += (a.get(0).getAsDouble() + 40) * (b.get(1).getAsDouble() - 40)
						- (b.get(0).getAsDouble() + 40) * (a.get(1).getAsDouble() - 40);
			}
			assertTrue(twice > 0, "clockwise");
		}
	}

	@Test
	void leavesOutSitesWithoutAPlaceAndSaysWhich() throws IOException {
		assertEquals(3, features("sample").size());
		assertEquals(List.of("Sailmakers' Hall"), Exports.export(Exports.map()).sitesWithoutPlace());
	}

	@Test
	void holdsWhatASampleHeardAndWhen() throws IOException {
		JsonObject first = features("sample").get(0).getAsJsonObject("properties");
		assertEquals(-61, first.getAsJsonObject("rssiDbm").get("00:00:5E:00:53:01").getAsInt());
		assertEquals("2020-09-26T14:25:06.250Z", first.get("time").getAsString());
		assertEquals("guide A", first.get("device").getAsString());
		assertFalse(features("sample").get(2).getAsJsonObject("properties").has("time"));
		assertEquals("ls/é\"1", features("sample").get(2).get("id").getAsString());
	}

	@Test
	void isTheSameWhateverTheLocale() throws IOException {
		String here = text(Exports.export(Exports.map()));
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
			assertEquals(here, text(Exports.export(Exports.map())));
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void holdsOnlyWhatTheOptionsLetOut() throws IOException {
		Pseudonyms pseudonyms = new Pseudonyms(new byte[16]);
		RadioMap out = new ExportOptions(true, pseudonyms, TimeGrain.DAY, false).apply(Exports.map());
		String text = text(Exports.export(out));
		assertFalse(text.contains("5E:00:53") || text.contains("guide A") || text.contains("14:25"), text);
		assertTrue(text.contains(pseudonyms.of("00:00:5E:00:53:01")) && text.contains("2020-09-26T00:00:00Z"), text);
		assertFalse(text.contains(pseudonyms.of("02:00:5E:00:53:02")), text);
	}
}
