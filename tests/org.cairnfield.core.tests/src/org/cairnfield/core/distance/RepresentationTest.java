package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Formulas of Torres-Sospedra, Montoliu, Trilles, Belmonte, Huerta, Expert Systems with Applications 42 (2015),
 * worked apart for a lowest level of −100 dBm: positive p = RSSI + 101, zero = 101, α = 24, β = e.
 */
class RepresentationTest {

	private static final RadioMap MAP = new RadioMapBuilder().sample("Tide House", 0, 0, 0).reading("a", -100)
			.reading("b", -50).build();

	@ParameterizedTest
	@CsvSource({ "positive, 1, 51, 101", //
			"normalised, 0.009900990099, 0.504950495050, 1", // 1/101, 51/101
			// e^(-100/24), e^(-50/24), 1, each less e^(-101/24), so that "not heard" is 0
			"exponential, 0.000632720682, 0.109643338527, 0.985128867083", //
			"powed, 0.000003561965, 0.156079768330, 1" }) // 101^-e, (51/101)^e
	void followsTheFormula(String name, double at100, double at50, double at0) {
		Signals signals = Signals.of(MAP, Representation.named(name), Distance.CITY_BLOCK);
		assertEquals(0, signals.value(0), 0);
		assertEquals(at100, signals.value(1), 1e-9);
		assertEquals(at50, signals.value(51), 1e-9);
		assertEquals(at0, signals.value(101), 1e-9);
		assertEquals(102, signals.steps());
	}

	@ParameterizedTest
	@ValueSource(strings = { "positive", "normalised", "exponential", "powed" })
	void growsWithTheLevel(String name) {
		Signals signals = Signals.of(MAP, Representation.named(name), Distance.CITY_BLOCK);
		for (int step = 1; step < signals.steps(); step++) {
			assertTrue(signals.value(step) > signals.value(step - 1), "step " + step);
		}
	}

	@Test
	void followsItsParameter() {
		Signals alpha = Signals.of(MAP, Representation.exponential(12), Distance.CITY_BLOCK);
		assertEquals(Math.exp(-50 / 12.0) - Math.exp(-101 / 12.0), alpha.value(51), 1e-12);
		Signals beta = Signals.of(MAP, Representation.powed(2), Distance.CITY_BLOCK);
		assertEquals(51 * 51 / (101.0 * 101), beta.value(51), 1e-12);
	}

	@ParameterizedTest
	@ValueSource(strings = { "positive", "normalised", "exponential", "powed" })
	void isFoundByTheNameItGives(String name) {
		assertEquals(name, Representation.named(name).toString());
		assertEquals(Representation.named(name), Representation.named(name.toUpperCase(java.util.Locale.ROOT)));
	}

	@Test
	void namesTheChoicesWhereThereIsNoneOfAName() {
		String message = assertThrows(IllegalArgumentException.class, () -> Representation.named("cubic"))
				.getMessage();
		assertTrue(message.contains("cubic") && message.contains("exponential"), message);
		message = assertThrows(IllegalArgumentException.class, () -> Distance.named("cosine")).getMessage();
		assertTrue(message.contains("cosine") && message.contains("city-block"), message);
	}

	@ParameterizedTest
	@ValueSource(strings = { "city-block", "euclidean" })
	void distancesAreFoundByTheNameTheyGive(String name) {
		assertEquals(name, Distance.named(name).toString());
	}

	@Test
	void equalsOnlyTheSameWithTheSameParameter() {
		assertEquals(Representation.exponential(24), Representation.named("exponential"));
		assertEquals(Representation.exponential(24).hashCode(), Representation.named("exponential").hashCode());
		assertNotEquals(Representation.exponential(24), Representation.exponential(23));
		assertNotEquals(Representation.positive(), Representation.normalised());
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, -1, Double.NaN, Double.POSITIVE_INFINITY })
	void refusesAParameterThatIsNotPositive(double parameter) {
		assertThrows(IllegalArgumentException.class, () -> Representation.exponential(parameter));
		assertThrows(IllegalArgumentException.class, () -> Representation.powed(parameter));
	}
}
