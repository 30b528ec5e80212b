package org.cairnfield.curation.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.Fault;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Sha256;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

public class IntakeDraftTest {

	@TempDir
	Path folder;

	private Path tide;
	private Path hall;

	@BeforeEach
	public void survey() throws Exception {
		tide = file("tide.csv", "building,floor,x,y,00:00:5E:00:53:01,00:00:5E:00:53:02\n"
				+ "Tide House,0,1.5,2,-60,100\nTide House,0,2.5,2,-61,-70\nTide House,0,?,2,-61,-70\n");
		hall = file("hall.csv", "id,x,y,00:00:5E:00:53:02,00:00:5E:00:53:03\nSH-1,5,1,-50,-60\nSH-2,6,1,-51,-61\n");
	}

	private Path file(String name, String text) throws Exception {
		return Files.writeString(folder.resolve(name), text);
	}

	private static Map<Path, String> digests(IntakeDraft draft) throws Exception {
		Map<Path, String> digests = new HashMap<>();
		for (IntakeDraft.Entry entry : draft.entries()) {
			digests.put(entry.file(), Sha256.of(entry.file()));
		}
		return digests;
	}

	private static SurveyTaking taking(Archive archive, IntakeDraft draft) throws Exception {
		return draft.taking(archive, draft.read(Workers.inline()), digests(draft));
	}

	@Test
	public void takesAFileOnceAndForgetsItAgain() {
		IntakeDraft draft = IntakeDraft.EMPTY.plus(List.of(tide, hall))
				.with(List.of(tide), o -> o.withSite("Lantern Store"))
				.plus(List.of(tide, folder.resolve("x").resolve("..").resolve("hall.csv")));
		assertEquals(List.of(tide, hall), draft.entries().stream().map(IntakeDraft.Entry::file).toList());
		assertEquals("Lantern Store", draft.entry(tide).options().site().orElseThrow(), "what was said stays");
		assertEquals(List.of(hall),
				draft.minus(List.of(tide)).entries().stream().map(IntakeDraft.Entry::file).toList());
	}

	/** Sites, surveys, devices and access points have no id in common. */
	@Test
	public void aNumberIsForASecondSurveyAndNotForOneThatIsCalledLikeItsSite() throws Exception {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		for (String samples : List.of("1.5,2,-60\n", "2.5,2,-61\n")) {
			Path file = file("tide-house.csv", "building,floor,x,y,00:00:5E:00:53:01\nTide House,0," + samples);
			taking(archive, IntakeDraft.EMPTY.plus(List.of(file))).command().execute();
		}
		assertEquals(List.of("tide-house"), archive.getSites().stream().map(Site::getId).toList());
		assertEquals(List.of("tide-house-survey", "tide-house-survey-2"),
				archive.getSites().get(0).getSurveys().stream().map(Survey::getId).toList());
	}

	@Test
	public void looksAtEachFileAsWasSaidOfIt() {
		IntakeDraft draft = IntakeDraft.EMPTY.plus(List.of(tide, hall)).with(List.of(hall), o -> o.withNotHeard("-60"));
		Map<Path, IntakeDraft.Look> looks = draft.look(Workers.inline());
		assertEquals(List.of(tide, hall), List.copyOf(looks.keySet()));
		assertEquals("-60", looks.get(hall).preview().orElseThrow().guess("not heard").orElseThrow().value());
		assertFalse(
				"as specified"
						.equals(looks.get(tide).preview().orElseThrow().guess("not heard").orElseThrow().evidence()));
		assertTrue(looks.get(tide).problem().isEmpty(), looks.get(tide)::toString);
	}

