package org.cairnfield.ui.internal.fingerprint.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class HearingTest {

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();

	@BeforeEach
	void surveyTheTideHouse() {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setName("Tide House");
		archive.getSites().add(site);
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId("th-spring");
		survey.setName("spring");
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		SampleTableBuilder table = SampleTable.builder();
		table.sample("A", 0, 1, 1).reading("one", -70).reading("two", -50);
		table.sample("B", 0, 2, 1).reading("one", -60);
		table.sample("C", 0, 3, 1).reading("two", -55);
		table.sample("D", 1, 1, 1).reading("one", -80);
		table.sample("E", 0, 1, 2).reason("a trial").reading("one", -30);
		samples.setTable(table.build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
	}

	@Test
	void tellsFloorsApartAndLeavesOutWhatIsSetAside() {
		assertEquals(List.of(new Hearing.Place("Tide House", "th-spring", "spring", 0, 2, 3, -65, "B", -60),
				new Hearing.Place("Tide House", "th-spring", "spring", 1, 1, 1, -80, "D", -80)),
				Hearing.of(archive, "one").places());
	}

	@Test
	void givesAllLevels() {
		double[] levels = Hearing.of(archive, "one").levelsDbm();
		Arrays.sort(levels);
		assertEquals("[-80.0, -70.0, -60.0]", Arrays.toString(levels));
	}

	@Test
	void knowsWhatNobodyHears() {
		assertTrue(Hearing.of(archive, "three").places().isEmpty());
	}
}
