package org.cairnfield.exchange.floors;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.exchange.IntakeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainReaderTest {

	@TempDir
	Path folder;

	private MappedFloors read(String... features) throws Exception {
		return MappedFloors.read(Files.writeString(folder.resolve("plans.geojson"), PlanTexts.collection(features)));
	}

	/** The polygon with a hole of RFC 7946, appendix A.3; the hole runs clockwise, as section 3.1.6 asks. */
	@Test
	void readsThePolygonWithAHoleOfTheStandard() throws Exception {
		String polygon = "{\"type\":\"Polygon\",\"coordinates\":[[[100.0,0.0],[101.0,0.0],[101.0,1.0],[100.0,1.0],[100.0,0.0]],"
				+ "[[100.8,0.8],[100.8,0.2],[100.2,0.2],[100.2,0.8],[100.8,0.8]]]}";
		MappedLevel level = read(PlanTexts.feature(polygon, "\"level\":2,\"name\":\"Attic\"")).levels().get(0);
		assertEquals(2, level.ordinal());
		assertEquals(2, level.extent().get(0).size());
		assertEquals(4, level.extent().get(0).get(1).length, "the first position is not repeated");
		assertArrayEquals(new double[] { 100.2, 0.8 }, level.extent().get(0).get(1)[3],
				"as it is written, since it runs clockwise");
		assertEquals("Attic", level.name());
	}

	/** RFC 7946 section 3.1.6: other windings should not be rejected; they are turned around, the first position staying. Heights (section 3.1.1) are left out. */
	@Test
	void takesRingsOfEitherWindingAndPositionsWithHeights() throws Exception {
		String clockwise = "{\"type\":\"Polygon\",\"coordinates\":[[[11,48,3.5],[11,48.001,3.5],[11.001,48.001,3.5],[11.001,48,3.5],[11,48,3.5]]]}";
		MappedLevel level = read(PlanTexts.feature(clockwise, "\"floor\":\"-1\"")).levels().get(0);
		assertEquals(-1, level.ordinal());
		double[][] ring = level.extent().get(0).get(0);
		assertArrayEquals(new double[][] { { 11, 48 }, { 11.001, 48 }, { 11.001, 48.001 }, { 11, 48.001 } }, ring);
	}

	@Test
	void tellsOutlinesRoomsWallsAndDoorsByWhateverCallsThemSo() throws Exception {
		String line = "{\"type\":\"LineString\",\"coordinates\":[[11,48],[11.001,48]]}";
		MappedFloors floors = read(
				PlanTexts.feature(PlanTexts.SQUARE,
						"\"level\":0,\"category\":\"outline\",\"building\":\"Tide House\",\"name\":\"Ground\""),
				PlanTexts.feature(PlanTexts.SQUARE,
						"\"level\":\"0\",\"kind\":\"Corridor\",\"building\":\"Tide House\""),
				PlanTexts.feature(line, "\"level\":0,\"class\":\"wall\",\"building\":\"Tide House\""),
				PlanTexts.feature(line, "\"level\":0.0,\"kind\":\"door\",\"building\":\"Tide House\""),
				PlanTexts.feature(PlanTexts.SQUARE, "\"level\":0,\"building\":\"Tide House\""),
				PlanTexts.feature(PlanTexts.SQUARE, "\"level\":0,\"kind\":\"storage\",\"building\":\"Lantern Store\""),
				PlanTexts.feature("{\"type\":\"Point\",\"coordinates\":[11,48]}", "\"level\":0"),
				PlanTexts.feature(PlanTexts.SQUARE, "\"level\":\"mezzanine\""));
		assertEquals(2, floors.levels().size());
		MappedLevel store = floors.levels().get(0);
		assertEquals(List.of("Lantern Store"), store.buildings());
		assertEquals(List.of(), store.extent(), "a room is no outline");
		MappedLevel house = floors.levels().get(1);
		assertEquals("Ground", house.name());
		assertEquals(1, house.extent().size());
		assertEquals(List.of(DrawnAs.WALKWAY, DrawnAs.SOLID, DrawnAs.OPENING, DrawnAs.ROOM),
				house.shapes().stream().map(MappedShape::as).toList());
		assertTrue(floors.notes().get(0).contains("feature number 8 is left out"), floors.notes()::toString);
		assertEquals("1 points are left out: plans are areas and lines", floors.notes().get(1));
	}

	@Test
	void refusesAFileWithoutFloors() throws Exception {
		IntakeException e = assertThrows(IntakeException.class,
				() -> read(PlanTexts.feature(PlanTexts.SQUARE, "\"storey\":1")));
		assertTrue(e.what().contains("none of its 1 features") && e.remedy().contains("\"level\""), e::getMessage);
	}
}
