package org.cairnfield.ui.plan.internal.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.Companion;
import org.cairnfield.ui.scope.CompanionRole;
import org.junit.jupiter.api.Test;

class ElsewhereTest {

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();
	private final Site house = site("th", "Tide House");
	private final Site store = site("ls", "Lantern Store");

	private Site site(String id, String name) {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId(id);
		site.setName(name);
		for (int level = 0; level < 2; level++) {
			Floor floor = ModelFactory.eINSTANCE.createFloor();
			floor.setLevel(level);
			site.getFloors().add(floor);
		}
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id + "-spring");
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(SampleTable.builder().sample(id + "-0", 0, 1, 1).reading("ap", -50).sample(id + "-1", 1, 2, 2)
				.reading("ap", -60)
				.sample(id + "-7", 7, 3, 3).reading("ap", -70).build());
		survey.setSamples(samples);
		site.getSurveys().add(survey);
		archive.getSites().add(site);
		return site;
	}

	private static SampleRef sample(Site site, int row) {
		return new SampleRef(site.getSurveys().get(0), row);
	}

	private ArchiveSelection compared(SampleRef carrier) {
		return ArchiveSelection.of(archive).withSamples(List.of(sample(house, 0)))
				.withBeside(List.of(new Companion(carrier, CompanionRole.CARRIER, "carrier")));
	}

	@Test
	void namesTheCarrierOnAnotherFloorAndFromThereTheSample() {
		ArchiveSelection selection = compared(sample(house, 1));
		assertEquals(
				List.of(new Elsewhere("The carrier, th-1, is on another floor", "Floor 1", house.getFloors().get(1))),
				Elsewhere.of(selection));
		assertEquals(
				List.of(new Elsewhere("The sample under review, th-0, is on another floor", "Floor 0",
						house.getFloors().get(0))),
				Elsewhere.of(selection.withFloor(house.getFloors().get(1))));
	}

	@Test
	void saysInWhichBuildingTheCarrierIs() {
		assertEquals(
				List.of(new Elsewhere("The carrier, ls-1, is in another building", "Lantern Store, Floor 1",
						store.getFloors().get(1))),
				Elsewhere.of(compared(sample(store, 1))));
	}

	@Test
	void leadsNowhereWhereTheSiteHasNoSuchFloor() {
		assertEquals(
				List.of(new Elsewhere("The carrier, th-7, is on another floor", "floor 7, which the site does not have",
						null)),
				Elsewhere.of(compared(sample(house, 2))));
	}

	@Test
	void isSilentWhereAllIsOnTheFloorOrNothingIsCompared() {
		assertEquals(List.of(), Elsewhere.of(compared(sample(house, 0))));
		assertEquals(List.of(), Elsewhere.of(ArchiveSelection.of(archive).withSamples(List.of(sample(house, 1)))
				.withFloor(house.getFloors().get(0))));
	}
}
