package org.cairnfield.ui.charts.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {

	private static List<String> labels(Ticks ticks) {
		return IntStream.range(0, ticks.size()).mapToObj(ticks::label).toList();
	}

	@Test
	void stepsByOneTwoOrFive() {
		assertEquals(List.of("0", "20", "40", "60", "80", "100"), labels(Scale.linear(0, 100).ticks(6)));
		assertEquals(List.of("0", "50", "100"), labels(Scale.linear(0, 100).ticks(5)));
		assertEquals(List.of("0", "10", "20", "30"), labels(Scale.linear(-1, 31).ticks(4)));
	}

	@Test
	void labelsHaveAsManyDecimalsAsTheStep() {
		assertEquals(List.of("0.0", "0.1", "0.2", "0.3"), labels(Scale.linear(0, 0.3).ticks(4)));
		assertEquals(0.3, Scale.linear(0, 0.3).ticks(4).value(3), 0.0);
	}

	@Test
	void labelsCarryTheUnit() {
		Ticks ticks = Scale.linear(-100, -40).ticks(4);
		assertEquals("\u2212100\u00a0dBm", ticks.label(0, "dBm"));
		assertEquals("\u221240\u00a0dBm", ticks.label(3, "dBm"));
	}

	@ParameterizedTest
	@CsvSource({ "-100,-40,5", "0,1,3", "3.7,3.9,7", "-1e-9,1e-9,4", "12345,98765,8", "0,26.3,10", "-3,5,1" })
	void areNoMoreThanAskedForAndInRange(double low, double high, int most) {
		Ticks ticks = Scale.linear(low, high).ticks(most);
		assertTrue(ticks.size() >= 1 && ticks.size() <= most, () -> ticks.size() + " ticks");
		double crumb = (high - low) * 1e-6;
		for (int t = 0; t < ticks.size(); t++) {
			assertTrue(ticks.value(t) >= low - crumb && ticks.value(t) <= high + crumb, "outside: " + ticks.value(t));
		}
	}

	@Test
	void logarithmicTicksArePowersOfTen() {
		assertEquals(List.of("0.01", "1", "100"), labels(Scale.logarithmic(0.01, 1000).ticks(3)));
	}

	@Test
	void logarithmicTicksFillFewDecades() {
		assertEquals(List.of("0.5", "1", "2", "5", "10", "20"), labels(Scale.logarithmic(0.4, 30).ticks(8)));
	}

	@Test
	void partOfADecadeHasTicks() {
		assertEquals(List.of("3.0", "3.5", "4.0"), labels(Scale.logarithmic(3, 4).ticks(4)));
	}

	@Test
	void readoutTellsPixelsApart() {
		assertEquals(0, Scale.linear(0, 20_000).ticks(5).readoutDecimals());
		assertEquals(2, Scale.linear(0, 30).ticks(7).readoutDecimals());
		assertEquals(3, Scale.linear(0, 1).ticks(6).readoutDecimals());
	}
}
