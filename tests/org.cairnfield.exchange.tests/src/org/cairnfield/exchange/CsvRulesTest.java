package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.read;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180 section 2, seen through intake. */
class CsvRulesTest {

	@TempDir
	Path folder;

	@Test
	void readsQuotedFieldsWithCommaQuoteAndLineBreak() throws IntakeException {
		// rules 5 to 7
		Intake in = read(file(folder, "a.csv", "id,time,device,building,floor,x,y,\"a,b\",\"c\"\"d\",\"e\r\nf\"\r\n"
				+ "\"aaa\",,\"b\"\"bb\",\"ccc\r\nddd\",0,1,2,-60,,-61\r\n"));
		assertEquals(List.of("a,b", "c\"d", "e\r\nf"), in.map().accessPoints());
		assertEquals(List.of("aaa"), in.sampleIds());
		assertEquals("b\"bb", in.map().devices().get(0));
		assertEquals("ccc\r\nddd", in.map().sites().get(0));
	}

	@Test
	void keepsBlanksAsPartOfAField() throws IntakeException {
		// rule 4
		Intake in = read(file(folder, "a.csv", "id,time,device,building,floor,x,y, AP1\n7,,, Hall,0,1,2,-60\n"));
		assertEquals(" Hall", in.map().sites().get(0));
		assertEquals(" AP1", in.map().accessPoints().get(0));
	}

	@Test
	void countsEmptyFields() throws IntakeException {
		Intake in = read(
				file(folder, "a.csv", "x,y,floor,building,AP1,AP2,AP3\n1,2,0,Hall,-60,,-61\n1,2,0,Hall,\"\",-62,\n"));
		assertEquals(2, in.map().heard(0));
		assertEquals(1, in.map().heard(1));
	}

	@ParameterizedTest
	@ValueSource(strings = { "\r\n", "\n", "\r" })
	void takesAnyLineEndAndNeedsNoneAtTheEnd(String end) throws IntakeException {
		String text = String.join(end, "x,y,floor,building,AP1", "1,2,0,Hall,-60", "", "1,3,0,Hall,-61");
		assertEquals(2, read(file(folder, "a.csv", text)).map().size());
		assertEquals(2, read(file(folder, "b.csv", text + end)).map().size());
	}

	@Test
	void takesASeparatorTooManyAtTheEndOfRows() throws IntakeException {
		Intake in = read(file(folder, "a.csv", "x,y,AP1\n1,2,-60,\n1,3,-61,\n"));
		assertEquals(2, in.map().size());
	}
}
