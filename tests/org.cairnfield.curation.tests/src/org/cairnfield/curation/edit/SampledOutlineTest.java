package org.cairnfield.curation.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.Test;

class SampledOutlineTest {

	private static Floor floor(SampleTableBuilder table) {
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(1);
		Site site = ModelFactory.eINSTANCE.createSite();
		site.getFloors().add(floor);
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(table.build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
		return floor;
	}

	/** By hand: what is kept on the floor spans 2 … 12.005 by 3 … 9 m. */
	@Test
	void goesRoundTheKeptSamplesOfTheFloor() {
		Floor floor = floor(SampleTable.builder().sample("a", 1, 2, 3).sample("b", 1, 12.005, 3)
				.sample("c", 1, 12.005, 9).sample("d", 1, 2, 9)
				.sample("inside", 1, 5, 5).sample("stray", 1, 90, 90).reason("nobody stood there")
				.sample("above", 2, 50, 50));
		assertEquals(Outline.parse("0.5,1.5 13.5,1.5 13.5,10.5 0.5,10.5"), SampledOutline.of(floor, 1.5).orElseThrow(),
				"13.505 is cut to centimetres");
		assertEquals(Optional.empty(), SampledOutline.of(floor(SampleTable.builder().sample("above", 2, 50, 50)), 1));
	}

	@Test
	void goesRoundACorridorWhereThereIsAMargin() {
		Floor corridor = floor(SampleTable.builder().sample("a", 1, 0, 0).sample("b", 1, 5, 0).sample("c", 1, 20, 0));
		assertEquals(Optional.empty(), SampledOutline.of(corridor, 0));
		Outline outline = SampledOutline.of(corridor, 2).orElseThrow();
		assertEquals(24 * 4, outline.areaSquareMetres());
		assertTrue(
				Editable.of(corridor).stream().filter(field -> field.name().equals("outline")).findFirst().orElseThrow()
						.change(outline.toString()).canExecute(),
				"the model takes it");
	}
}
