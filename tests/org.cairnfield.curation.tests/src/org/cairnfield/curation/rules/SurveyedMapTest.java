package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;

class SurveyedMapTest {

	private static SurveyedMap one(String survey, double x, Object... readings) {
		return new TinyMap().survey(survey).at(7).sample(x, 2, readings).build();
	}

	@Test
	void keysDoNotDependOnTheOrderOfAccessPoints() {
		SurveyedMap a = one("a", 1, "ap1", -50, "ap2", -60);
		SurveyedMap b = one("a", 1, "ap2", -60, "ap1", -50);
		assertEquals(a.contentKey(0), b.contentKey(0));
		assertNotEquals(a.contentKey(0), one("a", 1, "ap1", -60, "ap2", -50).contentKey(0),
				"levels the other way round");
		assertNotEquals(a.contentKey(0), one("a", 1.01, "ap1", -50, "ap2", -60).contentKey(0));
		assertNotEquals(a.contentKey(0), one("b", 1, "ap1", -50, "ap2", -60).contentKey(0));
		assertEquals(a.measuredKey(0), one("b", 1, "ap1", -50, "ap2", -60).measuredKey(0), "whatever the survey");
		assertEquals(one("a", 0.0).contentKey(0), one("a", -0.0).contentKey(0));
	}

	@Test
	void leavesOutWhatIsSetAsideAndKeepsTheKeys() {
		SurveyedMap all = one("a", 1, "ap1", -50, "ap2", -60);
		SurveyedMap less = new TinyMap().survey("a").at(7).sample(1, 2, "ap1", -50, "ap2", -60)
				.build(b -> b.setAside("ap1"));
		assertEquals(1, less.map().heard(0));
		assertEquals(List.of("ap1", "ap2"), less.map().accessPoints());
		assertEquals(all.contentKey(0), less.contentKey(0));
		assertEquals(7000, less.map().timeMillis(0));
		assertEquals("Wrist guide A", less.device(0));
	}

	@Test
	void takesOutKnownOffsets() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "ap1", -50).build(b -> b.offset("Wrist guide A", -5));
		assertEquals(-45, map.levelDbm(0, map.map().firstReading(0)));
		assertEquals(-50, map.map().rssiDbm(map.map().firstReading(0)));
	}

	@Test
	void partsShareTheWhole() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "ap1", -50).survey("b").sample(5, 0, "ap2", -60)
				.build();
		SurveyedMap part = map.only(new int[] { 1 });
		assertEquals("b-1", part.sampleId(0));
		assertEquals("b", part.surveys().get(part.survey(0)).id());
		assertEquals(map.contentKey(1), part.contentKey(0));
	}

	@Test
	void refusesWhatDoesNotFitTogether() {
		RadioMap map = new RadioMapBuilder().sample("Tide House", 0, 0, 0).sample("Tide House", 0, 1, 0).build();
		List<Survey> survey = List.of(Survey.undated("a", "Tide House"));
		assertThrows(IllegalArgumentException.class,
				() -> new SurveyedMapBuilder(map, List.of("x"), new int[2], survey));
		assertThrows(IllegalArgumentException.class,
				() -> new SurveyedMapBuilder(map, List.of("x", "x"), new int[2], survey));
		assertThrows(IndexOutOfBoundsException.class,
				() -> new SurveyedMapBuilder(map, List.of("x", "y"), new int[] { 0, 1 }, survey));
		assertThrows(IllegalArgumentException.class, () -> new SurveyedMapBuilder(map, List.of("x", "y"), new int[2],
				List.of(survey.get(0), survey.get(0))));
	}
}
