package org.cairnfield.curation.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.LevelLine;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.CorrectDeviceCommand;
import org.cairnfield.model.edit.CountAccessPointsAsCommand;
import org.cairnfield.model.edit.SetMapPeriodCommand;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a steward decides on access points, devices and days makes another map of the same readings. */
class ArchiveMapTest {

	private static final String A = "00:00:5E:00:53:01";
	private static final String B = "00:00:5E:00:53:02";
	private static final String C = "00:00:5E:00:53:03";

	@TempDir
	Path folder;
	private Archive archive;

	/** Two surveys of one place: A at −60 and B at −50 dBm in spring, C at −70 dBm in autumn. */
	@BeforeEach
	void takeIn() throws Exception {
		archive = ModelFactory.eINSTANCE.createArchive();
		take("2031-04-07", new RadioMapBuilder().sample("Sail Loft", 0, 1, 2).device("Wrist guide A")
				.time(at("2031-04-07")).reading(A, -60).reading(B, -50).build());
		take("2031-10-07", new RadioMapBuilder().sample("Sail Loft", 0, 1, 2).device("Wrist guide B")
				.time(at("2031-10-07")).reading(C, -70).build());
	}

	private static long at(String day) {
		return LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
	}

	private void take(String name, RadioMap map) throws Exception {
		Path file = folder.resolve(name + ".csv");
		WideTable.write(file, map, List.of("S-" + name));
		Intake intake = SurveyIntake.read(List.of(file), IntakeOptions.GUESS, Workers.inline());
		SurveyTaking.of(archive, intake, SurveyKind.TRAINING, Map.of(file, name)).command().execute();
	}

	private AccessPoint accessPoint(String address) {
		return archive.getAccessPoints().stream().filter(each -> each.getAddress().equals(address)).findFirst()
				.orElseThrow();
	}

	private Site site() {
		return archive.getSites().get(0);
	}

	private static List<String> readings(RadioMap map) {
		List<String> readings = new ArrayList<>();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				readings.add(s + " " + map.accessPoints().get(map.accessPoint(k)).substring(15) + ' ' + map.rssiDbm(k));
			}
		}
		return readings;
	}

	private List<String> readings() {
		return readings(ArchiveMap.of(archive).map());
	}

	private static void run(Command command) {
		assertTrue(command.canExecute());
		command.execute();
	}

	@Test
	void readingsCountForOthersAndTheStrongerStands() {
		assertEquals(List.of("0 01 -60", "0 02 -50", "1 03 -70"), readings());
		Command count = new CountAccessPointsAsCommand(List.of(accessPoint(B)), accessPoint(A));
		run(count);
		assertEquals(List.of("0 01 -50", "1 03 -70"), readings());
		run(new CountAccessPointsAsCommand(List.of(accessPoint(A)), accessPoint(C)));
		assertEquals(List.of("0 03 -50", "1 03 -70"), readings(), "over two steps");
		run(new CountAccessPointsAsCommand(List.of(accessPoint(C)), accessPoint(B)));
		assertEquals(List.of("0 01 -60", "0 02 -50", "1 03 -70"), readings(), "in a circle each counts for itself");
		count.undo();
		assertEquals(List.of("0 02 -50", "1 02 -70"), readings(), "A as C, and that as B");
		assertThrows(IllegalArgumentException.class,
				() -> new CountAccessPointsAsCommand(List.of(accessPoint(A)), accessPoint(A)));
	}

	@Test
	void whatIsSetAsideIsGoneWhateverItCountsAs() {
		accessPoint(B).setReason("a hotspot");
		accessPoint(A).setCountsAs(accessPoint(C).getId());
		assertEquals(List.of("0 03 -60", "1 03 -70"), readings());
		accessPoint(C).setReason("gone");
		assertEquals(List.of(), readings(), "what counts as one that is set aside goes with it");
		assertEquals(List.of("0 01 -60", "0 02 -50", "1 03 -70"),
				readings(ArchiveMap.recorded(archive, Scope.ARCHIVE, survey -> true).map()), "as recorded");
	}

	@Test
	void surveysOfOtherDaysAreNoPartOfTheMap() {
		Command autumn = new SetMapPeriodCommand(site(), LocalDate.parse("2031-05-01"), null);
		run(autumn);
		assertEquals(List.of("0 03 -70"), readings());
		assertFalse(ArchiveMap.isOfTheMap(site().getSurveys().get(0)));
		autumn.undo();
		assertEquals(3, readings().size());
		run(new SetMapPeriodCommand(site(), null, LocalDate.parse("2031-04-07")));
		assertEquals(List.of("0 01 -60", "0 02 -50"), readings(), "the last day belongs to it");
		assertThrows(IllegalArgumentException.class,
				() -> new SetMapPeriodCommand(site(), LocalDate.parse("2031-05-01"), LocalDate.parse("2031-04-01")));
	}

	@Test
	void levelsOfADeviceFollowALine() {
		Device second = archive.getDevices().stream().filter(device -> device.getName().endsWith("B")).findFirst()
				.orElseThrow();
		Command correct = new RemedyCommands(archive)
				.command(new Remedy.CorrectDevice(second.getId(), second.getName(), new LevelLine(0.9, -2)));
		long before = ArchiveMap.of(archive).surveyed().readingOfKey();
		run(correct);
		assertNotEquals(before, ArchiveMap.of(archive).surveyed().readingOfKey(),
				"what the rules remember of the map no longer holds");
		assertEquals(List.of("0 01 -60", "0 02 -50", "1 03 -65"), readings(), "0.9 of -70, less 2");
		correct.undo();
		assertEquals("1 03 -70", readings().get(2));
		assertThrows(IllegalArgumentException.class, () -> new CorrectDeviceCommand(second, 9.0, 0.0));
		assertEquals(RadioMap.LOWEST_RSSI_DBM, new LevelLine(2, -60).of(-100), "within what a map can hold");
	}
}
