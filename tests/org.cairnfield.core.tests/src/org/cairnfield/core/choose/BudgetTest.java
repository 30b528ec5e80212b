package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetTest {

	@ParameterizedTest
	@CsvSource({ "5000, 0.06", "20000, 0.06", "900, 0.1", "400, 0.15", "9, 1", "1, 1", "0, 1" })
	void isThreeOverTheRootBelowFiveThousand(int samples, double share) {
		assertEquals(share, Budget.share(samples), 1e-15);
	}
}
