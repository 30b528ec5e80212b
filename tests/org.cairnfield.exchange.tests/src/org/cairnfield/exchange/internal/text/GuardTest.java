package org.cairnfield.exchange.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GuardTest {

	// CWE-1236: the signs that start a formula
	@ParameterizedTest
	@ValueSource(strings = { "=1+1", "+cmd", "-2+3", "@sum", "\tx", "\rx" })
	void putsAnApostropheBeforeAFormula(String text) {
		assertEquals("'" + text, Guard.on(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "-67", "+5", "-1.5e3", "hall", "", "'quoted'", "a=b" })
	void leavesNumbersAndPlainTextsAlone(String text) {
		assertEquals(text, Guard.on(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "=x", "'=x", "''=x", "'x", "''", "-67", "+x", "hall", "", "'-5", "'-x" })
	void isUndoneForEveryText(String text) {
		assertEquals(text, Guard.off(Guard.on(text)));
	}
}
