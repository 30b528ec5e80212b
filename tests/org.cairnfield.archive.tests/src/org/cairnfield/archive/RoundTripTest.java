package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is saved is what is loaded, and what is written depends on nothing but the content. */
class RoundTripTest {

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;

	private OpenArchive filled(String name, long seed, int surveys, int samples) throws IOException {
		OpenArchive open = store.create(folder.resolve(name), "Marrow Quay");
		SampleArchives.fill(open.archive(), seed, surveys, samples);
		return open;
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20 })
	void loadsWhatWasSaved(long seed) throws IOException {
		Random random = new Random(seed);
		String saved;
		String digest;
		try (OpenArchive open = filled("a", seed, random.nextInt(5), random.nextInt(120))) {
			open.save();
			saved = ModelText.of(open.archive());
			digest = open.digest();
		}
		try (OpenArchive open = store.open(folder.resolve("a"), Mode.EDIT)) {
			assertEquals(List.of(), open.damages());
			assertEquals(List.of(), open.notices().stream().filter(notice -> !notice.contains("has no name")).toList());
			assertEquals(saved, ModelText.of(open.archive()));
			assertEquals(digest, open.digest());
			assertFalse(open.isModified());
			assertEquals(Set.of(), open.save(), "nothing to do");
		}
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void writesTheSameBytesWhateverTheOrderOfInsertion(long seed) throws IOException {
		try (OpenArchive one = filled("one", seed, 3, 60); OpenArchive other = filled("other", seed, 3, 60)) {
			one.save();
			Random random = new Random(seed);
			Archive archive = other.archive();
			shuffle(archive.getAccessPoints(), random);
			shuffle(archive.getDevices(), random);
			shuffle(archive.getSites(), random);
			shuffle(archive.getSplits(), random);
			shuffle(archive.getWaivers(), random);
			shuffle(archive.getSplits().get(0).getClusters(), random);
			for (Site site : archive.getSites()) {
				shuffle(site.getFloors(), random);
				shuffle(site.getSurveys(), random);
				for (Survey survey : site.getSurveys()) {
					survey.getSamples().setTable(rebuiltBackwards(survey.table()));
				}
			}
			other.save();
			assertEquals(FolderText.of(one.folder()), FolderText.of(other.folder()));
			assertEquals(one.digest(), other.digest());
		}
	}

	private static <T> void shuffle(EList<T> list, Random random) {
		List<T> copy = new ArrayList<>(list);
		Collections.shuffle(copy, random);
		ECollections.setEList(list, copy);
	}

	private static SampleTable rebuiltBackwards(SampleTable table) {
		SampleTableBuilder builder = SampleTable.builder();
		for (int row = table.size() - 1; row >= 0; row--) {
			builder.add(table.sample(row));
		}
		return builder.build();
	}

	@Test
	void writesTheSameBytesWhenReadAndWrittenInWhole() throws IOException {
		try (OpenArchive open = filled("a", 5, 3, 80)) {
			open.save();
		}
		try (OpenArchive read = store.open(folder.resolve("a"), Mode.READ);
				OpenArchive copy = store.create(folder.resolve("b"), "")) {
			EcoreUtil.Copier copier = new EcoreUtil.Copier();
			Archive again = (Archive) copier.copy(read.archive());
			copier.copyReferences();
			Archive target = copy.archive();
			target.setName(again.getName());
			target.setSiteOrder(again.getSiteOrder());
			target.getSites().addAll(again.getSites());
			target.getAccessPoints().addAll(again.getAccessPoints());
			target.getDevices().addAll(again.getDevices());
			target.getWaivers().addAll(again.getWaivers());
			target.getSplits().addAll(again.getSplits());
			target.getLedgers().addAll(again.getLedgers());
			copy.save();
			assertEquals(FolderText.of(read.folder()), FolderText.of(copy.folder()));
			assertEquals(read.digest(), copy.digest());
		}
	}

	@Test
	void tellsDifferentContentByItsDigest() throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 30)) {
			String before = open.digest();
			Samples samples = open.archive().getSites().get(0).getSurveys().get(0).getSamples();
			SampleTable table = samples.getTable();
			samples.setTable(table.edit().position(3, table.xMetres(3) + 0.01, table.yMetres(3)).done());
			String moved = open.digest();
			assertNotEquals(before, moved);
			samples.setTable(table);
			assertEquals(before, open.digest());
		}
	}

	@Test
	void writesOnlyTheFileOfTheSurveyThatChanged() throws IOException {
		try (OpenArchive open = filled("a", 5, 4, 30)) {
			open.save();
			Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
			survey.getSamples().setTable(survey.table().edit().reason(2, "outside").done());
			assertTrue(open.isModified());
			assertEquals(Set.of("surveys/th/" + survey.getId() + ".samples"), open.save());
			assertFalse(open.isModified());
		}
	}

	@Test
	void movesTheFileWithItsSurvey() throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 30)) {
			open.save();
			Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
			survey.setId("renamed");
			open.archive().getSites().get(1).getSurveys().add(survey);
			assertEquals(Set.of("archive.xmi", "surveys/Sail.Hall_2/renamed.samples", "surveys/th/survey-0.samples"),
					open.save());
			String text = ModelText.of(open.archive());
			assertFalse(FolderText.of(open.folder()).containsKey("surveys/th/survey-0.samples"));
			open.reload();
			assertEquals(text, ModelText.of(open.archive()));
		}
	}

	@Test
	void deletesTheFilesOfWhatIsGone() throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 30)) {
			open.save();
			open.archive().getSites().get(0).getSurveys().clear();
			open.archive().getSplits().remove(0);
			open.archive().getLedgers().clear();
			open.save();
			assertEquals(
					Set.of(".gitattributes", "archive.xmi", "splits/th-0.split",
							"surveys/Sail.Hall_2/survey-1.samples"),
					FolderText.of(open.folder()).keySet());
			open.reload();
			assertEquals(List.of(), open.damages());
		}
	}

	@Test
	void keepsASurveyWithoutSamplesApartFromOneWithAnEmptyTable() throws IOException {
		try (OpenArchive open = store.create(folder.resolve("a"), "n")) {
			Site site = ModelFactory.eINSTANCE.createSite();
			site.setId("th");
			open.archive().getSites().add(site);
			for (String id : List.of("none", "empty")) {
				Survey survey = ModelFactory.eINSTANCE.createSurvey();
				survey.setId(id);
				site.getSurveys().add(survey);
			}
			site.getSurveys().get(1).setSamples(ModelFactory.eINSTANCE.createSamples());
			site.getSurveys().get(1).getSamples().setTable(SampleTable.EMPTY);
			open.save();
			assertTrue(FolderText.of(open.folder()).containsKey("surveys/th/empty.samples"));
			String text = ModelText.of(open.archive());
			open.reload();
			assertEquals(text, ModelText.of(open.archive()));
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "../out", "a/b", "", "con", "nul.x", "a\\b", ".hidden", "C:x", "x." })
	void refusesIdsThatCannotNameFiles(String id) throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 10)) {
			open.save();
			var before = FolderText.of(open.folder());
			open.archive().getSites().get(0).getSurveys().get(0).setId(id);
			ArchiveException refused = assertThrows(ArchiveException.class, open::save);
			assertTrue(refused.getMessage().contains("nothing was saved"), refused::getMessage);
			assertEquals(before, FolderText.of(open.folder()));
			assertTrue(open.isModified());
		}
	}

	@Test
	void refusesIdsThatDifferInCaseOnly() throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 10)) {
			open.archive().getSites().get(0).getSurveys().get(0).setId("SURVEY-1");
			ArchiveException refused = assertThrows(ArchiveException.class, open::save);
			assertTrue(refused.getMessage().contains("upper and lower case"), refused::getMessage);
		}
	}

	@Test
	void refusesAReferenceToWhatIsNotInTheArchive() throws IOException {
		try (OpenArchive open = filled("a", 5, 2, 10)) {
			open.save();
			var before = FolderText.of(open.folder());
			Device stranger = ModelFactory.eINSTANCE.createDevice();
			stranger.setId("stranger");
			open.archive().getSites().get(0).getSurveys().get(0).setDevice(stranger);
			assertThrows(ArchiveException.class, open::save);
			assertEquals(before, FolderText.of(open.folder()));
		}
	}
}
