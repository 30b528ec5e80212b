package org.cairnfield.ui.plan.internal.errors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.curation.measure.ErrorMap;
import org.cairnfield.curation.measure.Landing;
import org.cairnfield.curation.measure.SideBySide.Placed;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.ui.charts.colour.Marker;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.cairnfield.ui.plan.internal.colour.ErrorColours;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class FloorErrorsTest {

	private static final RGB WHITE = new RGB(255, 255, 255);

	private final Floor floor = ModelFactory.eINSTANCE.createFloor();

	/** A training survey and a test survey of five samples on this floor, and one on the next. */
	private SampleRows rows() {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		floor.setLevel(0);
		site.getFloors().add(floor);
		for (String id : List.of("th-spring", "th-test")) {
			SampleTableBuilder table = SampleTable.builder();
			for (int i = 0; i < 6; i++) {
				table.sample("S" + i, i == 5 ? 1 : 0, i, 0).reading("ap", -50);
			}
			Survey survey = ModelFactory.eINSTANCE.createSurvey();
			survey.setId(id);
			Samples samples = ModelFactory.eINSTANCE.createSamples();
			samples.setTable(table.build());
			survey.setSamples(samples);
			site.getSurveys().add(survey);
		}
		return SampleRows.of(floor);
	}

	private static Placed placed(int sample, double error, Landing landing) {
		return new Placed(new SampleKey("th-test", "S" + sample), "Tide House", sample == 5 ? 1 : 0, sample, 0, sample,
				error, landing,
				landing == Landing.OTHER_FLOOR ? "Tide House, floor 3" : "Tide House, floor 0");
	}

	/** S2 was set aside, so it was not measured. */
	private FloorErrors errors() {
		ErrorMap map = new ErrorMap("plain",
				List.of(placed(0, 1, Landing.RIGHT_FLOOR), placed(1, 5, Landing.OTHER_FLOOR),
						placed(3, 3, Landing.OTHER_SITE), placed(4, Double.NaN, Landing.NOWHERE),
						placed(5, 11, Landing.RIGHT_FLOOR)));
		return FloorErrors.of(new ErrorsShown(map, 10, ""), rows());
	}

	@Test
	void hasTheMeasuredSamplesOfTheFloor() {
		FloorErrors errors = errors();
		assertEquals(List.of("th-test/S0", "th-test/S1", "th-test/S3", "th-test/S4"),
				IntStream.range(0, errors.samples().size()).mapToObj(i -> errors.samples().ref(i).key().toString())
						.toList());
		for (int i = 0; i < errors.samples().size(); i++) {
			assertEquals(errors.samples().ref(i).key(), errors.placed(i).sample());
		}
	}

	@Test
	void givesTheFiguresOfTheFloorAndOfAllFloors() {
		assertEquals("plain: mean 3.00\u00a0m, 95 % 5.00\u00a0m, right floor 1/4; all floors 5.00\u00a0m",
				errors().summary());
		assertEquals("plain: no test sample here; all floors –\u00a0m",
				FloorErrors.of(new ErrorsShown(new ErrorMap("plain", List.of()), 1, ""), rows()).summary());
	}

	@Test
	void saysHowFarASampleIsOffAndWhereItWasPut() {
		assertEquals("plain: 1.00\u00a0m off", errors().words(0));
		assertEquals("plain: 5.00\u00a0m off, put on Tide House, floor 3", errors().words(1));
		assertEquals("plain: no position", errors().words(3));
	}

	@Test
	void tellsFloorsAndSitesByShapeAndErrorsByColour() {
		SampleColours colours = ErrorColours.of(errors(), WHITE);
		List<SampleLook> looks = IntStream.of(colours.lookOf()).mapToObj(colours.looks()::get).toList();
		assertEquals(List.of(Marker.CIRCLE, Marker.TRIANGLE, Marker.SQUARE, Marker.CROSS),
				looks.stream().map(SampleLook::marker).toList());
		assertEquals(4, looks.stream().map(SampleLook::rgb).distinct().count());
		assertEquals(looks.stream().map(SampleLook::marker).toList(),
				colours.legend().entries().stream().map(e -> e.look().marker()).toList());
		PlanLegend.Ramp ramp = colours.legend().ramp();
		assertEquals(10, ramp.high());
		assertEquals(ErrorColours.heat(10, 10, WHITE), ramp.colours()[ramp.colours().length - 1]);
		assertEquals(ErrorColours.heat(10, 10, WHITE), ErrorColours.heat(25, 10, WHITE),
				"more than the top looks like the top");
		assertNotEquals(ErrorColours.heat(1, 10, WHITE), ErrorColours.heat(5, 10, WHITE));
		assertTrue(colours.legend().title().contains("test survey")
				&& colours.legend().title().contains("squares of 1\u00a0m"), colours.legend().title());
	}
}
