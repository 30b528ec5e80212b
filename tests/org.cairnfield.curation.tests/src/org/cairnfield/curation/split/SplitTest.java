package org.cairnfield.curation.split;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SplitTest {

	private static final Workers INLINE = Workers.inline();

	@Test
	void usesEpsilonAndMinPtsAsGiven() {
		Split split = SmallMaps.split();
		assertEquals(5, split.epsilon());
		assertEquals(3, split.minPts());
		assertArrayEquals(new int[] { 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, -1 }, split.clustering().labels());
		assertEquals(Role.NOISE, split.clustering().role(10));
		assertEquals(List.of(), split.tried(), "nothing was chosen");
		assertEquals(0, split.pcaComponents());
		assertEquals(11, split.map().size());
	}

	@Test
	void curveAscendsAndEndsWithTheStray() {
		double[] curve = SmallMaps.split().curve();
		assertEquals(11, curve.length);
		double[] sorted = curve.clone();
		Arrays.sort(sorted);
		assertArrayEquals(sorted, curve);
		// the stray (-66, -47) has two others at 11, (-62, -40) and (-61, -41), and the third, k = minPts, at 12
		assertEquals(12, curve[10]);
		assertEquals(1, curve[0]);
	}

	@Test
	void leavesInfiniteKDistancesOutOfTheCurve() {
		Split split = Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(5, 12), INLINE);
		assertEquals(0, split.curve().length);
		assertTrue(split.elbow().isEmpty());
		assertEquals(1, split.clustering().noiseShare());
	}

	@Test
	void choosesWhatIsNotGiven() {
		RadioMap map = SmallMaps.simulated(120);
		Split chosen = Split.of(map, SplitRequest.automatic(1), INLINE);
		assertTrue(chosen.tried().size() > 5, "tried " + chosen.tried().size());
		assertTrue(chosen.tried().stream().anyMatch(t -> t.minPts() == chosen.minPts()));
		assertTrue(chosen.clustering().clusters() > 1);
		SplitRequest half = new SplitRequest(Representation.positive(), Distance.CITY_BLOCK, OptionalDouble.of(77.5),
				OptionalInt.empty(), OptionalDouble.empty(), 1);
		Split mixed = Split.of(map, half, INLINE);
		assertEquals(77.5, mixed.epsilon());
		assertEquals(chosen.minPts(), mixed.minPts());
	}

	@Test
	void choosesTheSameForTheSameSeed() {
		RadioMap map = SmallMaps.simulated(100);
		Split first = Split.of(map, SplitRequest.automatic(3), INLINE);
		Split second = Split.of(map, SplitRequest.automatic(3), INLINE);
		assertEquals(first.epsilon(), second.epsilon());
		assertEquals(first.tried(), second.tried());
		assertArrayEquals(first.clustering().labels(), second.clustering().labels());
	}

	@Test
	void findsTheSameGroupsInPrincipalComponents() {
		Split split = Split.of(SmallMaps.twoGroupsAndAStray(), SmallMaps.reduced(0.99, OptionalDouble.of(4), OptionalInt.of(3)), INLINE);
		assertTrue(split.pcaComponents() >= 1 && split.pcaComponents() <= 3, "components " + split.pcaComponents());
		assertArrayEquals(new int[] { 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, -1 }, split.clustering().labels());
	}

	@Test
	void takesEpsilonInTheMiddleOfTheCurveOfComponents() {
		Split split = Split.of(SmallMaps.simulated(90), SmallMaps.reduced(0.9, OptionalDouble.empty(), OptionalInt.of(4)), INLINE);
		assertEquals(split.curve()[44], split.epsilon());
		Split few = Split.of(SmallMaps.twoGroupsAndAStray(), SmallMaps.reduced(0.9, OptionalDouble.empty(), OptionalInt.of(50)), INLINE);
		assertEquals(0, few.epsilon(), "finite, though no sample has so many neighbours");
	}

	@Test
	void saysThatOneSampleHasNoComponents() {
		UnfitSurveyException e = assertThrows(UnfitSurveyException.class,
				() -> Split.of(SmallMaps.of(new int[] { -40, -50 }), SmallMaps.reduced(0.9, OptionalDouble.of(1), OptionalInt.of(1)), INLINE));
		assertTrue(e.getMessage().contains("cannot be reduced"), e.getMessage());
	}

	@Test
	void refusesParametersOutOfRange() {
		assertThrows(IllegalArgumentException.class, () -> Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(-1, 3), INLINE));
		assertThrows(IllegalArgumentException.class, () -> Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(1, 0), INLINE));
	}

	@Test
	void requestsKeepWhatTheyWereGiven() {
		SplitRequest request = SplitRequest.automatic(9).with(12.5, 4);
		assertEquals(OptionalDouble.of(12.5), request.epsilon());
		assertEquals(OptionalInt.of(4), request.minPts());
		assertEquals(9, request.seed());
		assertEquals(Distance.CITY_BLOCK, request.distance());
		assertEquals(Representation.positive(), request.representation());
		assertTrue(request.pcaShare().isEmpty() && SplitRequest.automatic(9).epsilon().isEmpty());
	}
}
