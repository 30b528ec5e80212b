package org.cairnfield.curation.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

/** Floors on which samples are put 1, 2 and 30 m from where they were taken; the last has few. */
class WorstPlaceTest {

	private final List<SampleKey> keys = new ArrayList<>();

	/** Samples that hear one access point each; asked again some metres off, some of them found on the wrong floor. */
	private SideBySide measured() {
		RadioMapBuilder map = new RadioMapBuilder();
		RadioMapBuilder test = new RadioMapBuilder();
		floor(map, test, "Tide House", 0, 12, 1, 0);
		floor(map, test, "Tide House", 1, 12, 2, 3);
		floor(map, test, "Lantern Store", 0, 4, 30, 0);
		RadioMap built = map.build();
		RadioMap asked = test.build();
		Signals signals = Signals.of(built);
		TestRun run = TestRun.of(TestRun.plain(new Neighbours(signals)), signals.align(asked), asked, Workers.inline());
		Interval none = new Interval(Double.NaN, Double.NaN, 0.95);
		Way way = new Way("plain", "", run, none, 1, none, 1, 0, 1);
		return new SideBySide(asked, keys, List.of(way));
	}

	private void floor(RadioMapBuilder map, RadioMapBuilder test, String site, int level, int samples, double off,
			int wrong) {
		for (int s = 0; s < samples; s++) {
			String name = site + level + '-' + s;
			map.sample(site, s < wrong ? level + 5 : level, 50 * s, 0);
			map.reading(map.accessPoint(name), -40);
			test.sample(site, level, 50 * s + off, 0);
			test.reading(test.accessPoint(name), -40);
			keys.add(new SampleKey("visit", name));
		}
	}

	@Test
	void isTheWorstOfTheFloorsWithTestSamplesEnough() {
		WorstPlace mean = WorstPlace.of(Gate.FLOOR_MEAN, measured());
		assertEquals(2, mean.figure(), 1e-9);
		assertEquals(
				"Tide House, floor 1, 12 test samples; the worst of 2; not judged, with fewer than 10 test samples: Lantern Store, floor 0",
				mean.words());
	}

	@Test
	void takesSharesFromBelow() {
		WorstPlace hits = WorstPlace.of(Gate.SITE_HITS, measured());
		assertEquals(21 / 24.0, hits.figure(), 1e-9);
		assertTrue(hits.words().startsWith("Tide House, 24 test samples; the worst of 1; not judged"), hits.words());
	}

	@Test
	void ofASiteCountsAllItsFloors() {
		assertEquals(1.5, WorstPlace.of(Gate.SITE_MEAN, measured()).figure(), 1e-9);
		assertEquals(2, WorstPlace.of(Gate.SITE_P95, measured()).figure(), 1e-9);
	}
}
