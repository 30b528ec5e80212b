package org.cairnfield.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.cairnfield.model.Device;
import org.cairnfield.model.Fixture;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.Test;

public class SiblingNamesTest {

	private final Fixture fixture = new Fixture();

	private Site site(String id, String name) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId(id);
		site.setName(name);
		fixture.archive.getSites().add(site);
		return site;
	}

	@Test
	public void findNothingWhereSiblingsDiffer() {
		Site annex = site("annex", "Annex");
		annex.getFloors().add(Fixture.floor(0)); // a floor of that name in another site
		assertEquals(List.of(), SiblingNames.problems(fixture.archive));
		assertEquals("Floor 0", SiblingNames.label(annex.getFloors().get(0)));
	}

	@Test
	public void findEachKindOfSiblingsOfOneName() {
		site("annex", "Tide House");
		site("boathouse", " ");
		Floor upper = fixture.site.getFloors().get(1);
		fixture.ground.setName("Gallery");
		upper.setName("Gallery");
		Survey again = ModelFactory.eINSTANCE.createSurvey();
		again.setId("th-again");
		again.setName("spring");
		fixture.survey.setName("spring");
		fixture.site.getSurveys().add(again);
		Device other = ModelFactory.eINSTANCE.createDevice();
		other.setId("wrist-guide-b");
		other.setName("Wrist guide A");
		fixture.archive.getDevices().add(other);
		List<String> problems = SiblingNames.problems(fixture.archive);
		List<String> begin = List.of("site boathouse has no name",
				"sites tide-house, annex have the same name, Tide House",
				"devices wrist-guide-a, wrist-guide-b have",
				"floors 0, 1 of site tide-house have the same name, Gallery",
				"surveys th-spring, th-again of site tide-house have");
		assertEquals(begin.size(), problems.size(), problems::toString);
		for (int i = 0; i < begin.size(); i++) {
			assertTrue(problems.get(i).startsWith(begin.get(i)) && problems.get(i).contains(": give"), problems.get(i));
		}
		assertEquals("Gallery (1)", SiblingNames.label(upper));
		assertEquals("spring (th-again)", SiblingNames.label(again));
		assertEquals("Wrist guide A (wrist-guide-b)", SiblingNames.label(other));
	}

	/** Neither the name of a sibling, nor what one without a name or of a shared name is called. */
	@Test
	public void refuseANameThatASiblingIsCalledBy() {
		Site annex = site("annex", "Tide House");
		Site boathouse = site("boathouse", null);
		assertEquals(Optional.empty(), SiblingNames.refusal(boathouse, "Boathouse"));
		assertEquals(Optional.empty(), SiblingNames.refusal(annex, "annex"), "its own id");
		for (String taken : new String[] { "Tide House", "Tide House (annex)" }) {
			assertTrue(
					SiblingNames.refusal(boathouse, taken).orElse("").contains("has the name '" + taken + "' already"),
					taken);
		}
		assertEquals("site boathouse has the name 'boathouse' already",
				SiblingNames.refusal(annex, "boathouse").orElse(""));
		assertTrue(SiblingNames.refusal(fixture.ground, "Floor 1").isPresent());
	}

	/** A name that looks like the label of another never makes two of one label. */
	@Test
	public void giveEachSiblingALabelOfItsOwn() {
		Site annex = site("annex", "Tide House");
		Site trap = site("trap", "Tide House (annex)");
		assertEquals("Tide House (annex) (annex)", SiblingNames.label(annex));
		assertEquals("Tide House (annex)", SiblingNames.label(trap));
		assertEquals("Tide House (tide-house)", SiblingNames.label(fixture.site));
	}
}
