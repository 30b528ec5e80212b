package org.cairnfield.core.reduce;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;

class PlaceOutputsTest {

	@Test
	void weighAlike() {
		double[][] outputs = PlaceOutputs.of(ScatteredMap.of(3, 200));
		assertEquals(5, outputs[0].length); // x, y, floor, two sites
		double[] variance = new double[5];
		for (int c = 0; c < 5; c++) {
			double mean = 0;
			for (double[] output : outputs) {
				mean += output[c] / 200;
				variance[c] += output[c] * output[c] / 200;
			}
			assertEquals(0, mean, 1e-12);
		}
		assertArrayEquals(new double[] { 1, 1, 1, 1 },
				new double[] { variance[0], variance[1], variance[2], variance[3] + variance[4] }, 1e-12);
	}

	@Test
	void leaveOutWhatDoesNotVaryAndWhereFramesLie() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 2, 1000, 7).sample("Tide House", 2, 1002, 7).sample("Lantern Store", 2, 5, 9)
				.sample("Lantern Store", 2, 3, 9);
		double half = Math.sqrt(0.5);
		double[][] expected = { { -1, half, -half }, { 1, half, -half }, { 1, -half, half }, { -1, -half, half } };
		double[][] outputs = PlaceOutputs.of(b.build());
		for (int s = 0; s < 4; s++) {
			assertArrayEquals(expected[s], outputs[s], 1e-15);
		}
	}
}
