package org.cairnfield.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

public class ArchiveIndexTest {

	private final Surveys surveys = new Surveys();
	private final ArchiveIndex index = ArchiveIndex.of(surveys.archive);

	@Test
	public void findsEachKindById() {
		assertSame(surveys.site, index.site("tide-house").orElseThrow());
		assertEquals(3, index.floor("tide-house", 3).orElseThrow().getLevel());
		assertSame(surveys.autumn, index.survey("th-autumn").orElseThrow());
		assertSame(surveys.archive.getAccessPoints().get(1), index.accessPoint("ap2").orElseThrow());
		assertEquals(new SampleRef(surveys.spring, 2), index.sample(new SampleKey("th-spring", "S-3")).orElseThrow());
		assertEquals(1, index.sample("th-autumn/S-3").flatMap(ArchiveIndex::floor).orElseThrow().getLevel());
	}

	@Test
	public void findsNothingUnderANameOrWhatIsGone() {
		assertTrue(index.site("Tide House").isEmpty());
		assertTrue(index.floor("tide-house", 6).isEmpty());
		assertTrue(index.survey("th-winter").isEmpty());
		assertTrue(index.device("guide-a").isEmpty());
		assertTrue(index.split("all").isEmpty());
		for (String gone : new String[] { "th-spring/S-9", "th-winter/S-1", "S-1", "../x/S-1", "" }) {
			assertTrue(index.sample(gone).isEmpty(), gone);
		}
	}

	/** Maps and findings call an access point by its address, and by its id where it has none. */
	@Test
	public void findsAnAccessPointByItsAddress() {
		AccessPoint first = surveys.archive.getAccessPoints().get(0);
		first.setAddress("00:00:5E:00:53:01");
		assertSame(first, index.address("00:00:5E:00:53:01").orElseThrow());
		assertEquals(Optional.empty(), index.address("ap1"));
		assertSame(surveys.archive.getAccessPoints().get(1), index.address("ap2").orElseThrow());
	}

	@Test
	public void namesAPlaceByItsSiteAndFloor() {
		String floor = ModelText.name(index.floor("tide-house", 3).orElseThrow());
		assertEquals("Tide House, " + floor + ", x -1.50 m, y 22.00 m",
				ModelText.place(new KnownPlace("tide-house", 3, -1.5, 22), surveys.archive));
		assertEquals("annex, floor 3, x 1.00 m, y 2.00 m",
				ModelText.place(new KnownPlace("annex", 3, 1, 2), surveys.archive));
	}

	@Test
	public void tellsSitesAndDevicesOfOneNameApart() {
		Site annex = ModelFactory.eINSTANCE.createSite();
		annex.setId("annex");
		annex.setName("Tide House");
		surveys.archive.getSites().add(annex);
		assertEquals("Tide House (tide-house)", ModelText.name(surveys.site));
		assertEquals("Tide House (annex)", ModelText.name(annex));
		annex.setName(" ");
		assertEquals("annex", ModelText.name(annex));
		assertEquals("Tide House", ModelText.name(surveys.site));
		Device device = ModelFactory.eINSTANCE.createDevice();
		device.setId("guide-a");
		device.setName("Guide");
		assertEquals("Guide", ModelText.name(device));
	}
}
