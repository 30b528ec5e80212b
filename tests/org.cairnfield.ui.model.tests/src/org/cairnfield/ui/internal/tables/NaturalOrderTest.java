package org.cairnfield.ui.internal.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class NaturalOrderTest {

	private final NaturalOrder order = new NaturalOrder();

	@Test
	void countsInsideTexts() {
		List<String> expected = List.of("00:00:5E:00:53:02", "00:00:5e:00:53:0A", "00:00:5E:00:53:10", "", "AP", "ap 1",
				"AP 2", "AP 2b", "AP 10", "AP 00011", "MAC2", "MAC10",
				"MAC99999999999999999998", "MAC99999999999999999999", "mac100000000000000000000");
		for (long seed = 0; seed < 50; seed++) {
			List<String> shuffled = new ArrayList<>(expected);
			Collections.shuffle(shuffled, new Random(seed));
			shuffled.sort(order);
			assertEquals(expected, shuffled);
		}
	}

	@Test
	void isAnOrder() {
		Random random = new Random(1);
		for (int i = 0; i < 2_000; i++) {
			String a = text(random);
			String b = text(random);
			String c = text(random);
			assertEquals(Integer.signum(order.compare(a, b)), -Integer.signum(order.compare(b, a)), a + " and " + b);
			assertTrue(order.compare(a, b) > 0 || order.compare(b, c) > 0 || order.compare(a, c) <= 0,
					a + ", " + b + ", " + c);
			assertEquals(0, order.compare(a, a.toUpperCase()));
		}
	}

	private static String text(Random random) {
		StringBuilder text = new StringBuilder();
		for (int i = random.nextInt(6); i > 0; i--) {
			text.append("ab01:9".charAt(random.nextInt(6)));
		}
		return text.toString();
	}
}
