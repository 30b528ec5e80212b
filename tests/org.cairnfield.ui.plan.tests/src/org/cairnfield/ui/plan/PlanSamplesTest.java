package org.cairnfield.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.Test;

class PlanSamplesTest {

	private final Site site = ModelFactory.eINSTANCE.createSite();
	private final Floor floor = ModelFactory.eINSTANCE.createFloor();

	PlanSamplesTest() {
		floor.setLevel(1);
		site.getFloors().add(floor);
	}

	private Survey survey(String id, SampleTableBuilder table) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(table.build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
		return survey;
	}

	@Test
	void takesTheSamplesOfTheLevelFromAllSurveysOfTheSite() {
		Survey spring = survey("spring", SampleTable.builder().sample("a", 0, 1, 1).sample("b", 1, 2, 3).sample("c", 1, 4, 5));
		Survey autumn = survey("autumn", SampleTable.builder().sample("d", 1, 6, 7).reason("blurred").sample("e", 2, 8, 9));
		PlanSamples samples = PlanSamples.of(floor);
		assertEquals(3, samples.size());
		assertEquals(new SampleRef(spring, 1), samples.ref(0));
		assertEquals(new SampleRef(autumn, 0), samples.ref(2));
		assertEquals(6, samples.xMetres()[2]);
		assertEquals(7, samples.yMetres()[2]);
		assertFalse(samples.isKept(2));
		for (int i = 0; i < samples.size(); i++) {
			assertEquals(i, samples.indexOf(samples.ref(i)));
		}
		assertEquals(-1, samples.indexOf(new SampleRef(spring, 0)));
		assertEquals(-1, samples.indexOf(new SampleRef(autumn, 1)));
	}

	@Test
	void hasNoneForAFloorWithoutASite() {
		assertEquals(0, PlanSamples.of(ModelFactory.eINSTANCE.createFloor()).size());
	}
}
