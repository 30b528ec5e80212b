package org.cairnfield.core.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two halves of one simulated survey, of which one is read by another device: its line is found, and none where there is none. */
class LevelFitTest {

	private static final Map<Long, RadioMap> SIMULATED = new ConcurrentHashMap<>();

	private static RadioMap simulated(long seed, int half) {
		return SIMULATED.computeIfAbsent(seed, s -> RandomMap.of(s, CampusSize.of(1, 2, 120), 1200, Workers.inline()))
				.where(s -> s % 2 == half);
	}

	/** What a device reads; below −95 dBm it hears nothing. */
	static RadioMap read(RadioMap map, double slope, double shiftDb) {
		RadioMapBuilder copy = new RadioMapBuilder();
		for (int s = 0; s < map.size(); s++) {
			copy.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int level = (int) Math.round(slope * map.rssiDbm(k) + shiftDb);
				if (level >= -95) {
					copy.reading(map.accessPoints().get(map.accessPoint(k)), Math.min(-10, level));
				}
			}
		}
		return copy.build();
	}

	private static LevelFit fit(long seed, double slope, double shiftDb) {
		return LevelFit.of(read(simulated(seed, 1), slope, shiftDb), simulated(seed, 0), 4).orElseThrow();
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void findsAnOffset(long seed) {
		for (double offset : new double[] { -6, -4, 4, 6 }) {
			LevelFit fit = fit(seed, 1, offset);
			assertTrue(fit.hasOffset() && !fit.hasSlope(), fit::toString);
			assertEquals(-offset, fit.middleDb(), 1.2, fit::toString);
		}
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void findsASlope(long seed) {
		for (double slope : new double[] { 0.8, 1.25 }) {
			LevelFit fit = fit(seed, slope, -60 * (1 - slope));
			assertTrue(fit.hasSlope(), fit::toString);
			assertEquals(1 / slope, fit.slope(), 0.08, fit::toString);
		}
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void findsNoneWhereTheSameDeviceReadBoth(long seed) {
		LevelFit fit = fit(seed, 1, 0);
		assertFalse(fit.hasOffset() || fit.hasSlope(), fit::toString);
	}

	@Test
	void knowsNothingWhereHardlyALevelIsShared() {
		assertEquals(Optional.empty(), LevelFit.of(simulated(1, 1).where(s -> s < 2), simulated(1, 0), 4));
	}
}
