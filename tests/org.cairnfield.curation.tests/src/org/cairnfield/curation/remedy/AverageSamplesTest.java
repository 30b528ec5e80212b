package org.cairnfield.curation.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.Test;

class AverageSamplesTest {

	private static final Remedy REMEDY = new Remedy.AverageSamples(
			List.of(List.of("spring/S1", "spring/S2", "spring/S3")), "scanned twice");

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();
	private final Survey survey = ModelFactory.eINSTANCE.createSurvey();

	AverageSamplesTest() {
		survey.setId("spring");
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		survey.getSamples()
				.setTable(SampleTable.builder().sample("S1", 0, 1, 1).reading("a", -50).reading("b", -60)
						.reading("c", -80)
						.sample("S2", 0, 1, 1).reading("a", -50).reading("b", -60).reading("c", -80)
						.sample("S3", 0, 1, 1).reading("a", -53).reading("b", -70).reading("d", -90)
						.sample("S4", 0, 1, 1).reading("a", -10).build());
		Site site = ModelFactory.eINSTANCE.createSite();
		archive.getSites().add(site);
		site.getSurveys().add(survey);
	}

	@Test
	void makesOneSampleOfSeveralAndCanBeUndone() {
		SampleTable before = survey.table();
		Command command = new RemedyCommands(archive).command(REMEDY);
		assertTrue(command.canExecute());
		command.execute();
		assertEquals("a:-51 b:-65 c:-80 d:-90", survey.table().readings(0).toString());
		assertTrue(survey.table().isKept(0));
		assertEquals("scanned twice", survey.table().reason(1));
		assertEquals("scanned twice", survey.table().reason(2));
		assertTrue(survey.table().isKept(3));
		assertEquals("Average scans: 3 samples", command.getLabel());
		command.undo();
		assertEquals(before, survey.table());
		command.redo();
		assertFalse(survey.table().isKept(1));
	}

	@Test
	void leavesOutWhatLessThanHalfOfTheScansHeard() {
		Map<String, Integer> mean = Remedy.AverageSamples
				.mean(List.of(Map.of("a", -50, "b", -60), Map.of("a", -53), Map.of("a", -56)));
		assertEquals(Map.of("a", -53), mean);
	}

	@Test
	void countsAScanThatWasHandedOutAgainOnce() {
		Map<String, Integer> scan = Map.of("a", -50);
		assertEquals(Map.of("a", -55), Remedy.AverageSamples.mean(List.of(scan, scan, scan, Map.of("a", -60))));
	}
}
