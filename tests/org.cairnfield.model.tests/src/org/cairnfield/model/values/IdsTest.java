package org.cairnfield.model.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

public class IdsTest {

	@ParameterizedTest
	@ValueSource(strings = { "sh-spring", "00005e005301", "1.1.0", "_", "MAC125", "console" })
	public void acceptsWhatNamesAFile(String id) {
		assertTrue(Ids.isUsable(id));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", ".", "..", ".git", "-rf", "a/b", "a\\b", "a:b", "a b", "name.", "con", "NUL.txt", "é",
			"a\n" })
	public void refusesWhatNamesNoFileOnSomeSystem(String id) {
		assertFalse(Ids.isUsable(id));
	}

	@ParameterizedTest
	@ValueSource(strings = { "Sailmakers' Hall", "..", "a//b", "Hauptgebäude", "", "con", "x.", "-", "東" })
	public void makesAnIdOfAnyText(String text) {
		assertTrue(Ids.isUsable(Ids.from(text)), () -> Ids.from(text));
	}

	@Test
	public void makesReadableIds() {
		assertEquals("Sailmakers-Hall", Ids.from("Sailmakers' Hall"));
		assertTrue(Ids.isUsable(Ids.from("x".repeat(300))));
	}

	@Test
	public void takesNearlyAnyTextForASample() {
		assertTrue(Ids.isUsableForSample("S/1 (north side)"));
		assertFalse(Ids.isUsableForSample("S\t1"));
		assertFalse(Ids.isUsableForSample(" S1"));
		assertFalse(Ids.isUsableForSample("S\u20281"));
		assertFalse(Ids.isUsableForSample(""));
	}
}
