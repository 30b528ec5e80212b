package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;

import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people work on one survey whose samples lie in parts. */
class SurveyPartsExchangeTest {

	private static final String ANN = "A. Steward";
	private static final String BEN = "B. Reviewer";
	private static final String PARTS = "surveys/th/spring.parts/";

	@TempDir
	Path folder;
	private Clones clones;

	@BeforeEach
	void meet() throws IOException {
		clones = new Clones(folder, SurveyPartsExchangeTest::fill, ANN, BEN);
	}

	@AfterEach
	void part() throws IOException {
		clones.close();
	}

	private static void fill(Archive archive) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		site.setName("Tide House");
		archive.getSites().add(site);
		for (String id : List.of("spring", "autumn")) {
			SampleTableBuilder table = SampleTable.builder();
			for (int i = 0; i < 2_500; i++) {
				table.sample(String.format("TH-%05d", i), 0, i % 50, i / 50.0).reading("00005e005301", -40 - i % 50);
			}
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId(id);
			survey.setName(id);
			survey.setSamples(ModelFactory.eINSTANCE.createSamples());
			survey.getSamples().setTable(table.build());
			site.getSurveys().add(survey);
		}
	}

	private static void move(Archive archive, int row, double x) {
		Survey survey = SampleArchives.survey(archive, "spring");
		survey.getSamples().setTable(survey.table().edit().position(row, x, 1).done());
	}

	private void requireSame() throws IOException {
		assertEquals(FolderText.of(clones.folder(ANN)), FolderText.of(clones.folder(BEN)));
		assertEquals(clones.of(ANN).digest(), clones.of(BEN).digest());
		for (String person : List.of(ANN, BEN)) {
			clones.close(person);
			clones.open(person);
			assertEquals(List.of(), clones.of(person).damages());
			assertEquals("", new PlainGit(clones.folder(person)).run("status", "--porcelain"));
		}
	}

	@Test
	void bringsTogetherWhatBothHaveChangedInOnePartAndInOthers() throws IOException {
		SortedMap<String, String> before = FolderText.of(clones.folder(ANN));
		clones.edit(ANN, archive -> {
			move(archive, 0, 77);
			move(archive, 2_000, 78);
		});
		clones.edit(BEN, archive -> {
			move(archive, 1, 79);
			move(archive, 1_000, 80);
		});
		clones.exchange(ANN);
		clones.exchange(BEN);
		clones.exchange(ANN);
		SampleTable table = SampleArchives.survey(clones.archive(ANN), "spring").table();
		assertEquals(List.of(77.0, 79.0, 80.0, 78.0),
				List.of(table.xMetres(0), table.xMetres(1), table.xMetres(1_000), table.xMetres(2_000)));
		SortedMap<String, String> after = FolderText.of(clones.folder(ANN));
		after.entrySet().removeAll(before.entrySet());
		assertEquals(3, after.keySet().stream().filter(path -> path.startsWith(PARTS)).count(),
				() -> "changed: " + after.keySet());
		assertEquals(3, after.size(), () -> "changed: " + after.keySet());
		requireSame();
	}

	@Test
	void takesAllPartsOfASurveyAwayThatOneHasRemoved() throws IOException {
		clones.edit(ANN,
				archive -> archive.getSites().get(0).getSurveys().remove(SampleArchives.survey(archive, "spring")));
		clones.edit(BEN, archive -> archive.setName("by Ben"));
		clones.exchange(ANN);
		clones.exchange(BEN);
		clones.exchange(ANN);
		assertFalse(FolderText.of(clones.folder(BEN)).keySet().stream().anyMatch(path -> path.startsWith(PARTS)));
		assertTrue(FolderText.of(clones.folder(BEN)).keySet().stream()
				.anyMatch(path -> path.startsWith("surveys/th/autumn.parts/")));
		requireSame();
	}
}
