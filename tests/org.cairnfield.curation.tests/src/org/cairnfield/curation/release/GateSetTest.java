package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated
class GateSetTest {

	@Test
	void readsWhatItWritesWhateverTheLocale() {
		GateSet set = new GateSet(Map.of(Gate.ERROR, 1.125, Gate.FLOOR, 0.95, Gate.FINDINGS, 0.0), Set.of("slight"),
				true);
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.GERMANY);
			String text = set.toString();
			assertTrue(text.contains("error-to-plain       at most   1.125"), text);
			assertEquals(text,
					GateSet.parse(text.replace("slight", anyBand())).toString().replace(anyBand(), "slight"));
		} finally {
			Locale.setDefault(before);
		}
		assertEquals(GateSet.USUAL, GateSet.parse(GateSet.USUAL.toString()));
	}

	private static String anyBand() {
		return org.cairnfield.curation.propose.Bands.USUAL.all().get(0).name();
	}

	@Test
	void asksOnlyTheGatesThatAreNamed() {
		GateSet set = GateSet.parse("# ours\n\nfindings-error at most 2 # for now\r\nsigner = another\n");
		assertEquals(Map.of(Gate.FINDINGS, 2.0), set.bounds());
		assertTrue(set.anotherSigns());
		assertFalse(GateSet.parse("").anotherSigns());
	}

	@Test
	void namesGatesThatAreNotAskedSoThatTheyCanBe() {
		String text = GateSet.USUAL.toString();
		assertTrue(text.contains("# floor-mean-error-m at most 5 "), text);
		assertFalse(GateSet.USUAL.bounds().containsKey(Gate.FLOOR_MEAN));
		for (Gate gate : Gate.values()) {
			assertEquals(1, GateSet.parse(gate.example()).bounds().size(), gate.key());
			assertTrue(text.contains(gate.key()), gate.key());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "findings-error at least 0", "no-such-gate at most 1", "error-to-plain at most x",
			"error-to-plain at most NaN",
			"error-to-plain at most -1", "error-to-plain", "error-to-plain at most 1\nerror-to-plain at most 2",
			"signer = somebody",
			"second-review-bands = no such band" })
	void refusesALineThatIsWrongAndSaysWhich(String text) {
		String said = assertThrows(IllegalArgumentException.class, () -> GateSet.parse(text)).getMessage();
		assertTrue(said.contains("gates.txt"), said);
	}

	@Test
	void isMetOnItsBoundAndNeverByWhatNobodyCouldMeasure() {
		assertTrue(Gate.ERROR.meets(1.05, 1.05) && !Gate.ERROR.meets(1.0500001, 1.05));
		assertTrue(Gate.FLOOR.meets(0.9, 0.9) && !Gate.FLOOR.meets(0.8999, 0.9));
		for (Gate gate : Gate.values()) {
			assertFalse(gate.meets(Double.NaN, gate.usualBound().orElse(1)), gate.key());
		}
	}

	@Test
	void isOverruledOnlyByNameAndWithAReason() {
		GateResult result = new GateResult(Gate.COST, 0.4, 0.25, "", null);
		assertTrue(result.holds());
		assertFalse(result.overridden(new GateResult.Overrule("L. Lead", "trial of one week")).holds());
		assertEquals("overridden by L. Lead: trial of one week",
				result.overridden(new GateResult.Overrule("L. Lead", "trial of one week")).verdict());
		assertThrows(IllegalArgumentException.class, () -> new GateResult.Overrule(" ", "why"));
		assertThrows(IllegalArgumentException.class, () -> new GateResult.Overrule("L. Lead", " "));
		GateResult met = new GateResult(Gate.COST, 0.2, 0.25, "", null);
		assertEquals(null, met.overridden(new GateResult.Overrule("L. Lead", "x")).overrule());
	}
}
