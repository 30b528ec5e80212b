package org.cairnfield.core.correlate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.cluster.Clustering;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProposalRuleTest {

	private static Clustering withNoise(int noise, int of) {
		int[] label = new int[of];
		for (int s = 0; s < noise; s++) {
			label[s] = Clustering.NOISE;
		}
		return new Clustering(label, null);
	}

	private static NoisePlacement strength(double r) {
		return new NoisePlacement(0, 0, r, 1, -1, Double.NaN, 1, 0, 0);
	}

	// Both defaults are common practice.
	@Test
	void usuallyOpensFromATenthOfNoise() {
		assertTrue(ProposalRule.USUAL.opens(withNoise(10, 100)));
		assertFalse(ProposalRule.USUAL.opens(withNoise(9, 100)));
		assertFalse(ProposalRule.USUAL.opens(withNoise(999, 10_000)));
	}

	@Test
	void usuallyProposesFromATenth() {
		assertTrue(ProposalRule.USUAL.proposes(strength(0.1)));
		assertFalse(ProposalRule.USUAL.proposes(strength(Math.nextDown(0.1))));
	}

	@ParameterizedTest
	@CsvSource({ "0, 1, true", "0, 0, false", "1, 99, false", "1, 100, true", "0.5, 50, true", "0.5, 49, false" })
	void opensAtItsGate(double gate, int noiseOfHundred, boolean opens) {
		assertEquals(opens, new ProposalRule(gate, 0).opens(withNoise(noiseOfHundred, 100)));
	}

	@ParameterizedTest
	@CsvSource({ "-1, -1, true", "0, -0.001, false", "0, 0, true", "1, 1, true", "1, 0.999999, false" })
	void proposesAtItsThreshold(double threshold, double r, boolean proposes) {
		assertEquals(proposes, new ProposalRule(0, threshold).proposes(strength(r)));
	}

	@Test
	void neverProposesAnUndefinedStrength() {
		assertFalse(new ProposalRule(0, -1).proposes(strength(Double.NaN)));
	}

	@ParameterizedTest
	@ValueSource(doubles = { -0.01, 1.01, Double.NaN })
	void refusesAGateThatIsNoShare(double gate) {
		assertThrows(IllegalArgumentException.class, () -> new ProposalRule(gate, 0));
	}

	@ParameterizedTest
	@ValueSource(doubles = { -1.01, 1.01, Double.NaN })
	void refusesAThresholdThatIsNoCorrelation(double threshold) {
		assertThrows(IllegalArgumentException.class, () -> new ProposalRule(0, threshold));
	}
}
