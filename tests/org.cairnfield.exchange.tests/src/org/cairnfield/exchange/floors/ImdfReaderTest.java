package org.cairnfield.exchange.floors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.exchange.IntakeException;
import org.cairnfield.testkit.MuseumPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sections named are pages of OGC 20-094, Indoor Mapping Data Format 1.0.0. */
class ImdfReaderTest {

	@TempDir
	Path folder;

	/** Reference, Archives: a ZIP file with the manifest, and features of each type in a file of its own. */
	@Test
	void readsTheThreeMuseums() throws Exception {
		MappedFloors floors = MappedFloors
				.read(MuseumPlans.zip(folder.resolve("museums.zip"), MuseumPlans.texts(MuseumPlans.ATLANTIC)));
		assertEquals("IMDF 1.0.0", floors.format());
		assertEquals(List.of(), floors.notes());
		assertEquals(Set.of("Sailmakers' Hall", "Tide House", "Lantern Store"), floors.buildings());
		assertEquals(1 + 3 + 2 + 4, floors.levels().size(), "the quay and all floors");
		List<MappedLevel> store = floors.levels().stream().filter(level -> level.buildings().contains("Lantern Store"))
				.toList();
		assertEquals(List.of(0, 1, 2, 3), store.stream().map(MappedLevel::ordinal).toList());
		assertEquals(List.of("Ground floor", "Gallery 1", "Gallery 2", "Gallery 3"),
				store.stream().map(MappedLevel::name).toList());
		MappedLevel ground = store.get(0); // 46 m wide: five rooms on either side
		assertEquals(1, ground.count(DrawnAs.WALKWAY));
		assertEquals(10, ground.count(DrawnAs.ROOM));
		assertEquals(10, ground.count(DrawnAs.OPENING));
		assertEquals(3 + 1, ground.count(DrawnAs.FIXTURE), "display cases and a kiosk");
		assertEquals(1, store.get(2).count(DrawnAs.VOID));
		MappedLevel quay = floors.levels().stream().filter(MappedLevel::isOutdoor).findFirst().orElseThrow();
		assertEquals(List.of(), quay.buildings());
	}

	@Test
	void readsAFolderAsItReadsAnArchive() throws Exception {
		Map<String, String> texts = MuseumPlans.texts(MuseumPlans.ATLANTIC);
		MappedFloors zipped = MappedFloors.read(MuseumPlans.zip(folder.resolve("museums.zip"), texts));
		MappedFloors plain = MappedFloors.read(PlanTexts.folder(folder.resolve("museums"), texts));
		assertEquals(zipped.levels().stream().map(MappedLevel::feature).toList(),
				plain.levels().stream().map(MappedLevel::feature).toList());
		assertEquals(zipped.notes(), plain.notes());
	}

	/** Manifest: a language is required; Type Designators: LABELS are texts by language. */
	@Test
	void takesTheLabelInTheLanguageOfTheManifest() throws Exception {
		Map<String, String> texts = PlanTexts.archive(PlanTexts.SQUARE);
		String labels = "\"ordinal\":1,\"name\":{\"en\":\"First floor\",\"fr\":\"Premier étage\"},\"outdoor\":false,\"building_ids\":null";
		texts.put("level.geojson", PlanTexts.collection(PlanTexts.imdf("level", "L1", PlanTexts.SQUARE, labels)));
		for (String[] each : new String[][] { { "fr-FR", "Premier étage" }, { "en-US", "First floor" },
				{ "de", "First floor" } }) {
			texts.put("manifest.json",
					"{\"version\":\"1.0.0\",\"created\":\"2031-11-20T09:00:00Z\",\"language\":\"" + each[0] + "\"}");
			assertEquals(each[1],
					MappedFloors.read(PlanTexts.folder(folder.resolve(each[0]), texts)).levels().get(0).name());
		}
	}

	/** Unit: a POLYGONAL geometry; Opening: a LINE-STRING. What is only drawn does not stop the floors. */
	@Test
	void leavesOutWhatCannotBeDrawnAndSaysSo() throws Exception {
		String line = "{\"type\":\"LineString\",\"coordinates\":[[11,48],[11.001,48]]}";
		Map<String, String> texts = PlanTexts.archive(PlanTexts.SQUARE, "unit.geojson", PlanTexts.collection(
				PlanTexts.imdf("unit", "U1", PlanTexts.SQUARE, "\"category\":\"room\",\"level_id\":\"L0\""),
				PlanTexts.imdf("unit", "U2", PlanTexts.SQUARE, "\"category\":\"room\",\"level_id\":\"attic\""),
				PlanTexts.imdf("unit", "U3", "null", "\"category\":\"room\",\"level_id\":\"L0\""),
				PlanTexts.imdf("unit", "U4", PlanTexts.SQUARE.replace(",[11,48]]]", "]]"),
						"\"category\":\"structure\",\"level_id\":\"L0\"")),
				"opening.geojson", PlanTexts.collection(
						PlanTexts.imdf("opening", "O1", line, "\"category\":\"pedestrian\",\"level_id\":\"L0\"")));
		MappedFloors floors = MappedFloors.read(PlanTexts.folder(folder.resolve("imdf"), texts));
		assertEquals(List.of("U1", "O1"), floors.levels().get(0).shapes().stream().map(MappedShape::feature).toList());
		assertEquals(3, floors.notes().size(), floors.notes()::toString);
		assertTrue(
				floors.notes().get(0)
						.equals("unit.geojson, feature U2 is left out: its \"level_id\" names no level of the archive"),
				floors.notes()::toString);
		assertTrue(floors.notes().get(1).contains("U3") && floors.notes().get(1).contains("no geometry"),
				floors.notes()::toString);
		assertTrue(floors.notes().get(2).contains("U4") && floors.notes().get(2).contains("open"),
				floors.notes()::toString);
	}

	/** Of a thousand faults of one kind, twenty are named. */
	@Test
	void countsWhatItDoesNotName() throws Exception {
		String[] lost = new String[1000];
		for (int i = 0; i < lost.length; i++) {
			lost[i] = PlanTexts.imdf("unit", "U" + i, PlanTexts.SQUARE, "\"level_id\":\"attic\"");
		}
		MappedFloors floors = MappedFloors.read(PlanTexts.folder(folder.resolve("imdf"),
				PlanTexts.archive(PlanTexts.SQUARE, "unit.geojson", PlanTexts.collection(lost))));
		assertEquals(21, floors.notes().size());
		assertEquals("980 more features are left out for reasons like these", floors.notes().get(20));
	}

	/** Manifest: version 1.0.0 is the only one there is. */
	@Test
	void saysWhatTheManifestLacks() throws IOException, IntakeException {
		Map<String, String> texts = PlanTexts.archive(PlanTexts.SQUARE);
		texts.put("manifest.json", "{\"version\":\"2.0.0\"}");
		assertTrue(
				MappedFloors.read(PlanTexts.folder(folder.resolve("later"), texts)).notes().get(0).contains("2.0.0"));
		texts.remove("manifest.json");
		assertTrue(MappedFloors.read(PlanTexts.folder(folder.resolve("none"), texts)).notes().get(0)
				.contains("manifest.json is missing"));
	}
}
