package org.cairnfield.curation.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class SampleFilterTest {

	private final SampleContent five = SmallTables.five();

	private String passing(String expression) throws FilterException {
		IntPredicate test = SampleFilter.parse(expression).on(five);
		return IntStream.range(0, five.size()).filter(test)
				.mapToObj(i -> five.table(i).id(five.rows().row(i)).substring(3))
				.collect(Collectors.joining(" "));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^', value = {
			"a1                                    | A1",
			"\"sh-\"                               | A1 A2 A3",
			"\"floor\"                             | ^^",
			"id ~ b                                | B1 B2",
			"id !~ b                               | A1 A2 A3",
			"id = th-b2                            | B2",
			"survey != sh-spring                   | B1 B2",
			"site = \"Tide House\"                 | B1 B2",
			"site ~ sail                           | A1 A2 A3",
			"kind = test                           | B1 B2",
			"kind != Test and floor = 1            | A2 A3",
			"device ~ guide                        | A1 A2 A3",
			"device = none                         | B1 B2",
			"floor = 1                             | A2 A3",
			"floor = -1                            | B2",
			"floor >= 1                            | A2 A3 B1",
			"heard < 2                             | A2 B1 B2",
			"heard<=1                              | A2 B1 B2",
			"heard ≠ 0                             | A1 A2 A3 B1",
			"x = 12.40                             | A2",
			"x = 12.40 m                           | A2",
			"x > 12.40m                            | ^^",
			"x >= 12.40                            | A2",
			"y < −3                                | A3",
			"time = 2031-04-07                     | A1 A2",
			"time = 2031-04-07T09:30               | A1",
			"time > 2031-04-07T09:30               | A2 B1",
			"time >= 2031-04-07t09:31:00z          | A2 B1",
			"time < 2031-04-08                     | A1 A2",
			"time <= 2031-04-08                    | A1 A2 B1",
			"time = none                           | A3 B2",
			"time != none                          | A1 A2 B1",
			"state = kept                          | A1 A3 B1 B2",
			"state = aside                         | A2",
			"state != kept                         | A2",
			"reason ~ courier                      | A2",
			"strongest > -55                       | A1",
			"strongest = -55 dBm                   | A2 A3",
			"strongest = none                      | B2",
			"finding                               | A3 B1",
			"not finding                           | A1 A2 B2",
			"finding = error                       | A3 B1",
			"finding = warning                     | ^^",
			"finding >= warning                    | A3 B1",
			"finding < error                       | ^^",
			"finding != error                      | A1 A2 B2",
			"finding ~ swapped                     | A3",
			"finding !~ swapped                    | A1 A2 B1 B2",
			"findings > 1                          | A3",
			"findings = 0                          | A1 A2 B2",
			"cluster = 7                           | A1",
			"cluster != none                       | A1",
			"role = noise                          | A2",
			"role = none                           | A3 B1 B2",
			"ap 00:00:5e:00:53:01                  | A1 A3",
			"ap 00-00-5E-00-53-01                  | A1 A3",
			"ap 00005e005304                       | A3",
			"ap 00:00:5e:00:53:01 > -60            | A1",
			"ap 00:00:5e:00:53:01 <= -60 dBm       | A3",
			"not ap 00:00:5e:00:53:01              | A2 B1 B2",
			"ap 00:00:5e:00:53:7f                  | ^^",
			"floor = 1 and heard < 2               | A2",
			"floor = 1 heard < 2                   | A2",
			"a1 or floor = 1 and heard < 2         | A1 A2",
			"(a1 or floor = 1) and heard < 2       | A2",
			"not a1 and not floor = 1              | B1 B2",
			"not (a1 or floor = 1)                 | B1 B2",
			"NOT Floor = 1 AND SH                  | A1",
			"not not a1                            | A1" })
	public void findsWhatItSays(String expression, String expected) throws FilterException {
		assertEquals(expected, passing(expression));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^', value = {
			"floor                | 5  | floor is compared with nothing | floor = 1",
			"floor = 1 and        | 13 | missing before the end | part of an id",
			"or a1                | 0  | missing before 'or' | part of an id",
			"floor =              | 7  | a value is missing after = | Write",
			"= 5                  | 0  | nothing to compare before it | heard = 5",
			"flor = 1             | 0  | 'flor' is nothing that samples have | floor",
			"a1 (floor = 1        | 3  | not closed | Write )",
			"a1)                  | 2  | never opened | Take it away",
			"site = \"Tide        | 7  | quotation mark is not closed | second one",
			"floor = one          | 8  | 'one' is not a number | 5",
			"x < 1,5              | 4  | '1,5' is not a number | 1.5",
			"x < 5 dBm            | 6  | not dBm | 5 m",
			"x < 5dBm             | 5  | not dBm | 5 m",
			"heard < 5 m          | 10 | not m | alone",
			"ap 00:00:5e:00:53:01 > -60 m | 27 | not m | dBm",
			"ap                   | 2  | address of an access point is missing | ap 00:00:5e:00:53:01",
			"ap x ~ 5             | 5  | compared by ~ | =",
			"id < 5               | 3  | id cannot be compared by < | = != ~ !~",
			"heard ~ 5            | 6  | heard cannot be compared by ~ | >=",
			"state = away         | 8  | 'away' is not a state | kept or aside",
			"finding = bad        | 10 | 'bad' is not a severity | error, warning or note",
			"time > yesterday     | 7  | 'yesterday' is not a time | 2031-04-07",
			"time = 2031-02-30    | 7  | not a time | UTC" })
	public void saysWhatIsWrongWhereAndWhatToDo(String expression, int position, String what, String remedy) {
		try {
			SampleFilter.parse(expression);
		} catch (FilterException e) {
			assertEquals(position, e.position(), e.getMessage());
			assertTrue(e.getMessage().startsWith("At character " + (position + 1) + ": "), e.getMessage());
			assertTrue(e.getMessage().contains(what), e.getMessage());
			assertTrue(e.getMessage().substring(e.getMessage().indexOf(what)).contains(remedy), e.getMessage());
			return;
		}
		throw new AssertionError("was understood: " + expression);
	}

	@Test
	public void showsAllWhereNothingIsSaid() throws FilterException {
		assertTrue(SampleFilter.parse("  ").isEverything());
		assertNull(SampleFilter.EVERYTHING.on(five));
		assertFalse(SampleFilter.parse("a").isEverything());
	}

	@Test
	public void remarksOnAnAccessPointThatNobodyHas() throws FilterException {
		assertEquals(List.of("No survey listed here has an access point '00:00:5e:00:53:7f'."),
				SampleFilter.parse("a1 or not (ap 00:00:5e:00:53:7f and ap 00:00:5e:00:53:01)").remarks(five));
	}

	/** Who reads the help must find every word there, and its examples must be understood. */
	@Test
	public void helpsWithEveryWord() throws FilterException {
		String help = String.join("\n", SampleFilter.HELP);
		for (SampleField field : SampleField.values()) {
			assertTrue(help.contains(field.word()), field.word());
			SampleFilter.parse(field.word() + " = " + field.example());
		}
	}
}
