package org.cairnfield.core.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.stat.StatUtils;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;

class SharedReadingsTest {

	// {1, 2, 3, 4} and {3, 4, 5} have 2 of 5 in common (definition of Jaccard's index).
	@Test
	void overlapIsSharedByEither() {
		RadioMapBuilder builder = new RadioMapBuilder();
		builder.sample("Hall", 0, 0, 0).reading("1", -50).reading("2", -50).reading("3", -50).reading("4", -54);
		builder.sample("Hall", 0, 0, 0).reading("3", -60).reading("4", -60).reading("5", -60);
		builder.sample("Hall", 0, 0, 0);
		builder.sample("Hall", 0, 0, 0);
		RadioMap map = builder.build();
		SharedReadings both = SharedReadings.of(map, 0, 1);
		assertEquals(2 / 5.0, both.overlap(), 1e-12);
		assertEquals(8, both.meanDifferenceDb(), 1e-12);
		assertTrue(Double.isNaN(both.scatterDb()), "two in common are too few");
		assertEquals(1, SharedReadings.of(map, 2, 3).overlap(), 0);
		assertEquals(0, SharedReadings.of(map, 0, 2).overlap(), 0);
		assertTrue(Double.isNaN(SharedReadings.of(map, 0, 2).meanDifferenceDb()));
	}

	@Test
	void scatterIsTheStandardDeviationOfTheDifferences() {
		int[] a = { -40, -55, -61, -72, -80 };
		int[] b = { -52, -60, -77, -81, -99 };
		double[] difference = new double[a.length];
		RadioMapBuilder builder = new RadioMapBuilder();
		builder.sample("Hall", 0, 0, 0);
		for (int i = 0; i < a.length; i++) {
			builder.reading("ap" + i, a[i]);
			difference[i] = a[i] - b[i];
		}
		builder.sample("Hall", 0, 1, 0);
		for (int i = 0; i < b.length; i++) {
			builder.reading("ap" + i, b[i]);
		}
		SharedReadings both = SharedReadings.of(builder.build(), 0, 1);
		assertEquals(StatUtils.mean(difference), both.meanDifferenceDb(), 1e-12);
		assertEquals(Math.sqrt(StatUtils.variance(difference)), both.scatterDb(), 1e-12);
	}
}
