package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.command.Command;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

public class PlacingTest {

	private final Survey survey = ModelFactory.eINSTANCE.createSurvey();
	private SampleRef sample;

	@BeforeEach
	public void measure() {
		survey.setId("sh-spring");
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		survey.getSamples().setTable(SampleTable.builder().sample("SH-1", 1, 12.404, 7.85).build());
		sample = new SampleRef(survey, 0);
	}

	private String run(String floor, String x, String y) {
		Command command = Placing.command(sample, floor, x, y);
		assertTrue(command.canExecute());
		command.execute();
		return survey.table().floorLevel(0) + " " + survey.table().xMetres(0) + " " + survey.table().yMetres(0);
	}

	@Test
	public void movesAndLiftsInOneChange() {
		assertEquals("2 3.5 7.85", run("2", "3,5 m", "7.85"));
		measure();
		Command both = Placing.command(sample, "-1", "3", "4");
		both.canExecute();
		both.execute();
		both.undo();
		assertEquals(12.404, survey.table().xMetres(0));
		assertEquals(1, survey.table().floorLevel(0));
	}

	@Test
	public void keepsDigitsThatWereNotShown() {
		assertEquals("1 12.404 8.0", run("1", "12.40", "8"));
		measure();
		assertEquals("−2 12.404 7.85".replace('−', '-'), run("−2", "12.40", "7.85"));
	}

	@Test
	public void changesNothingWhereNothingIsWrittenAnew() {
		assertFalse(Placing.command(sample, "1", "12.40", "7.85").canExecute());
	}

	@Test
	public void saysWhatIsNoPlace() {
		assertNull(Placing.floorProblem("-1"));
		assertEquals("'1.5' is no floor. Write its level, a whole number such as 0, 1 or -1.",
				Placing.floorProblem("1.5"));
		assertEquals("'1000' is no floor. Write its level, a whole number such as 0, 1 or -1.",
				Placing.floorProblem("1000"));
		assertNull(Placing.metresProblem("x", "−3.25 m"));
		assertEquals("x 'abc' is no length. Write metres such as 12.40.", Placing.metresProblem("x", "abc"));
		assertEquals("y 'NaN' is no length. Write metres such as 12.40.", Placing.metresProblem("y", "NaN"));
	}

	private Site site(String name, int... levels) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setName(name);
		for (int level : levels) {
			Floor floor = ModelFactory.eINSTANCE.createFloor();
			floor.setLevel(level);
			site.getFloors().add(floor);
		}
		return site;
	}

	@Test
	public void offersTheFloorsOfTheSiteAndRefusesOthers() {
		Site hall = site("Sailmakers' Hall", -1, 0, 1);
		hall.getFloors().get(0).setName("Sail cellar");
		hall.getSurveys().add(survey);
		assertNull(Placing.floorProblem(sample, "−1"));
		assertEquals("Sailmakers' Hall has no floor 77. Its floors are -1, 0, 1.", Placing.floorProblem(sample, "77"));
		assertEquals("{-1=Sail cellar (level -1), 0=Floor 0, 1=Floor 1}",
				Placing.floorsFor(List.of(sample)).toString());
		Site store = site("Lantern Store", 0, 1, 2);
		Survey other = ModelFactory.eINSTANCE.createSurvey();
		store.getSurveys().add(other);
		assertEquals("{0=Floor 0, 1=Floor 1}", Placing.floorsFor(List.of(sample, new SampleRef(other, 0))).toString());
	}
}
