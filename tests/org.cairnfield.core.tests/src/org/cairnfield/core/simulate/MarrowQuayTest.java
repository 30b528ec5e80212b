package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.simulate.SimulatedSurvey.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MarrowQuayTest {

	private final SimulatedArchive archive = MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED);
	private final SimulatedArchive clean = MarrowQuay.clean(MarrowQuay.DEFAULT_SEED);

	@Test
	void campusIsThreeBuildingsOfThreeTwoAndFourFloors() {
		Campus campus = Campus.marrowQuay();
		assertEquals(List.of("Sailmakers' Hall", "Tide House", "Lantern Store"),
				campus.sites().stream().map(Site::name).toList());
		assertEquals(List.of(3, 2, 4), campus.sites().stream().map(s -> s.floors().size()).toList());
		assertTrue(campus.accessPoints().stream().allMatch(a -> a.address().isDocumentation()));
		for (AccessPoint a : campus.accessPoints()) {
			assertTrue(campus.sites().get(a.site()).floor(a.level()).outline().contains(a.x(), a.y()));
		}
	}

	@Test
	void sizesAreThoseOfADemo() {
		int training = archive.surveys(Role.TRAINING).stream().mapToInt(s -> s.map().size()).sum();
		int test = archive.surveys(Role.TEST).stream().mapToInt(s -> s.map().size()).sum();
		assertTrue(training >= 2500 && training <= 3500, "training " + training);
		assertTrue(test >= 400 && test <= 600, "test " + test);
		assertEquals(Set.of("Wrist guide A", "Wrist guide B"),
				archive.surveys().stream().map(SimulatedSurvey::device).collect(Collectors.toSet()));
		Set<String> ids = new HashSet<>();
		archive.surveys().forEach(s -> ids.addAll(s.sampleIds()));
		assertEquals(training + test, ids.size(), "ids are unique");
	}

	@Test
	void seedDecides() {
		SimulatedArchive again = MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED);
		SimulatedArchive other = MarrowQuay.surveys(2);
		assertEquals(archive.truth(), again.truth());
		for (String name : List.of("th-autumn", "th-test")) {
			assertEquals(MapText.of(archive.survey(name).map()), MapText.of(again.survey(name).map()));
			assertNotEquals(MapText.of(archive.survey(name).map()), MapText.of(other.survey(name).map()));
		}
	}

	@Test
	void courierIsHeardAtAllSitesAndOnAllFloors() {
		String address = archive.truth(FaultKind.HOTSPOT).get(0).accessPoint();
		assertTrue(MacAddress.parse(address).isLocal());
		Set<String> floors = new HashSet<>();
		int heard = 0;
		for (SimulatedSurvey survey : archive.surveys()) {
			RadioMap map = survey.map();
			int hotspot = map.accessPoints().indexOf(address);
			for (int s = 0; hotspot >= 0 && s < map.size(); s++) {
				if (map.rssiDbm(s, hotspot, 0) != 0) {
					floors.add(survey.site() + map.floor(s));
					heard += survey.name().endsWith("again") ? 0 : 1;
				}
			}
			assertEquals(survey.role() == Role.TRAINING, hotspot >= 0, survey.name());
		}
		assertEquals(9, floors.size());
		assertEquals(archive.truth(FaultKind.HOTSPOT).size(), heard);
	}

	@Test
	void movedAccessPointIsStrongestElsewhereInAutumn() {
		PlantedFault fault = archive.truth(FaultKind.MOVED_ACCESS_POINT).get(0);
		Place spring = strongest(clean.survey("sh-spring").map(), fault.accessPoint());
		Place autumn = strongest(clean.survey("sh-autumn").map(), fault.accessPoint());
		assertTrue(spring.metresTo(autumn) > 25, spring + " to " + autumn);
		assertTrue(autumn.metresTo(new Place(57.5, 4)) < 8, "strongest at " + autumn);
	}

	private static Place strongest(RadioMap map, String address) {
		int accessPoint = map.accessPoints().indexOf(address);
		int best = 0;
		for (int s = 0; s < map.size(); s++) {
			if (map.rssiDbm(s, accessPoint, -200) > map.rssiDbm(best, accessPoint, -200)) {
				best = s;
			}
		}
		return new Place(map.x(best), map.y(best));
	}

	@Test
	void placesAndFloorsDifferFromTheCleanSurveysWhereTheTruthSaysSo() {
		Map<String, FaultKind> truth = new HashMap<>();
		for (FaultKind kind : List.of(FaultKind.SWAPPED_AXES, FaultKind.WRONG_FLOOR)) {
			archive.truth(kind).forEach(f -> truth.put(f.sample(), kind));
		}
		assertEquals(11, archive.truth(FaultKind.WRONG_FLOOR).size());
		assertTrue(archive.truth(FaultKind.SWAPPED_AXES).size() >= 20);
		for (SimulatedSurvey before : clean.surveys()) {
			SimulatedSurvey after = archive.survey(before.name());
			for (int s = 0; s < before.map().size(); s++) {
				FaultKind kind = truth.get(after.sampleIds().get(s));
				boolean swapped = kind == FaultKind.SWAPPED_AXES;
				assertEquals(swapped ? before.map().y(s) : before.map().x(s), after.map().x(s), 0);
				assertEquals(swapped ? before.map().x(s) : before.map().y(s), after.map().y(s), 0);
				assertEquals(kind == FaultKind.WRONG_FLOOR, before.map().floor(s) != after.map().floor(s));
			}
		}
	}

	@Test
	void oneSurveyComesTwice() {
		SimulatedSurvey again = archive.survey("th-spring-again");
		assertEquals(MapText.of(archive.survey("th-spring").map()), MapText.of(again.map()));
		assertEquals(again.map().size(), archive.truth(FaultKind.DUPLICATE_IMPORT).size());
		assertFalse(again.sampleIds().get(0).equals(archive.survey("th-spring").sampleIds().get(0)));
	}

	// Open surveys of such density give mean errors of 2 to 4 m by the plain nearest neighbour (common practice).
	@Test
	void positioningWorksAsInRealBuildings() {
		RadioMap training = Merged.of(clean.surveys(Role.TRAINING));
		RadioMap test = Merged.of(clean.surveys(Role.TEST));
		Signals signals = Signals.of(training);
		SignalRows rows = signals.align(test);
		Neighbours.Search search = new Neighbours(signals).search();
		double sum = 0;
		int right = 0;
		for (int q = 0; q < test.size(); q++) {
			int nearest = search.of(rows, q, 1).sample(0);
			boolean sameSite = training.sites().get(training.site(nearest)).equals(test.sites().get(test.site(q)));
			right += sameSite && training.floor(nearest) == test.floor(q) ? 1 : 0;
			sum += Math.hypot(training.x(nearest) - test.x(q), training.y(nearest) - test.y(q));
		}
		double mean = sum / test.size();
		assertTrue(mean > 1.8 && mean < 4, "mean error " + mean + " m");
		assertTrue(right > 0.95 * test.size(), right + " of " + test.size() + " on the right floor");
	}
}
