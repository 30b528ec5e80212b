package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.FieldChange;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.ObjectChange.Way;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SampleChange;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.history.SurveyDiff;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.Test;

class HistoryTest extends HistoryFixture {

	@Test
	void recordsWhoAndWhenAndWhat() throws IOException {
		survey("survey-0").getSamples()
				.setTable(survey("survey-0").table().edit().reason(0, "outside").reason(1, null).done());
		open.archive().getAccessPoints().remove(3);
		SavePoint point = open.savePoint(PERSON, "After the walk.\n\nSecond floor only.").orElseThrow();
		assertEquals("M.Q.", point.person());
		assertEquals(NOW, point.time());
		assertEquals(List.of(first.id()), point.parents());
		assertEquals("1 sample set aside, 1 sample taken back, 1 access point removed in survey-0", point.summary());
		assertEquals("""
				1 sample set aside, 1 sample taken back, 1 access point removed in survey-0

				After the walk.

				Second floor only.

				survey-0: 1 sample set aside, 1 sample taken back
				access point removed: 00005e005303

				By: M.Q.
				""", point.message());
		assertEquals(List.of(point, first), history.list(10));
		assertEquals(List.of(point), history.list(1));
		assertEquals(point, history.last());
	}

	@Test
	void makesNoSavePointOfNothing() throws IOException {
		assertEquals(Optional.empty(), open.savePoint(PERSON, "again"));
		assertEquals(1, history.list(10).size());
	}

	@Test
	void findsSavePointsByTheBeginningOfTheirIds() throws IOException {
		open.archive().setName("other");
		SavePoint second = savePoint();
		assertEquals(first, history.find(first.shortId()));
		assertEquals(first, history.find("HEAD~1"));
		assertEquals(second, history.find("main"));
		for (String unknown : List.of("0123456789", "HEAD~7", "nothing", "a..b", "^", "")) {
			assertThrows(ArchiveException.class, () -> history.find(unknown), unknown);
		}
	}

	@Test
	void opensAPastStateWithoutTouchingTheFolder() throws IOException {
		String digest = open.digest();
		String text = ModelText.of(open.archive());
		open.archive().getSites().remove(0);
		open.archive().getSplits().clear();
		savePoint();
		var before = FolderText.of(open.folder());
		var past = history.open(first);
		assertEquals(List.of(), past.damages());
		assertEquals(digest, past.digest());
		assertEquals(text, ModelText.of(past.archive()));
		assertEquals(before, FolderText.of(open.folder()));
	}

	@Test
	void comparesSamplesAndReadings() throws IOException {
		Survey survey = survey("survey-0");
		SampleTable table = survey.table();
		SampleTable edited = table.edit().reason(0, "outside").reason(1, "other").position(2, 100, 200)
				.readings(3, Readings.of(Map.of("00005e005301", -61, "00005e005303", -80))).done();
		var builder = SampleTable.builder();
		for (int row = 0; row < edited.size() - 1; row++) {
			builder.add(edited.sample(row));
		}
		builder.sample("new", 0, 1, 2).time(5).reading("00005e005309", -50);
		survey.getSamples().setTable(builder.build());
		SavePoint second = savePoint();

		ArchiveDiff diff = history.compare(first, second);
		assertEquals(List.of(), diff.objects());
		SurveyDiff changes = diff.surveys().get(0);
		assertEquals("survey-0", changes.survey());
		assertEquals(1, changes.count(SampleChange::isAdded));
		assertEquals(1, changes.count(SampleChange::isRemoved));
		assertEquals(1, changes.count(SampleChange::isSetAside));
		assertEquals(1, changes.count(SampleChange::isReasonChanged));
		assertEquals(1, changes.count(SampleChange::isMoved));
		assertEquals(1, changes.count(SampleChange::hasOtherReadings));
		assertEquals(0, changes.count(SampleChange::isTakenBack));
		assertEquals(1, changes.readingsAdded());
		assertEquals(1, changes.readingsRemoved());
		assertEquals(1, changes.readingsChanged());
		SampleChange moved = changes.samples().stream().filter(SampleChange::isMoved).findFirst().orElseThrow();
		assertEquals(table.sample(2), moved.before());
		assertEquals(100, moved.after().xMetres());

		ArchiveDiff back = history.compare(second, first);
		assertEquals(1, back.samples(SampleChange::isTakenBack));
		assertEquals(1, back.surveys().get(0).readingsAdded());
		assertTrue(history.compare(second, second).isEmpty());
		assertEquals(diff, history.changesOf(second));
		assertEquals(diff, history.compareWithSaved(first));
	}

