package org.cairnfield.curation.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.History;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoArchiveTest {

	@TempDir
	Path folder;

	@Test
	void describesTheMuseumsWithPlansAndAFirstSavePoint() throws Exception {
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			assertEquals(3, open.archive().getSites().size());
			for (Site site : open.archive().getSites()) {
				assertTrue(site.getGeoreference() != null, site.getName());
				assertEquals(1,
						site.getSurveys().stream().filter(survey -> survey.getKind() == SurveyKind.TEST).count());
				assertTrue(site.getSurveys().stream().allMatch(survey -> !survey.getSurveyor().isBlank()));
				for (Floor floor : site.getFloors()) {
					assertTrue(Files.size(open.resolve(floor.getPlanImage())) > 1000, floor.getPlanImage());
					assertTrue(floor.getOutline().areaSquareMetres() > 100);
				}
			}
			assertFalse(open.isModified());
			try (History history = open.history()) {
				assertEquals(1, history.list(10).size());
			}
		}
	}

	@Test
	void leavesNothingBehindWhenCancelled() {
		Progress cancelled = new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		};
		assertThrows(CancellationException.class,
				() -> DemoArchive.create(new ArchiveStore(), folder.resolve("demo"),
						Workers.inline().reportingTo(cancelled)));
		assertFalse(Files.exists(folder.resolve("demo")));
	}

	@Test
	void copiesAreApartFromTheArchiveButShareTables() throws Exception {
		try (OpenArchive open = DemoArchive.create(new ArchiveStore(), folder.resolve("demo"), Workers.inline())) {
			Survey survey = open.archive().getSites().get(0).getSurveys().get(0);
			Archive copy = ArchiveCopy.of(open.archive());
			SampleRef same = ArchiveIndex.of(copy).sample(SampleKey.text(survey.getId(), survey.table().id(7)))
					.orElseThrow();
			assertTrue(same.survey() != survey && same.survey().table() == survey.table() && same.row() == 7);
			SetSampleStateCommand.setAside(List.of(new SampleRef(survey, 7)), "a trial").execute();
			assertEquals(null, same.survey().table().reason(7), "the copy stays as it was");
			assertTrue(ArchiveIndex.of(copy).sample(survey.getId() + "/nobody").isEmpty());
			assertTrue(ArchiveIndex.of(copy).sample("nowhere/1").isEmpty());
		}
	}
}
