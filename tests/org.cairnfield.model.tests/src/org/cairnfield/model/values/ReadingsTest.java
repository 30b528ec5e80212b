package org.cairnfield.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

public class ReadingsTest {

	@Test
	public void sortsItsTextForm() {
		Readings readings = Readings.of(Map.of("ap2", -60, "ap10", -70));
		assertEquals("ap10:-70 ap2:-60", readings.toString());
		assertEquals(readings, Readings.parse(" ap2:-60  ap10:-70 "));
		assertEquals(Readings.NONE, Readings.parse(""));
	}

	@Test
	public void looksUpByAccessPoint() {
		Readings readings = Readings.parse("a:-1 c:-3");
		assertEquals(-3, readings.rssiDbm("c", 0));
		assertEquals(-99, readings.rssiDbm("b", -99));
	}

	@Test
	public void leavesOut() {
		Readings readings = Readings.parse("a:-1 b:-2 c:-3");
		assertEquals("a:-1 c:-3", readings.without("b"::equals).toString());
		assertSame(readings, readings.without("x"::equals));
	}

	@ParameterizedTest
	@ValueSource(strings = { "a", "a:", ":-5", "a:-5.5", "a:-129", "a:128", "a:-1 a:-1", "a b:-1", "a/b:-1" })
	public void refusesWhatIsNoReading(String text) {
		assertThrows(IllegalArgumentException.class, () -> Readings.parse(text));
	}
}
