package org.cairnfield.ui.plan.internal.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.KnownPlace;
import org.junit.jupiter.api.Test;

class MountedPlaceTest {

	@Test
	void areThoseOfTheFloorOnly() {
		Archive archive = ModelFactory.eINSTANCE.createArchive();
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		archive.getSites().add(site);
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(1);
		site.getFloors().add(floor);
		for (String place : List.of("th/1 2,3", "th/0 4,5", "", "sh/1 6,7", "th/1 8,9")) {
			AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
			accessPoint.setId("ap" + archive.getAccessPoints().size());
			accessPoint.setPlace(place.isEmpty() ? null : KnownPlace.parse(place));
			archive.getAccessPoints().add(accessPoint);
		}
		assertEquals(List.of(new MountedPlace("ap0", 2, 3), new MountedPlace("ap4", 8, 9)),
				MountedPlace.on(floor, archive));
	}
}
