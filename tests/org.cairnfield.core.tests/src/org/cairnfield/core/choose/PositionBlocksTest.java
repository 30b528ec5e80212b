package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PositionBlocksTest {

	/** Half-metre lattice: most places have several samples. */
	private static final RadioMap MAP = ScatteredMap.of(2, 1500);

	private static List<Object> place(RadioMap map, int s) {
		return List.of(map.site(s), map.floor(s), map.x(s), map.y(s));
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0.01, 0.05, 0.2, 0.5, 0.9 })
	void neverHoldsAPlaceOutInPart(double share) {
		PositionBlocks blocks = PositionBlocks.of(MAP);
		for (long seed = 1; seed <= 10; seed++) {
			boolean[] out = blocks.holdOut(share, seed);
			Map<List<Object>, Boolean> side = new HashMap<>();
			for (int s = 0; s < MAP.size(); s++) {
				Boolean before = side.put(place(MAP, s), out[s]);
				assertTrue(before == null || before == out[s], "sample " + s);
			}
			assertTrue(side.size() < MAP.size() * 0.9);
		}
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, 0.01, 0.05, 0.2, 0.5, 0.9, 1 })
	void reachesTheShareAndStopsThere(double share) {
		PositionBlocks blocks = PositionBlocks.of(MAP);
		for (long seed = 1; seed <= 10; seed++) {
			boolean[] out = blocks.holdOut(share, seed);
			long held = IntStream.range(0, out.length).filter(s -> out[s]).count();
			assertTrue(held >= share * MAP.size(), held + " held out");
			assertTrue(held <= share * MAP.size() + 60, held + " held out"); // at most one block beyond
		}
	}

	@Test
	void isTheSameForTheSameSeedOnly() {
		PositionBlocks blocks = PositionBlocks.of(MAP);
		assertArrayEquals(blocks.holdOut(0.2, 7), PositionBlocks.of(MAP).holdOut(0.2, 7));
		assertFalse(Arrays.equals(blocks.holdOut(0.2, 7), blocks.holdOut(0.2, 8)));
		assertArrayEquals(blocks.folds(5, 7), PositionBlocks.of(MAP).folds(5, 7));
		assertFalse(Arrays.equals(blocks.folds(5, 7), blocks.folds(5, 8)));
	}

	@Test
	void foldsNeverPartAPlaceAndAreOfLikeSize() {
		for (long seed = 1; seed <= 10; seed++) {
			int[] fold = PositionBlocks.of(MAP).folds(5, seed);
			Map<List<Object>, Integer> foldOfPlace = new HashMap<>();
			int[] size = new int[5];
			for (int s = 0; s < MAP.size(); s++) {
				Integer before = foldOfPlace.put(place(MAP, s), fold[s]);
				assertTrue(before == null || before == fold[s]);
				size[fold[s]]++;
			}
			assertTrue(Arrays.stream(size).allMatch(n -> n > 200 && n < 400), Arrays.toString(size));
		}
	}

	@Test
	void makesSquaresOfTheSideAskedForOnEachFloor() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).sample("Tide House", 0, 1.9, 1.9).sample("Tide House", 0, 2, 0);
		b.sample("Tide House", 0, -0.1, 0).sample("Tide House", 1, 0, 0).sample("Lantern Store", 0, 0, 0);
		PositionBlocks blocks = PositionBlocks.withSide(b.build(), 2);
		assertEquals(4, blocks.count()); // squares begin at the corner, −0.1
		assertEquals(2, blocks.sideMetres());
		for (long seed = 1; seed <= 20; seed++) {
			boolean[] out = blocks.holdOut(0.3, seed);
			assertEquals(out[0], out[3]);
			assertEquals(out[1], out[2]);
		}
	}

	@ParameterizedTest
	@CsvSource({ "420000, 4860000", "-9000000, 3.7", "0.123, -77777.7" })
	void areTheSameInAnotherFrame(double east, double north) {
		RadioMapBuilder moved = new RadioMapBuilder();
		for (int s = 0; s < MAP.size(); s++) {
			moved.sample(MAP.sites().get(MAP.site(s)), MAP.floor(s), MAP.x(s) + east, MAP.y(s) + north);
		}
		PositionBlocks there = PositionBlocks.of(moved.build());
		assertEquals(PositionBlocks.of(MAP).count(), there.count());
		for (long seed = 1; seed <= 5; seed++) {
			assertArrayEquals(PositionBlocks.of(MAP).holdOut(0.2, seed), there.holdOut(0.2, seed));
		}
	}

	@Test
	void makesAHundredBlocksWherePositionsAllow() {
		RadioMap map = RandomMap.of(5, CampusSize.of(1, 2, 20), 400, Workers.inline());
		PositionBlocks blocks = PositionBlocks.of(map);
		assertTrue(blocks.count() >= 100 && blocks.count() < 400, blocks.count() + " blocks");
		assertTrue(blocks.sideMetres() > 0.5, blocks.sideMetres() + " m");
	}

	@Test
	void takesASinglePlaceAndNone() {
		RadioMap one = new RadioMapBuilder().sample("Tide House", 0, 5, 5).sample("Tide House", 0, 5, 5).build();
		assertEquals(1, PositionBlocks.of(one).count());
		assertArrayEquals(new boolean[] { true, true }, PositionBlocks.of(one).holdOut(0.2, 1));
		RadioMap none = new RadioMapBuilder().build();
		assertEquals(0, PositionBlocks.of(none).count());
		assertEquals(0, PositionBlocks.of(none).holdOut(0.2, 1).length);
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, -1, Double.NaN })
	void refusesASideThatIsNoLength(double metres) {
		assertThrows(IllegalArgumentException.class, () -> PositionBlocks.withSide(MAP, metres));
	}

	@Test
	void refusesFewerThanTwoFolds() {
		PositionBlocks blocks = PositionBlocks.of(MAP);
		assertThrows(IllegalArgumentException.class, () -> blocks.folds(1, 1));
	}
}
