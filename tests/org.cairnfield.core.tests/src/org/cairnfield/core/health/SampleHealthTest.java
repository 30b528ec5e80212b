package org.cairnfield.core.health;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SampleHealthTest {

	/** What is heard at x in a corridor with an access point every 10 m, falling by 2 dB a metre. */
	private static void readings(RadioMapBuilder builder, double x, int lessDb) {
		for (int a = 0; a < 5; a++) {
			int level = (int) Math.round(-40 - 2 * Math.abs(x - 10 * a)) - lessDb;
			if (level >= -80) {
				builder.reading("ap" + a, level);
			}
		}
	}

	/** A corridor sampled every 2 m on floor 0, and one with other access points on floor 1. */
	private static RadioMapBuilder corridors() {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int i = 0; i <= 20; i++) {
			builder.sample("Hall", 0, 2 * i, 0);
			readings(builder, 2 * i, 0);
		}
		for (int i = 0; i <= 20; i++) {
			builder.sample("Hall", 1, 2 * i, 0);
			builder.reading("up" + i / 4, -50 - i % 4).reading("roof", -60 - i);
		}
		return builder;
	}

	private static SampleHealth judge(RadioMapBuilder builder) {
		return SampleHealth.of(builder.build(), Workers.inline());
	}

	@Test
	void soundSampleHasItsNeighboursNearby() {
		SampleHealth health = judge(corridors());
		assertEquals(2, health.nearestErrorMetres(10), 1e-9);
		// Of 2, 2, 4, 4 and 6 m.
		assertEquals(4, health.medianErrorMetres(10), 1e-9);
		assertEquals(0, health.floorDisagreement(10), 0);
		assertTrue(health.overlap(10) > 0.7);
		// Those around lose a decibel here and win one there.
		assertEquals(0, health.levelDeficitDb(10), 1.5);
		assertEquals(6, health.aroundWithinMetres(10), 1e-9);
	}

	@Test
	void wrongPlaceShowsInThePositionError() {
		RadioMapBuilder builder = corridors();
		builder.sample("Hall", 0, 37, 0);
		readings(builder, 7, 0);
		SampleHealth health = judge(builder);
		assertTrue(health.nearestErrorMetres(42) >= 29);
		assertTrue(health.medianErrorMetres(42) >= 27);
		assertEquals(0, health.floorDisagreement(42), 0);
		assertTrue(health.overlap(42) < 0.5);
		assertEquals(1, health.placeScore(42), 1e-9);
		assertEquals(1, health.score(42), 1e-9);
	}

	@Test
	void wrongFloorAndSiteShowInTheVotes() {
		RadioMapBuilder builder = corridors();
		builder.sample("Hall", 1, 20, 0);
		readings(builder, 20, 0);
		builder.sample("Shed", 0, 20, 0);
		readings(builder, 20, 0);
		SampleHealth health = judge(builder);
		// The nearest five of each: the other planted one, and four from the corridor.
		assertEquals(1, health.floorDisagreement(42), 1e-9);
		assertEquals(0.2, health.siteDisagreement(42), 1e-9);
		assertEquals(0, health.overlap(42), 0);
		assertEquals(1, health.siteDisagreement(43), 1e-9);
		assertEquals(Double.POSITIVE_INFINITY, health.medianErrorMetres(43));
		assertTrue(Double.isNaN(health.overlap(43)), "nothing around it");
	}

	@Test
	void weakDeviceShowsInTheDeficit() {
		RadioMapBuilder builder = corridors();
		builder.sample("Hall", 0, 20, 0);
		readings(builder, 20, 12);
		SampleHealth health = judge(builder);
		assertEquals(12, health.levelDeficitDb(42), 2);
		assertEquals(1, health.readingsScore(42), 1e-9);
	}

	@Test
	void permutedLevelsShowInTheScatter() {
		RadioMapBuilder builder = corridors();
		builder.sample("Hall", 0, 10, 0.5);
		builder.reading("ap0", -40).reading("ap1", -80).reading("ap2", -60).reading("ap3", -60);
		SampleHealth health = judge(builder);
		assertTrue(health.levelScatterDb(42) > 20);
		assertTrue(health.levelScatterDb(5) < 12);
		assertTrue(health.nearestDistance(42) > 30);
		assertEquals(1, health.readingsScore(42), 1e-9);
	}

	@Test
	void knownOffsetOfADeviceIsNoDeficit() {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int i = 0; i <= 40; i++) {
			builder.sample("Hall", 0, i, 0).device("A");
			readings(builder, i, 0);
			if (i % 3 == 0) {
				builder.sample("Hall", 0, i, 1).device("B");
				readings(builder, i, 6);
			}
		}
		RadioMap map = builder.build();
		assertEquals(-6, DeviceOffsets.of(map, new PlaceIndex(map)).offsetDb(1), 0.7);
		SampleHealth health = SampleHealth.of(map, Workers.inline());
		for (int s = 0; s < map.size(); s++) {
			assertEquals(0, health.levelDeficitDb(s), 2.5, "sample " + s);
		}
	}

	@Test
	void copiesOfASampleCountAsBeingAround() {
		RadioMapBuilder builder = corridors();
		for (int copy = 0; copy < 6; copy++) {
			builder.sample("Hall", 0, 20, 0);
			readings(builder, 20, 0);
		}
		SampleHealth health = judge(builder);
		assertEquals(0, health.aroundWithinMetres(10), 0);
		assertEquals(1, health.overlap(10), 0);
		assertEquals(0, health.levelDeficitDb(10), 0);
		assertEquals(0, health.nearestDistance(10), 0);
	}

	@Test
	void emptyAndTinyMapsAreJudgedWithoutNeighbours() {
		assertEquals(0, judge(new RadioMapBuilder()).size());
		RadioMapBuilder one = new RadioMapBuilder();
		one.sample("Hall", 0, 1, 1).reading("ap", -50);
		SampleHealth health = judge(one);
		assertTrue(Double.isNaN(health.medianErrorMetres(0)));
		assertTrue(Double.isNaN(health.levelDeficitDb(0)));
		assertEquals(0, health.score(0), 0);
		RadioMapBuilder silent = corridors();
		silent.sample("Hall", 0, 20, 0);
		assertEquals(0, judge(silent).overlap(42), 0);
	}

	@Test
	void doesNotDependOnTheWorkers() {
		RadioMap map = RandomMap.of(6, CampusSize.of(2, 2, 40), 700, Workers.inline());
		SampleHealth alone = SampleHealth.of(map, Workers.inline());
		ExecutorService threads = Executors.newFixedThreadPool(3);
		try {
			SampleHealth together = SampleHealth.of(map, Workers.on(threads, 3, Progress.NONE));
			for (int s = 0; s < map.size(); s++) {
				assertEquals(alone.medianErrorMetres(s), together.medianErrorMetres(s), 0);
				assertEquals(alone.score(s), together.score(s), 0);
				assertEquals(alone.levelScatterDb(s), together.levelScatterDb(s), 0);
			}
		} finally {
			threads.shutdown();
		}
	}
}
