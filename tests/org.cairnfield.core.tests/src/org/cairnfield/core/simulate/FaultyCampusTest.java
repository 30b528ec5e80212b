package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FaultyCampusTest {

	private static final CampusSize SIZE = CampusSize.of(2, 3, 90);

	private final SimulatedArchive archive = FaultyCampus.surveys(5, SIZE);

	private record At(SimulatedSurvey survey, int sample) {
		RadioMap map() {
			return survey.map();
		}
	}

	private At at(PlantedFault fault) {
		SimulatedSurvey survey = archive.survey(fault.survey());
		return new At(survey, survey.sampleIds().indexOf(fault.sample()));
	}

	@Test
	void plantsEveryKind() {
		Set<FaultKind> kinds = EnumSet.noneOf(FaultKind.class);
		archive.truth().forEach(f -> kinds.add(f.kind()));
		assertEquals(EnumSet.allOf(FaultKind.class), kinds);
		assertEquals(5, archive.surveys(SimulatedSurvey.Role.TRAINING).size());
		assertEquals(2, archive.surveys(SimulatedSurvey.Role.TEST).size());
	}

	@Test
	void isTheSameForTheSameSeed() {
		SimulatedArchive again = FaultyCampus.surveys(5, SIZE);
		assertEquals(archive.truth(), again.truth());
		for (int i = 0; i < archive.surveys().size(); i++) {
			assertEquals(MapText.of(archive.surveys().get(i).map()), MapText.of(again.surveys().get(i).map()));
		}
		assertNotEquals(archive.truth(), FaultyCampus.surveys(6, SIZE).truth());
	}

	@Test
	void everyIdIsUniqueAndEveryFaultPointsAtASample() {
		Set<String> ids = new HashSet<>();
		archive.surveys().forEach(s -> s.sampleIds().forEach(id -> assertTrue(ids.add(id), id)));
		for (PlantedFault fault : archive.truth()) {
			assertTrue(fault.sample().isEmpty() || at(fault).sample() >= 0, fault.toString());
		}
	}

	@Test
	void swapsAxesAsTheTruthSays() {
		for (PlantedFault fault : archive.truth(FaultKind.SWAPPED_AXES)) {
			At at = at(fault);
			assertEquals(String.format(Locale.ROOT, "true place x %.2f m, y %.2f m", at.map().y(at.sample()),
					at.map().x(at.sample())), fault.detail());
		}
	}

	@Test
	void importsOneSurveyBackwards() {
		List<PlantedFault> copies = archive.truth(FaultKind.DUPLICATE_IMPORT);
		SimulatedSurvey copy = archive.survey(copies.get(0).survey());
		SimulatedSurvey first = archive.survey(copy.name().replace("-again", ""));
		int n = first.map().size();
		assertEquals(n, copies.size());
		assertEquals(first.map().timeMillis(0), copy.map().timeMillis(n - 1));
		assertEquals("same as " + first.sampleIds().get(n - 1), copies.get(0).detail());
	}

	@Test
	void leavesAPartOfAFloorOut() {
		PlantedFault gap = archive.truth(FaultKind.COVERAGE_GAP).get(0);
		double[] n = Arrays.stream(gap.detail().replaceAll(".* floor ", "").split("[^-0-9.]+"))
				.mapToDouble(Double::parseDouble).toArray();
		String site = gap.detail().substring(0, gap.detail().indexOf(" floor"));
		int inside = 0;
		for (SimulatedSurvey survey : archive.surveys(SimulatedSurvey.Role.TRAINING)) {
			for (int s = 0; s < survey.map().size(); s++) {
				boolean in = survey.site().equals(site) && survey.map().floor(s) == (int) n[0]
						&& survey.map().x(s) > n[1]
						&& survey.map().x(s) < n[2] && survey.map().y(s) > n[3] && survey.map().y(s) < n[4];
				inside += in ? 1 : 0;
			}
		}
		// Samples that another fault has put there.
		assertTrue(inside < 6, inside + " samples inside");
		assertTrue((n[2] - n[1]) * (n[4] - n[3]) > 50);
	}

	@Test
	void repeatsScansAndSticksLevels() {
		for (PlantedFault fault : archive.truth(FaultKind.CACHED_SCAN)) {
			At at = at(fault);
			int before = at.survey().sampleIds().indexOf(fault.detail().replace("readings of ", ""));
			assertEquals(levels(at.map(), before), levels(at.map(), at.sample()));
		}
		PlantedFault stuck = archive.truth(FaultKind.STUCK_LEVEL).get(0);
		RadioMap map = archive.survey(stuck.survey()).map();
		int index = map.accessPoints().indexOf(stuck.accessPoint());
		int heard = 0;
		for (int s = 0; s < map.size(); s++) {
			int level = map.rssiDbm(s, index, 0);
			assertTrue(level == 0 || level == -71, "level " + level);
			heard += level == 0 ? 0 : 1;
		}
		assertTrue(heard > 100, heard + " heard it");
	}

	private static Map<String, Integer> levels(RadioMap map, int sample) {
		Map<String, Integer> levels = new HashMap<>();
		for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
			levels.put(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
		}
		return levels;
	}

	@Test
	void changesAccessPointsOverTheSummer() {
		Set<String> spring = new HashSet<>();
		Set<String> autumn = new HashSet<>();
		for (SimulatedSurvey survey : archive.surveys()) {
			RadioMap map = survey.map();
			for (int s = 0; s < map.size(); s++) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					// The code for not heard is no hearing.
					if (map.rssiDbm(k) > -105) {
						(survey.name().contains("spring") ? spring : autumn)
								.add(map.accessPoints().get(map.accessPoint(k)));
					}
				}
			}
		}
		for (PlantedFault fault : archive.truth(FaultKind.VANISHED_ACCESS_POINT)) {
			assertTrue(spring.contains(fault.accessPoint()) && !autumn.contains(fault.accessPoint()), fault.toString());
		}
		for (PlantedFault fault : archive.truth(FaultKind.NEW_ACCESS_POINT)) {
			assertTrue(!spring.contains(fault.accessPoint()) && autumn.contains(fault.accessPoint()), fault.toString());
		}
		assertEquals(2, archive.truth(FaultKind.MOVED_ACCESS_POINT).size());
	}
}
