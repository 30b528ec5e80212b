package org.cairnfield.curation.internal.selftest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.ItuIndoor;
import org.cairnfield.curation.rules.SurveyedMap;

/** Plants phones that are hotspots: each is carried from corner to corner of a floor while part of it is surveyed. */
final class WalkingSenders {

	/** A precision from fewer says nothing; more would make a crowd. */
	private static final int SENDERS = 10;
	/** He crosses the floor while an eighth of it is surveyed. */
	private static final int PART = 8;
	private static final int FEWEST = 15;
	/** A phone radiates some 8 dBm as a hotspot, and 2437 MHz is the middle of the band. */
	private static final double POWER_DBM = 8;
	private static final double FREQUENCY_MHZ = 2437;
	private static final double NOISE_DB = 4;
	private static final int DETECTED_DBM = -88;

	private WalkingSenders() {
	}

	static Planted in(SurveyedMap clean, long seed) {
		RadioMap map = clean.map();
		Planted.Truth truth = new Planted.Truth();
		List<int[]> floors = floors(clean);
		Map<Integer, Map<String, Integer>> heard = new HashMap<>();
		SplittableRandom random = new SplittableRandom(seed);
		for (int i = 0; i < SENDERS && !floors.isEmpty(); i++) {
			int[] floor = floors.get(random.nextInt(floors.size()));
			String address = "planted-walker-" + i;
			if (walk(map, floor, address, random, heard)) {
				truth.add(TrialFault.WALKING_SENDER, address);
			}
		}
		RadioMapBuilder builder = new RadioMapBuilder();
		map.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			Copies.place(map, s, builder);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				builder.reading(map.accessPoint(k), map.rssiDbm(k));
			}
			heard.getOrDefault(s, Map.of()).forEach(builder::reading);
		}
		return truth.in(clean.with(builder.build()));
	}

	/** What one survey recorded of one floor, in the order of rows. */
	private static List<int[]> floors(SurveyedMap clean) {
		Map<String, List<Integer>> floors = new TreeMap<>();
		for (int s = 0; s < clean.size(); s++) {
			floors.computeIfAbsent(
					clean.surveys().get(clean.survey(s)).id() + " " + clean.site(s) + " " + clean.map().floor(s),
					f -> new ArrayList<>()).add(s);
		}
		return floors.values().stream().filter(floor -> floor.size() >= PART * FEWEST)
				.map(floor -> floor.stream().mapToInt(Integer::intValue).toArray()).toList();
	}

	/** Whether anybody heard him at three places. */
	private static boolean walk(RadioMap map, int[] floor, String address, SplittableRandom random,
			Map<Integer, Map<String, Integer>> heard) {
		double left = IntStream.of(floor).mapToDouble(map::x).min().orElseThrow();
		double right = IntStream.of(floor).mapToDouble(map::x).max().orElseThrow();
		double low = IntStream.of(floor).mapToDouble(map::y).min().orElseThrow();
		double high = IntStream.of(floor).mapToDouble(map::y).max().orElseThrow();
		int window = floor.length / PART;
		int first = random.nextInt(floor.length - window);
		int met = 0;
		for (int i = 0; i < window; i++) {
			int s = floor[first + i];
			double share = i / (window - 1.0);
			double metres = Math.hypot(map.x(s) - left - share * (right - left), map.y(s) - low - share * (high - low));
			long level = Math.round(POWER_DBM - ItuIndoor.OFFICE_2_4_GHZ.lossDb(metres, FREQUENCY_MHZ, 0)
					+ NOISE_DB * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2); // variance 1
			if (level >= DETECTED_DBM) {
				heard.computeIfAbsent(s, h -> new TreeMap<>()).put(address, (int) Math.min(level, -20));
				met++;
			}
		}
		return met >= 3;
	}
}
