package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathLossTest {

	// Worked out from 20 log10 d + 20 log10 f - 27.55, to four decimals.
	@ParameterizedTest
	@CsvSource({ "2437, 40.1871 46.2077 54.1665 60.1871 66.2077 74.1665 80.1871",
			"5180, 46.7366 52.7572 60.7160 66.7366 72.7572 80.7160 86.7366",
			"5955, 47.9476 53.9682 61.9270 67.9476 73.9682 81.9270 87.9476" })
	void followsFreeSpace(double mhz, String lossesDb) {
		double[] metres = { 1, 2, 5, 10, 20, 50, 100 };
		String[] losses = lossesDb.split(" ");
		for (int i = 0; i < metres.length; i++) {
			assertEquals(Double.parseDouble(losses[i]), PathLoss.freeSpaceDb(metres[i], mhz), 1e-4);
		}
	}

	// The constant from c = 299 792 458 m/s (SI) is 27.552217.
	@Test
	void roundedConstantReadsSlightlyHigh() {
		assertEquals(20 * Math.log10(2437) - 27.552217, PathLoss.freeSpaceExactDb(1, 2437), 1e-6);
		assertEquals(0.002217, PathLoss.freeSpaceDb(7, 5180) - PathLoss.freeSpaceExactDb(7, 5180), 1e-6);
	}

	@Test
	void doublingDistanceOrFrequencyAddsSixDecibels() {
		double before = PathLoss.freeSpaceExactDb(8, 2412);
		assertEquals(6.0206, PathLoss.freeSpaceExactDb(16, 2412) - before, 1e-4);
		assertEquals(6.0206, PathLoss.freeSpaceExactDb(8, 4824) - before, 1e-4);
	}
}
