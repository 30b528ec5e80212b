package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RandomMapTest {

	@ParameterizedTest
	@CsvSource({ "1, 3, 3, 150, 2000", "2, 1, 2, 60, 1001", "3, 3, 4, 520, 1500" })
	void hasTheSizeAskedForAndHearsAboutNineteen(long seed, int sites, int floors, int accessPoints, int samples) {
		CampusSize size = CampusSize.of(sites, floors, accessPoints);
		assertEquals(accessPoints, Campus.random(seed, size).accessPoints().size());
		RadioMap map = RandomMap.of(seed, size, samples, Workers.inline());
		assertEquals(samples, map.size());
		assertEquals(sites, map.sites().size());
		assertEquals(19, map.readingCount() / (double) map.size(), 3);
	}

	@Test
	void sitesApartHearNothingOfEachOther() {
		RadioMap map = RandomMap.of(5, CampusSize.of(3, 2, 60).apart(), 600, Workers.inline());
		assertEquals(0, heardAtSeveralSites(map));
		RadioMap near = RandomMap.of(5, CampusSize.of(3, 2, 60), 600, Workers.inline());
		assertTrue(heardAtSeveralSites(near) > 3);
	}

	private static long heardAtSeveralSites(RadioMap map) {
		Map<Integer, Set<Integer>> sites = new HashMap<>();
		for (int s = 0; s < map.size(); s++) {
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				sites.computeIfAbsent(map.accessPoint(k), a -> new HashSet<>()).add(map.site(s));
			}
		}
		return sites.values().stream().filter(s -> s.size() > 1).count();
	}

	// RFC 9542 gives 256 addresses for documentation; what goes beyond is locally administered.
	@Test
	void addressesAreDocumentationOnesAsFarAsTheyGo() {
		Campus campus = Campus.random(1, CampusSize.of(3, 4, 520));
		int documentation = 0;
		for (AccessPoint accessPoint : campus.accessPoints()) {
			MacAddress address = accessPoint.address();
			assertTrue(address.canBeBssid());
			assertTrue(address.isDocumentation() || address.isLocal());
			documentation += address.isDocumentation() ? 1 : 0;
		}
		assertEquals(256, documentation);
	}

	@Test
	void testWalkIsOfTheSameCampus() {
		CampusSize size = CampusSize.of(2, 2, 40);
		RadioMap map = RandomMap.of(8, size, 400, Workers.inline());
		RadioMap test = RandomMap.testOf(8, size, 81, Workers.inline());
		assertEquals(81, test.size());
		assertTrue(map.accessPoints().containsAll(test.accessPoints()));
	}

	@Test
	void refusesSizesThatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> CampusSize.of(3, 3, 8));
	}
}
