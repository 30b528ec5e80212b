package org.cairnfield.ui.internal.conflicts.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.scope.MarkedPlace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ConflictRowTest {

	private static final String SAMPLE = "site tide-house/survey spring/sample S-1";
	private static final Instant TIME = Instant.parse("2031-05-02T10:00:00Z");

	private final ModelFactory factory = ModelFactory.eINSTANCE;
	private final Archive archive = factory.createArchive();

	@BeforeEach
	void archive() {
		Site site = factory.createSite();
		site.setId("tide-house");
		site.setName("Tide House");
		archive.getSites().add(site);
		Floor floor = factory.createFloor();
		floor.setLevel(2);
		floor.setName("Gallery");
		site.getFloors().add(floor);
		Survey survey = factory.createSurvey();
		survey.setId("spring");
		survey.setSamples(factory.createSamples());
		survey.getSamples().setTable(SampleTable.builder().sample("S-1", 2, 1, 4).build());
		site.getSurveys().add(survey);
		Device device = factory.createDevice();
		device.setId("guide-a");
		device.setName("Wrist guide A");
		archive.getDevices().add(device);
	}

	private ConflictRow row(String place, String unit, String base, String... claims) {
		Conflict conflict = factory.createConflict();
		conflict.setPlace(place);
		conflict.setUnit(unit);
		conflict.setBase(base);
		for (String value : claims) {
			Claim claim = factory.createClaim();
			claim.setValue(value);
			claim.setPerson(conflict.getClaims().isEmpty() ? "A. Steward" : "B. Reviewer");
			claim.setTime(TIME);
			conflict.getClaims().add(claim);
		}
		archive.getConflicts().clear();
		archive.getConflicts().add(conflict);
		return ConflictRow.of(archive).get(0);
	}

	@Test
	void aPositionIsNamedFromTheInsideOutWithHowFarItIsFromBefore() {
		ConflictRow row = row(SAMPLE, "position", "1.0 4.0", "4.0 8.0", "1.0 4.5");
		assertEquals("Sample S-1 of spring, Tide House", row.place());
		assertEquals("position", row.unit());
		assertEquals("x 1.00 m, y 4.00 m", row.before());
		assertEquals(
				"A. Steward: x 4.00 m, y 8.00 m, 5.00 m from before; B. Reviewer: x 1.00 m, y 4.50 m, 0.50 m from before",
				row.claims());
		assertEquals(List.of("before", "A. Steward", "B. Reviewer"),
				row.values().stream().map(ConflictValue::who).toList());
		assertEquals("4.0 8.0", row.values().get(1).value());
		assertEquals(TIME, row.values().get(1).time());
	}

	@Test
	void aGateIsNamedAndAskedOrNot() {
		ConflictRow row = row("file releases/gates.txt", "signer", null, "= another", "= anyone");
		assertEquals(List.of("Gates of a release", "signer", "not asked", "A. Steward: another; B. Reviewer: anyone"),
				List.of(row.place(), row.unit(), row.before(), row.claims()));
	}

	@Test
	void thePlanMarksWhereEachHasPutIt() {
		ConflictRow row = row(SAMPLE, "position", "1.0 4.0", "4.0 8.0", "1.0 4.5");
		Floor floor = archive.getSites().get(0).getFloors().get(0);
		assertEquals(
				List.of(new MarkedPlace(floor, 1, 4, "before"), new MarkedPlace(floor, 4, 8, "A. Steward"),
						new MarkedPlace(floor, 1, 4.5, "B. Reviewer")),
				row.places(floor));
		assertEquals(List.of(), row(SAMPLE, "state", null, "1 2", "3 4").places(floor));
	}

	@Test
	void noValueIsSaidInTheWordsOfItsUnit() {
		assertEquals("A. Steward: in the map; B. Reviewer: set aside: spoilt",
				row(SAMPLE, "state", "twice", null, "spoilt").claims());
		assertEquals("A. Steward: not heard; B. Reviewer: -61 dBm",
				row(SAMPLE, "reading of ap-1", "-60", null, "-61").claims());
		assertEquals("level of ap-1", row(SAMPLE, "reading of ap-1", "-60", null, "-61").unit());
		assertEquals("A. Steward: removed; B. Reviewer: kept", row(SAMPLE, "presence", "kept", null, "kept").claims());
		assertEquals("no value", row("archive", "name", null, "a", "b").before());
		assertEquals("A. Steward: no value; B. Reviewer: Wrist guide A",
				row("site tide-house/survey spring", "device", null, null, "guide-a").claims());
	}

	@Test
	void floorsAndObjectsHaveTheirNames() {
		ConflictRow floor = row(SAMPLE, "floor", "0", "2", "7");
		assertEquals("floor 0", floor.before());
		assertEquals("A. Steward: Gallery; B. Reviewer: floor 7", floor.claims());
		assertEquals("Floor Gallery, Tide House", row("site tide-house/floor 2", "name", "a", "b", "c").place());
		assertEquals("The archive", row("archive", "name", "a", "b", "c").place());
		assertEquals("Site gone", row("site gone", "name", "a", "b", "c").place());
	}
}
