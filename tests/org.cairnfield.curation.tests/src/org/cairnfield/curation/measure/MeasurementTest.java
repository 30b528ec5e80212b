package org.cairnfield.curation.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.split.SmallMaps;
import org.cairnfield.curation.split.Split;
import org.cairnfield.curation.split.SplitRequest;
import org.junit.jupiter.api.Test;

class MeasurementTest {

	private static final Workers INLINE = Workers.inline();

	private static Measurement of(Split split, RadioMap test, long seed) {
		return Measurement.of(Proposals.of(split, new ProposalRule(0, 0.1), INLINE), test, seed, INLINE);
	}

	/** Looks like sample 8 of the small map, but stands 3 m aside; and like the stray, 4 m aside. */
	private static RadioMap test(String site) {
		RadioMapBuilder test = new RadioMapBuilder();
		test.accessPoint("C"); // other order than in the map
		test.sample(site, 0, 8, 3).reading("B", -61).reading("C", -41).reading("new here", -30);
		test.sample(site, 1, 10, -4).reading("B", -66).reading("C", -47);
		return test.build();
	}

	@Test
	void measuresEachVariantInItsOrder() {
		Measurement measured = of(SmallMaps.split(), test("Tide House"), 1);
		assertEquals(List.of("plain", "plain-3w", "split", "split+proposals", "chosen"),
				measured.variants().stream().map(Variant::name).toList());
		Variant plain = measured.variant("plain");
		assertArrayEquals(new double[] { 3, 4 }, plain.errors().errorsMetres(), 1e-12);
		assertEquals(0.5, plain.errors().floorHitRate(), "the second is on another floor than said");
		assertEquals(1, plain.errors().siteHitRate());
		assertEquals(11, plain.comparisonsPerQuery());
		assertEquals(1, plain.matchTimeRatio());
		assertTrue(plain.meanInterval().low() >= 3 && plain.meanInterval().high() <= 4, plain.toString());
	}

	@Test
	void aSplitKnowsItsNoiseOnlyWithProposals() {
		Measurement measured = of(SmallMaps.split(), test("Tide House"), 1);
		// two centroids and the five samples of the second group, the stray with them or not
		assertEquals(7, measured.variant("split").comparisonsPerQuery());
		assertEquals(8, measured.variant("split+proposals").comparisonsPerQuery());
		assertArrayEquals(new double[] { 3, 4 }, measured.variant("split+proposals").errors().errorsMetres(), 1e-12);
		assertTrue(measured.variant("split").errors().errorsMetres()[1] > 4);
	}

	@Test
	void aSiteThatTheMapDoesNotKnowIsNeverHit() {
		assertEquals(0, of(SmallMaps.split(), test("Lantern Store"), 1).variant("plain").errors().siteHitRate());
	}

	@Test
	void sitesAreMatchedByName() {
		RadioMap map = SmallMaps.simulated(40);
		RadioMapBuilder test = new RadioMapBuilder();
		test.sample("an annexe", 0, 0, 0); // comes first, so that numbers differ
		int s = 7;
		test.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
		for (int k = map.firstReading(s); k < map.endReading(s); k++) {
			test.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
		}
		Split split = Split.of(map, SplitRequest.automatic(1).with(100, 3), INLINE);
		Variant plain = of(split, test.build(), 1).variant("plain");
		assertEquals(0.5, plain.errors().siteHitRate());
		assertEquals(0, plain.errors().errorsMetres()[1]);
	}

	@Test
	void nothingIsLocatedBySplitsWithoutClusters() {
		Split noise = Split.of(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).with(0, 3), INLINE);
		Measurement measured = of(noise, test("Tide House"), 1);
		assertEquals(0, measured.variant("split").errors().located());
		assertEquals(0, measured.variant("split+proposals").errors().located());
		assertEquals(2, measured.variant("chosen").errors().located());
	}

	@Test
	void measuresTheSameForTheSameSeed() {
		RadioMap map = SmallMaps.simulated(80);
		RadioMap test = SmallMaps.visit(20);
		Split split = Split.of(map, SplitRequest.automatic(1).with(120, 3), INLINE);
		Measurement first = of(split, test, 5);
		Measurement second = of(split, test, 5);
		for (Variant v : first.variants()) {
			Variant again = second.variant(v.name());
			assertArrayEquals(v.errors().errorsMetres(), again.errors().errorsMetres(), v.name());
			assertEquals(v.meanInterval(), again.meanInterval());
			assertEquals(v.comparisonsPerQuery(), again.comparisonsPerQuery());
			assertEquals(v.how(), again.how());
			assertTrue(v.matchTimeRatio() > 0);
		}
	}

	@Test
	void knowsNoOtherVariant() {
		Measurement measured = of(SmallMaps.split(), test("Tide House"), 1);
		assertThrows(IllegalArgumentException.class, () -> measured.variant("best"));
	}
}