	@Test
	void comparesEverythingElseByItsIds() throws IOException {
		Archive archive = open.archive();
		archive.getAccessPoints().get(0).setReason("hotspot");
		AccessPoint removed = archive.getAccessPoints().remove(1);
		archive.getDevices().get(0).setOffsetDb(2.5);
		archive.getSites().get(0).getFloors().get(0).setName("Cellar");
		archive.getWaivers().remove(0);
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId("v-99");
		archive.getLedgers().get(0).getVerdicts().add(verdict);
		Split split = archive.getSplits().get(0);
		split.setEpsilon(77);
		split.setLabels(relabelled(split.getLabels()));
		SavePoint second = savePoint();

		ArchiveDiff diff = history.compare(first, second);
		assertEquals(List.of(), diff.surveys());
		assertEquals(1, diff.objects("access point", Way.REMOVED));
		assertEquals(1, diff.objects("device", Way.CHANGED));
		assertEquals(1, diff.objects("floor", Way.CHANGED));
		assertEquals(1, diff.objects("waiver", Way.REMOVED));
		assertEquals(1, diff.objects("verdict", Way.ADDED));
		assertEquals(1, diff.objects("split", Way.CHANGED));
		assertEquals(1, diff.objects("label", Way.CHANGED));
		Map<String, ObjectChange> byId = diff.objects().stream().filter(change -> change.what().equals("access point"))
				.collect(Collectors.toMap(ObjectChange::id, change -> change));
		assertEquals(Way.REMOVED, byId.get(removed.getId()).way());
		FieldChange reason = byId.get("00005e005300").fields().get(0);
		assertEquals("reason", reason.name());
		assertEquals("hotspot", reason.after());
		assertTrue(diff.summary().contains("1 access point changed"), diff.summary()::toString);
	}

	private static Labels relabelled(Labels labels) {
		LabelsBuilder builder = Labels.builder();
		for (int row = 0; row < labels.size(); row++) {
			builder.add(labels.key(row), row == 5 ? 2 : labels.cluster(row),
					row == 5 && labels.role(5) == Role.NOISE ? Role.CORE
							: row == 5 && labels.cluster(5) == 2
									? Role.BORDER == labels.role(5) ? Role.CORE : Role.BORDER
									: labels.role(row));
		}
		return builder.build();
	}

	@Test
	void followsASurveyToAnotherSite() throws IOException {
		open.archive().getSites().get(1).getSurveys().add(survey("survey-0"));
		ArchiveDiff diff = history.compare(first, savePoint());
		assertEquals(List.of(), diff.surveys(), "no sample differs");
		assertEquals(List.of(new FieldChange("site", "th", "Sail.Hall_2")), diff.objects().get(0).fields());
	}

	@Test
	void restoresAWholeState() throws IOException {
		String digest = open.digest();
		var files = FolderText.of(open.folder());
		open.archive().getSites().remove(0);
		open.archive().getSplits().clear();
		savePoint();
		SavePoint restored = open.restore(first, Person.named("R.T."), "by mistake").orElseThrow();
		assertEquals(digest, open.digest());
		assertEquals(files, FolderText.of(open.folder()));
		assertTrue(restored.summary().startsWith("Restore " + first.shortId()), restored::summary);
		assertEquals("R.T.", restored.person());
		assertEquals(3, history.list(10).size(), "what was restored over stays in the history");
		assertTrue(history.compare(first, restored).isEmpty());
		assertEquals(Optional.empty(), open.restore(first, PERSON, null));
	}

