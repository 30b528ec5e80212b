package org.cairnfield.curation.floors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.simulate.Campus;
import org.cairnfield.core.simulate.Place;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.export.SiteFrame;
import org.cairnfield.exchange.export.SiteProjection;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Outline;
import org.cairnfield.testkit.MuseumPlans;
import org.cairnfield.testkit.SmallArchive;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Tide House of the museums, two floors of 42 by 26 m, is taken into the archive of a corridor in it. */
class FloorTakingTest {

	private static final SiteFrame.Anchor HERE = new SiteFrame.Anchor(40, -40, 30);
	private static final double MILLIMETRE = 1e-3;

	@TempDir
	Path folder;
	private OpenArchive open;
	private Site site;
	private final BasicCommandStack stack = new BasicCommandStack();

	@BeforeEach
	void openAnArchive() throws Exception {
		open = SmallArchive.create(new ArchiveStore(), folder.resolve("archive"));
		site = open.archive().getSites().get(0);
	}

	@AfterEach
	void closeIt() throws IOException {
		open.close();
	}

	private MappedFloors museums(SiteFrame.Anchor tideHouse) throws Exception {
		Map<String, SiteFrame.Anchor> anchors = new HashMap<>(MuseumPlans.ATLANTIC);
		anchors.put("Tide House", tideHouse);
		return MappedFloors.read(MuseumPlans.zip(folder.resolve("museums.zip"), MuseumPlans.texts(anchors)));
	}

	private MappedFloors geoJson(String name, String... features) throws Exception {
		return MappedFloors.read(Files.writeString(folder.resolve(name),
				"{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}"));
	}

