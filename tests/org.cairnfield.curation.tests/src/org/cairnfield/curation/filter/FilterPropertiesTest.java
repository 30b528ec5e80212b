package org.cairnfield.curation.filter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;

/** What holds for any expression. */
public class FilterPropertiesTest {

	private static final int TRIALS = 2_000;

	private final Random random = new Random(20_310_407);
	private final SampleContent content = SmallTables.random(5, 300);

	private static int[] passing(String expression, SampleContent content) throws FilterException {
		IntPredicate test = SampleFilter.parse(expression).on(content);
		return IntStream.range(0, content.size()).filter(test).toArray();
	}

	private String comparison() {
		return switch (random.nextInt(9)) {
		case 0 -> "S10" + random.nextInt(100);
		case 1 -> "finding";
		case 2 ->
			"ap 00005e00530" + random.nextInt(7) + (random.nextBoolean() ? "" : " >= -" + (40 + random.nextInt(40)));
		case 3 -> "finding " + sign(8) + ' ' + List.of("error", "warning", "note").get(random.nextInt(3));
		case 4 -> "state " + sign(2) + ' ' + List.of("kept", "aside").get(random.nextInt(2));
		case 5 -> "time " + sign(6) + " 2031-04-0" + (7 + random.nextInt(2))
				+ List.of("", "T12:30", "T09:30:00").get(random.nextInt(3));
		case 6 -> List.of("cluster", "role", "time", "device").get(random.nextInt(4)) + sign(2) + "none";
		case 7 -> List.of("id", "survey", "site", "device", "reason", "role").get(random.nextInt(6)) + ' '
				+ List.of("=", "!=", "~", "!~").get(random.nextInt(4)) + " \""
				+ List.of("1", "noise", "twice", "S").get(random.nextInt(4)) + '"';
		default ->
			List.of("floor", "x", "y", "heard", "strongest", "findings", "cluster").get(random.nextInt(7)) + sign(6)
					+ (random.nextInt(40) - 20) / 4.0;
		};
	}

	private String sign(int of) {
		return List.of("=", "!=", "<", "<=", ">", ">=", "~", "!~").get(random.nextInt(of));
	}

	private String expression(int depth) {
		return switch (depth == 0 ? 0 : random.nextInt(4)) {
		case 1 -> expression(depth - 1) + " and " + expression(depth - 1);
		case 2 -> '(' + expression(depth - 1) + ") or " + expression(depth - 1);
		case 3 -> "not (" + expression(depth - 1) + ')';
		default -> comparison();
		};
	}

	@Test
	public void readsBackAsWritten() throws FilterException {
		for (int trial = 0; trial < TRIALS; trial++) {
			String text = expression(4);
			SampleFilter filter = SampleFilter.parse(text);
			SampleFilter again = SampleFilter.parse(filter.toString());
			assertEquals(filter.expression(), again.expression(), text);
			assertEquals(filter.toString(), again.toString());
		}
	}

	@Test
	public void dividesSamplesByNot() throws FilterException {
		int some = 0;
		for (int trial = 0; trial < TRIALS; trial++) {
			String text = expression(2);
			int passing = passing('(' + text + ')', content).length;
			assertEquals(content.size() - passing, passing("not (" + text + ')', content).length, text);
			some += passing > 0 && passing < content.size() ? 1 : 0;
		}
		assertTrue(some > TRIALS / 3, "expressions that tell samples apart: " + some);
	}

	/** De Morgan's law, and what "and" is without the word. */
	@Test
	public void putsTogetherAsLogicDoes() throws FilterException {
		for (int trial = 0; trial < TRIALS / 4; trial++) {
			String a = '(' + expression(1) + ')';
			String b = '(' + expression(1) + ')';
			assertArrayEquals(passing("not (" + a + " or " + b + ')', content),
					passing("not " + a + " and not " + b, content), a + b);
			assertArrayEquals(passing(a + " and " + b, content), passing(a + ' ' + b, content), a + b);
			assertArrayEquals(passing(a + " or " + b, content), passing(b + " or " + a, content), a + b);
		}
	}

	@Test
	public void ordersDivideWhatIsKnown() throws FilterException {
		for (String field : List.of("floor", "x", "y", "heard", "strongest", "cluster")) {
			for (int value = -12; value < 12; value++) {
				int known = passing(field + " != none", content).length;
				int below = passing(field + " < " + value, content).length;
				int equal = passing(field + " = " + value, content).length;
				assertEquals(known, below + equal + passing(field + " > " + value, content).length, field + value);
				assertEquals(below + equal, passing(field + " <= " + value, content).length, field + value);
			}
		}
	}

	/** Whatever is typed, it is understood or refused at a place within the text. */
	@Test
	public void refusesNonsenseInWords() {
		String pieces = "()\"=!<>~ \tandornotfloorx m5-.,ap:−≤\u00e4\ud83d";
		int refused = 0;
		for (int trial = 0; trial < 20_000; trial++) {
			StringBuilder text = new StringBuilder();
			for (int i = 0, n = random.nextInt(25); i < n; i++) {
				int at = random.nextInt(pieces.length());
				text.append(random.nextInt(4) > 0 ? pieces.substring(at, at + 1)
						: List.of(" and ", " or ", "not ", "floor", "=", " 5", "ap ", "finding", "time")
								.get(random.nextInt(9)));
			}
			try {
				SampleFilter.parse(text.toString());
			} catch (FilterException e) {
				refused++;
				assertTrue(e.position() >= 0 && e.position() <= text.length(), () -> text + ": " + e.getMessage());
			}
		}
		assertTrue(refused > 1_000 && refused < 20_000, "refused: " + refused);
	}

	@Test
	public void refusesWhatIsNestedTooDeeply() {
		String deep = "(".repeat(100_000) + "a" + ")".repeat(100_000);
		for (String text : List.of(deep, "not ".repeat(100_000) + "a")) {
			try {
				SampleFilter.parse(text);
				throw new AssertionError("was understood");
			} catch (FilterException e) {
				assertTrue(e.getMessage().contains("nested too deeply"), e.getMessage());
			}
		}
	}
}