	@Test
	void recordsWhatWasSavedBeforeAnotherStateIsRestored() throws IOException {
		survey("survey-0").getSamples().setTable(survey("survey-0").table().edit().reason(0, "saved only").done());
		open.save();
		String saved = open.digest();
		open.restore(first, PERSON, null);
		List<SavePoint> points = history.list(10);
		assertEquals(3, points.size());
		assertEquals(saved, history.open(points.get(1)).digest());
	}

	@Test
	void letsLedgersOnlyGrow() throws IOException {
		open.archive().getLedgers().get(0).getVerdicts().remove(3);
		ArchiveException refused = assertThrows(ArchiveException.class, this::savePoint);
		assertTrue(refused.getMessage().contains("verdict v-3") && refused.getMessage().contains("only grow"),
				refused::getMessage);
		open.reload();
		open.archive().getLedgers().clear();
		assertThrows(ArchiveException.class, this::savePoint);
		assertEquals(1, history.list(10).size());
		open.restore(first, PERSON, null);
		Verdict pending = ModelFactory.eINSTANCE.createVerdict();
		pending.setId("pending");
		open.archive().getLedgers().get(0).getVerdicts().add(pending);
		open.save();
		open.archive().getLedgers().get(0).getVerdicts().remove(pending);
		assertEquals(Optional.empty(), open.savePoint(PERSON, null), "one that no save point holds may go");
	}

	@Test
	void savesNothingOverWhatAnotherProgramHasChanged() throws IOException {
		Path samples = open.folder().resolve("surveys/th/survey-0.samples");
		Files.writeString(samples, Files.readString(samples).replaceFirst("kept", "aside: by hand"));
		var files = FolderText.of(open.folder());
		open.archive().setName("mine");
		ArchiveException refused = assertThrows(ArchiveException.class, open::save);
		assertTrue(refused.getMessage().contains("survey-0.samples was changed by another program"),
				refused::getMessage);
		assertEquals(files, FolderText.of(open.folder()));
		assertTrue(open.isModified());
	}

	@Test
	void doesNotMindWhatOthersDoToTheirOwnFiles() throws IOException {
		Files.writeString(open.folder().resolve("notes.txt"), "mine");
		Files.createDirectories(open.folder().resolve("plans"));
		Files.writeString(open.folder().resolve("plans/th-0.png"), "picture");
		open.archive().setName("mine");
		assertFalse(open.save().isEmpty());
	}

	@Test
	void restoresPlanImagesWhateverTheirNames() throws IOException {
		Files.createDirectories(open.folder().resolve("plans"));
		Path plan = open.folder().resolve("plans/a\tb\n%09 \u00e4.png");
		assumeTrue(canHave(plan), "no such names here");
		Files.write(plan, new byte[] { 0, 13, 10, -1 });
		open.archive().setName("with plan");
		SavePoint second = savePoint();
		open.restore(first, PERSON, null);
		assertFalse(Files.exists(plan));
		open.restore(second, PERSON, null);
		assertArrayEquals(new byte[] { 0, 13, 10, -1 }, Files.readAllBytes(plan));
		assertEquals("with plan", open.archive().getName());
	}

	private static boolean canHave(Path file) {
		try {
			Files.createFile(file);
			return true;
		} catch (IOException | RuntimeException e) {
			return false;
		}
	}

	@Test
	void tellsTheBranch() throws IOException {
		assertEquals(Optional.of("main"), history.branch());
	}

	@Test
	void refusesPeopleThatGitCouldNotKeep() {
		for (String name : List.of("", " ", "a\nb", "<x>", "\u0000")) {
			assertThrows(IllegalArgumentException.class, () -> Person.named(name), name);
		}
	}

	@Test
	void readsAPastStateOfAnArchiveThatIsLost() throws IOException {
		String digest = open.digest();
		open.close();
		for (String path : FolderText.of(open.folder()).keySet()) {
			Files.delete(open.folder().resolve(path));
		}
		try (History alone = History.of(open.folder())) {
			assertEquals(digest, alone.open(alone.last()).digest());
		}
	}
}
