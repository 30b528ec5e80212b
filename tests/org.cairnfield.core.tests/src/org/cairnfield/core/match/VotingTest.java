package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VotingTest {

	private static RadioMap ofThree(String site, int floor, double x, double y, int a, int b, int c) {
		return three(new RadioMapBuilder(), site, floor, x, y, a, b, c).build();
	}

	private static RadioMapBuilder three(RadioMapBuilder builder, String site, int floor, double x, double y, int a,
			int b, int c) {
		return builder.sample(site, floor, x, y).reading("a", a).reading("b", b).reading("c", c);
	}

	private static Estimates estimate(RadioMap map, RadioMap asked, Voting voting, Distance kind) {
		Signals signals = Signals.of(map, Representation.positive(), kind);
		return Estimates.of(new PlainMatcher(new Neighbours(signals), voting), signals.align(asked), Workers.inline());
	}

	/**
	 * Four references and a query made for this test; distances √110, 5, √275, √1010, worked apart. All hear all, so
	 * distances of values are those of levels.
	 */
	@ParameterizedTest
	@CsvSource({ "1, false, 4, 0", "2, false, 2, 0", "3, false, 2.666666667, 1.333333333", "4, false, 2, 2", //
			"1, true, 4, 0", "2, true, 2.627637319, 0", "3, true, 2.878936397, 0.732456752", // weights 1/(d + 1)
			"4, true, 2.621455514, 1.024693122", "9, true, 2.621455514, 1.024693122" })
	void meansThePositionsOfTheNearest(int k, boolean weighted, double x, double y) {
		RadioMapBuilder b = new RadioMapBuilder();
		three(b, "Tide House", 0, 0, 0, -40, -60, -70);
		three(b, "Tide House", 0, 4, 0, -50, -50, -65);
		three(b, "Tide House", 0, 4, 4, -60, -45, -60);
		three(b, "Tide House", 0, 0, 4, -70, -70, -50);
		Estimates found = estimate(b.build(), ofThree("?", 0, 9, 9, -47, -54, -65), new Voting(k, weighted),
				Distance.EUCLIDEAN);
		assertEquals(x, found.x(0), 1e-9);
		assertEquals(y, found.y(0), 1e-9);
	}

	@Test
	void answersTheReferenceItselfForItsOwnFingerprint() {
		RadioMapBuilder b = new RadioMapBuilder();
		three(b, "Tide House", 0, 3, 1, -40, -60, -70);
		three(b, "Tide House", 2, 5, 1, -41, -60, -70);
		for (boolean weighted : new boolean[] { false, true }) {
			Estimates found = estimate(b.build(), ofThree("?", 0, 9, 9, -40, -60, -70), new Voting(1, weighted),
					Distance.CITY_BLOCK);
			assertEquals(3, found.x(0));
			assertEquals(1, found.y(0));
			assertEquals(0, found.floor(0));
		}
	}

	@Test
	void meansAllExactHits() {
		RadioMapBuilder b = new RadioMapBuilder();
		three(b, "Tide House", 0, 3, 1, -40, -60, -70);
		three(b, "Tide House", 0, 5, 2, -40, -60, -70);
		Estimates found = estimate(b.build(), ofThree("?", 0, 9, 9, -40, -60, -70), new Voting(2, true),
				Distance.CITY_BLOCK);
		assertEquals(4, found.x(0), 1e-12);
		assertEquals(1.5, found.y(0), 1e-12);
	}

	/** Two votes of weight 1/11 each against one of 1/6. */
	@Test
	void lettingWeightsDecideOnTheFloorAndTheSite() {
		RadioMapBuilder b = new RadioMapBuilder();
		three(b, "Tide House", 0, 0, 0, -45, -60, -70); // at 5
		three(b, "Tide House", 1, 10, 0, -50, -60, -70); // at 10
		three(b, "Tide House", 1, 20, 0, -40, -60, -80); // at 10
		three(b, "Lantern Store", 0, 1000, 0, -40, -61, -79); // at 10
		RadioMap asked = ofThree("?", 0, 9, 9, -40, -60, -70);
		Estimates two = estimate(b.build(), asked, new Voting(2, true), Distance.CITY_BLOCK);
		assertEquals(0, two.floor(0));
		assertEquals("Tide House", b.build().sites().get(two.site(0)));
		Estimates four = estimate(b.build(), asked, new Voting(4, true), Distance.CITY_BLOCK);
		assertEquals(1, four.floor(0)); // 2/11 beats 1/6
		// The other site has no say in the position; the other floor has.
		assertEquals((10 / 11.0 + 20 / 11.0) / (1 / 6.0 + 2 / 11.0), four.x(0), 1e-12);
	}

	@Test
	void takesTheNearerOfEquallyWeightyFloors() {
		RadioMapBuilder b = new RadioMapBuilder();
		three(b, "Tide House", 0, 0, 0, -50, -60, -70);
		three(b, "Tide House", 1, 10, 0, -45, -60, -70);
		RadioMap asked = ofThree("?", 0, 9, 9, -40, -60, -70);
		Estimates found = estimate(b.build(), asked, new Voting(2, false), Distance.CITY_BLOCK);
		assertEquals(1, found.floor(0));
		assertEquals(5, found.x(0), 1e-12);
	}

	@Test
	void refusesNoVoters() {
		assertThrows(IllegalArgumentException.class, () -> new Voting(0, false));
	}

	@Test
	void saysHowItVotes() {
		assertEquals("k 3 weighted", Voting.THREE_WEIGHTED.toString());
		assertEquals("k 1", Voting.NEAREST.toString());
	}
}