	@Test
	public void seesTheOthersWhereOneCannotBeRead() throws Exception {
		Path gone = folder.resolve("gone.csv").toAbsolutePath();
		Path picture = Files.write(folder.resolve("picture.csv"),
				new byte[] { (byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3, 0, 0 });
		Path bare = file("bare.csv", "a,b\n1,2\n3,4\n");
		Map<Path, IntakeDraft.Look> looks = IntakeDraft.EMPTY.plus(List.of(gone, tide, picture, bare))
				.look(Workers.inline());
		assertTrue(looks.get(gone).preview().isEmpty());
		assertTrue(looks.get(gone).problem().orElseThrow().contains("gone.csv"), looks.get(gone).problem()::toString);
		assertTrue(looks.get(picture).preview().isEmpty());
		assertTrue(looks.get(bare).preview().isPresent() && looks.get(bare).problem().isPresent(),
				"readable, but no survey");
		assertTrue(looks.get(tide).problem().isEmpty());
	}

	/** Files that were told different things are read apart, and yet make one map. */
	@Test
	public void readsFilesToldDifferentThingsAsOneMap() throws Exception {
		IntakeDraft draft = IntakeDraft.EMPTY.plus(List.of(tide, hall)).with(List.of(tide), o -> o.withNotHeard("100"))
				.with(List.of(hall),
						o -> o.withSite("Sailmakers' Hall").withFloor(2).withDevice("Wrist guide A").withSwapXY(true));
		Intake intake = draft.read(Workers.inline());
		assertEquals(4, intake.map().size());
		assertEquals(List.of(0, 2), intake.reports().stream().map(r -> r.firstSample()).toList());
		assertEquals(1, intake.quarantined());
		assertEquals(tide, intake.quarantines().get(0).file());
		assertEquals(4, intake.quarantines().get(0).rows().get(0).line());
		assertEquals(3, intake.map().accessPointCount(), "one that both heard is one");
		assertEquals(1.0, intake.map().x(2), "swapped");
		assertEquals(5.0, intake.map().y(2));
		assertEquals("SH-2", intake.sampleIds().get(3));
		assertTrue(intake.notHeard().contains("100"), intake::notHeard);

		Archive archive = ModelFactory.eINSTANCE.createArchive();
		taking(archive, draft).command().execute();
		assertEquals(List.of("Sailmakers' Hall", "Tide House"),
				archive.getSites().stream().map(Site::getName).toList());
		assertEquals(3, archive.getAccessPoints().size());
		Survey survey = archive.getSites().get(0).getSurveys().get(0);
		assertEquals("Wrist guide A", survey.getDevice().getName());
		assertEquals(2, survey.table().floorLevel(0));
		assertEquals(-50, survey.table().rssiDbm(0, 0));
		assertEquals(1, archive.getSites().get(1).getSurveys().get(0).table().heard(0), "100 is not heard");
	}

	@Test
	public void joinsAsIfReadTogether() throws Exception {
		Intake together = SurveyIntake.read(List.of(tide, hall), IntakeOptions.GUESS.withNotHeard("100"),
				Workers.inline());
		Intake joined = JoinedIntake.of(List.of(
				SurveyIntake.read(List.of(tide), IntakeOptions.GUESS.withNotHeard("100"), Workers.inline()),
				SurveyIntake.read(List.of(hall), IntakeOptions.GUESS.withNotHeard("100"), Workers.inline())));
		assertEquals(table(together), table(joined));
		assertEquals(together.reports(), joined.reports());
		assertEquals(List.of("1", "2", "SH-1", "SH-2"), joined.sampleIds());
		assertSame(together, JoinedIntake.of(List.of(together)));
	}

	private static String table(Intake intake) throws Exception {
		StringWriter text = new StringWriter();
		// ids are those of each intake: no file loses its own because another has none
		WideTable.write(text, intake.map(),
				IntStream.range(0, intake.map().size()).mapToObj(Integer::toString).toList());
		return text.toString();
	}

	@Test
	public void takesTestSurveysAsSuch() throws Exception {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		IntakeDraft draft = IntakeDraft.EMPTY.plus(List.of(tide, hall)).withKind(List.of(hall), SurveyKind.TEST);
		taking(archive, draft).command().execute();
		assertEquals(List.of(SurveyKind.TEST, SurveyKind.TRAINING),
				archive.getSites().stream().flatMap(s -> s.getSurveys().stream()).map(Survey::getKind).toList());
	}

	@Test
	public void tellsWhatTheArchiveHasAlready() throws Exception {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		taking(archive, IntakeDraft.EMPTY.plus(List.of(hall))).command().execute();
		Path again = Files.copy(hall, folder.resolve("again.csv"));
		SurveyTaking second = taking(archive, IntakeDraft.EMPTY.plus(List.of(again)));
		assertEquals(List.of(again), second.known().stream().map(SurveyTaking.Known::file).toList());
		assertFalse(second.command().canExecute());
	}

	@Test
	public void hasARemedyForEveryFault() {
		for (Fault fault : Fault.values()) {
			assertTrue(FaultRemedy.of(fault).endsWith("."), fault::name);
		}
	}

	@Test
	public void takesAFileForTestsWhoseNameSaysSo() {
		Path test = folder.resolve("hall-test.csv");
		IntakeDraft draft = IntakeDraft.EMPTY.plus(List.of(hall, test));
		assertEquals(List.of(SurveyKind.TRAINING, SurveyKind.TEST),
				draft.entries().stream().map(IntakeDraft.Entry::kind).toList());
		assertEquals(SurveyKind.TRAINING, draft.withKind(List.of(test), SurveyKind.TRAINING).entry(test).kind());
	}
}