	/** A rectangle of the frame as a ring in degrees. */
	private static String ring(double x0, double y0, double x1, double y1) {
		SiteProjection projection = new SiteProjection(HERE);
		StringBuilder text = new StringBuilder();
		for (double[] corner : new double[][] { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 }, { x0, y0 } }) {
			double[] at = projection.lonLat(corner[0], corner[1]);
			text.append(text.isEmpty() ? "[[" : ",[").append(at[0]).append(',').append(at[1]).append(']');
		}
		return text.append(']').toString();
	}

	private static String outline(String type, String coordinates, int level) {
		return "{\"type\":\"Feature\",\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":" + coordinates
				+ "},\"properties\":{\"kind\":\"outline\",\"level\":"
				+ level + "}}";
	}

	private FloorTaking taking(MappedFloors floors, FloorWish wish) throws IntakeException {
		return FloorTaking.of(open.archive(), "th", floors, wish);
	}

	private List<Path> images() throws IOException {
		Path plans = open.folder().resolve("plans");
		if (!Files.exists(plans)) {
			return List.of();
		}
		try (Stream<Path> files = Files.list(plans)) {
			return files.sorted().toList();
		}
	}

	@Test
	void givesFloorsTheirOutlinesAndImagesInOneStep() throws Exception {
		Outline before = site.getFloors().get(0).getOutline();
		FloorTaking taking = taking(museums(HERE), FloorWish.NONE);
		assertEquals(1, site.getFloors().size(), "nothing is done yet");
		assertEquals(List.of("changed", "made"), taking.changes().stream().map(FloorChange::whatText).toList());
		assertEquals("4 corners, 1,092 m² (before 4 corners, 600 m²)", taking.changes().get(0).outlineText());
		assertEquals("new: 1 walkway, 10 rooms, 4 fixtures, 10 doors", taking.changes().get(0).imageText());
		assertEquals("3 of 30 outside, up to 5.0 m", taking.changes().get(0).samplesText(),
				"the corridor is longer than the house");
		assertEquals("none", taking.changes().get(1).samplesText());
		assertEquals(
				List.of("the file has levels of Lantern Store, Sailmakers' Hall too, which are left out",
						"level 0 (Quay) is left out: it belongs to no building",
						"floor 0: 3 of 30 samples lie outside of the outline, up to 5.0 m",
						"the site has no floor 1 yet: it is made, without samples until a survey has some"),
				taking.notes());
		taking.write(open);
		stack.execute(taking.command(open.archive()));
		assertEquals("Take in floor plans of Tide House, 2 floors", stack.getMostRecentCommand().getLabel());
		assertEquals(List.of(0, 1), site.getFloors().stream().map(Floor::getLevel).toList());
		assertEquals("Gallery 1", site.getFloors().get(1).getName());
		List<Place> corners = Campus.marrowQuay().sites().get(1).floor(0).outline().corners();
		for (Floor floor : site.getFloors()) {
			assertEquals(corners.size(), floor.getOutline().size());
			for (int i = 0; i < corners.size(); i++) {
				assertEquals(corners.get(i).x(), floor.getOutline().xMetres(i), MILLIMETRE);
				assertEquals(corners.get(i).y(), floor.getOutline().yMetres(i), MILLIMETRE);
			}
			String svg = Files.readString(open.resolve(floor.getPlanImage()));
			assertTrue(svg.startsWith("<svg "), svg);
			assertEquals(-1, floor.getPlanPlacement().xMetres(), MILLIMETRE);
			assertEquals(27, floor.getPlanPlacement().yMetres(), MILLIMETRE);
			assertEquals(0.05, floor.getPlanPlacement().metresPerPixel());
		}
		open.save();
		stack.undo();
		assertEquals(1, site.getFloors().size());
		assertEquals(before, site.getFloors().get(0).getOutline());
		assertNull(site.getFloors().get(0).getPlanImage());
		assertNull(site.getFloors().get(0).getPlanPlacement());
		assertFalse(stack.canUndo(), "it was one step");
		stack.redo();
		assertEquals(2, site.getFloors().size());
		assertTrue(Files.exists(open.resolve(site.getFloors().get(1).getPlanImage())));
	}

	@Test
	void replacesWhatAnEarlierFileGave() throws Exception {
		FloorTaking first = taking(museums(HERE), FloorWish.NONE);
		first.write(open);
		stack.execute(first.command(open.archive()));
		String image = site.getFloors().get(0).getPlanImage();
		FloorTaking same = taking(museums(HERE), FloorWish.NONE);
		assertFalse(same.isChange());
		assertFalse(same.command(open.archive()).canExecute());
		FloorTaking other = taking(geoJson("rebuilt.geojson", outline("Polygon", '[' + ring(0, 0, 50, 26) + ']', 0)),
				FloorWish.NONE);
		assertEquals("replaced: outline only", other.changes().get(0).imageText());
		assertEquals(List.of("floor 1 (Gallery 1) is not in the file, and stays as it is"), other.notes());
		other.write(open);
		stack.execute(other.command(open.archive()));
		assertEquals(1300, site.getFloors().get(0).getOutline().areaSquareMetres(), 0.1);
		assertFalse(image.equals(site.getFloors().get(0).getPlanImage()));
		stack.undo();
		assertEquals(image, site.getFloors().get(0).getPlanImage());
		assertTrue(Files.exists(open.resolve(image)), "undo needs it");
	}

	@Test
	void placesASiteByItsPlansOnlyWhereItIsTold() throws Exception {
		site.setGeoreference(null);
		MappedFloors floors = museums(new SiteFrame.Anchor(40, -40, 0));
		IntakeException e = assertThrows(IntakeException.class, () -> taking(floors, FloorWish.NONE));
		assertTrue(e.getMessage().contains("Tide House has no place on Earth") && e.remedy().contains("--place"),
				e::getMessage);
		FloorTaking taking = taking(floors, new FloorWish(null, 0, true));
		stack.execute(taking.command(open.archive()));
		// the box of the samples is 1 to 47 by 5 m, that of the plans 42 by 26
		Outline outline = site.getFloors().get(0).getOutline();
		assertEquals(24, (outline.xMetres(0) + outline.xMetres(2)) / 2, MILLIMETRE);
		assertEquals(5, (outline.yMetres(0) + outline.yMetres(2)) / 2, MILLIMETRE);
		assertEquals(taking.placed().orElseThrow(), site.getGeoreference());
		assertTrue(taking.notes().stream().anyMatch(note -> note.contains("a guess that needs checking")),
				taking.notes()::toString);
		stack.undo();
		assertNull(site.getGeoreference());
		site.getSurveys().clear();
		Georeference corner = taking(floors, new FloorWish(null, 0, true)).placed().orElseThrow();
		assertEquals(40, corner.latitudeDegrees(), 1e-8);
		assertEquals(-40, corner.longitudeDegrees(), 1e-8);
	}

	@Test
	void asksWhichBuildingIsMeant() throws Exception {
		site.setName("The house by the yard");
		MappedFloors floors = museums(HERE);
		IntakeException e = assertThrows(IntakeException.class, () -> taking(floors, FloorWish.NONE));
		assertTrue(e.getMessage().contains("Lantern Store, Sailmakers' Hall, Tide House")
				&& e.remedy().contains("--building"), e::getMessage);
		assertEquals(2, taking(floors, new FloorWish("tide house", 0, false)).changes().size());
	}

	@Test
	void countsFloorsAsTheSiteDoes() throws Exception {
		FloorTaking taking = taking(museums(HERE), new FloorWish(null, -1, false));
		assertEquals(List.of(-1, 0), taking.changes().stream().map(FloorChange::level).toList());
		stack.execute(taking.command(open.archive()));
		assertEquals(List.of(-1, 0), site.getFloors().stream().map(Floor::getLevel).toList());
		IntakeException e = assertThrows(IntakeException.class,
				() -> taking(museums(HERE), new FloorWish(null, 40_000, false)));
		assertTrue(e.getMessage().contains("32767"), e::getMessage);
	}

	@Test
	void warnsWhereThePlansAreNotThoseOfTheSamples() throws Exception {
		FloorTaking yonder = taking(museums(new SiteFrame.Anchor(40.005, -40, 30)), FloorWish.NONE);
		assertTrue(
				yonder.notes().stream()
						.anyMatch(note -> note.matches(
								"floor 0 lies 5\\d\\d m from the samples of the site: is it the right site.*")),
				yonder.notes()::toString);
		IntakeException e = assertThrows(IntakeException.class,
				() -> taking(museums(new SiteFrame.Anchor(52, 13, 0)), FloorWish.NONE));
		assertTrue(e.getMessage().contains("cannot be on this site") && e.getMessage().contains(" km from"),
				e::getMessage);
	}

	/** A level of two areas, one with a hole: the outline goes around all of it, and that is said. */
	@Test
	void saysWhatAnOutlineCannotShow() throws Exception {
		String parts = "[[" + ring(0, 0, 20, 10) + ',' + ring(5, 5, 6, 6) + "],[" + ring(40, 0, 60, 10) + "]]";
		FloorTaking taking = taking(geoJson("parts.geojson", outline("MultiPolygon", parts, 0)), FloorWish.NONE);
		Outline outline = taking.changes().get(0).after().outline();
		assertEquals(600, outline.areaSquareMetres(), 0.1);
		assertEquals(2, taking.notes().size(), taking.notes()::toString);
		assertTrue(
				taking.notes().get(0).contains("consists of 2 areas") && taking.notes().get(1).contains("has a hole"),
				taking.notes()::toString);
	}

	@Test
	void leavesNothingWhereAnImageCannotBeWritten() throws Exception {
		FloorTaking taking = taking(museums(HERE), FloorWish.NONE);
		Path second = open.resolve(taking.changes().get(1).after().image());
		Files.createDirectories(second.resolveSibling(second.getFileName() + ".0.part").getParent());
		for (int i = 0; i <= 101; i++) { // all names that a file being written may have are taken
			Files.createFile(second.resolveSibling(second.getFileName() + "." + i + ".part"));
		}
		IntakeException e = assertThrows(IntakeException.class, () -> taking.write(open));
		assertTrue(e.getMessage().contains("could not be written"), e::getMessage);
		assertTrue(images().stream().noneMatch(file -> file.toString().endsWith(".svg")),
				() -> "left behind: " + folder);
	}
}
