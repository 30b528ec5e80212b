package org.cairnfield.ui.plan.internal.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.plan.PlanLegend;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class BySurveyTest {

	@Test
	void tellsSurveysOfOneNameApart() {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(0);
		site.getFloors().add(floor);
		for (String id : List.of("th-spring", "th-spring-2", "th-spring-3")) {
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId(id);
			survey.setName("Training");
			Samples samples = ModelFactory.eINSTANCE.createSamples();
			samples.setTable(SampleTable.builder().sample("S1", 0, 1, 1).reading("ap", -50).build());
			survey.setSamples(samples);
			site.getSurveys().add(survey);
		}
		List<PlanLegend.Entry> entries = new BySurvey().colours(SampleRows.of(floor), null, new RGB(255, 255, 255))
				.legend().entries();
		assertEquals(List.of("Training (th-spring)", "Training (th-spring-2)", "Training (th-spring-3)"),
				entries.stream().map(PlanLegend.Entry::label).toList());
	}
}
