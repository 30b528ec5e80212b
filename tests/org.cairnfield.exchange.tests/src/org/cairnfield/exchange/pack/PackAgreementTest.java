package org.cairnfield.exchange.pack;

import static org.cairnfield.exchange.pack.Packing.pack;
import static org.cairnfield.exchange.pack.Packing.requireAgreement;
import static org.cairnfield.exchange.pack.Packing.shifted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A device finds the position that the workbench finds, to the last bit, however the map is searched. */
class PackAgreementTest {

	private static final int[] STEPS = { 1, 2, 3, 7, 16 };
	private static final double[][] ORIGINS = { { 0, 0 }, { 420_000, 4_860_000 }, { -9_000_000, 9_000_000.5 } };

	private static RadioMap training;
	private static RadioMap test;
	private static int[] labels;

	@BeforeAll
	static void surveyMarrowQuay() {
		SimulatedArchive simulated = MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED);
		training = joined(simulated, SimulatedSurvey.Role.TRAINING);
		test = joined(simulated, SimulatedSurvey.Role.TEST);
		labels = Dbscan.cluster(Signals.of(training), 150, 4, Workers.inline()).labels();
		assertTrue(Arrays.stream(labels).max().getAsInt() > 10
				&& Arrays.stream(labels).anyMatch(l -> l == Clustering.NOISE));
		assertTrue(test.size() > 300);
	}

	private static RadioMap joined(SimulatedArchive simulated, SimulatedSurvey.Role role) {
		RadioMapBuilder all = new RadioMapBuilder();
		for (SimulatedSurvey survey : simulated.surveys(role)) {
			RadioMap map = survey.map();
			for (int s = 0; s < map.size(); s++) {
				all.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					all.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
				}
			}
		}
		return all.build();
	}

	@ParameterizedTest(name = "steps of {0} dB, pool {1}, {2}")
	@CsvSource({ "1,false,cells 3 relative k 3 weighted", "4,false,cells 1 plain k 1",
			"3,true,cells 2 relative k 5 weighted",
			"1,true,cells 1 relative k 3", "1,false,cut groups 3 cells 4 relative k 5 weighted",
			"2,true,groups 2 cells 3 plain k 3" })
	void onEveryTestSampleOfTheDemo(int step, boolean pool, String code) {
		Search search = Search.parse(code);
		DevicePack pack = pack(training, labels, pool, step, search);
		assertEquals(search.twoLevels(), pack.split().groups() > 0);
		requireAgreement(pack, new PackReader(pack.bytes(null, "")), test, PackAddresses::of, "demo");
	}

	@ParameterizedTest(name = "{0}")
	@CsvSource({ "cells 3 relative k 3 weighted", "cut groups 3 cells 4 relative k 5 weighted" })
	void byPseudonymsAndHoldsNoAddress(String code) {
		DevicePack pack = pack(training, labels, Search.parse(code));
		PackReader reader = new PackReader(pack.bytes(Packing.PSEUDONYMS, ""));
		assertTrue(reader.pseudonyms());
		requireAgreement(pack, reader, test, name -> PackAddresses.of(name, Packing.PSEUDONYMS), "pseudonyms");
		assertEquals(0, Packing.locate(reader, test, 0, PackAddresses::of).known());
		assertFalse(new PackReader(pack.bytes(null, "")).pseudonyms());
	}

	/** EPSG 32633 and its like: northings count from the equator. */
	@ParameterizedTest(name = "{0}")
	@CsvSource({ "cells 3 relative k 3 weighted", "cut groups 3 cells 4 relative k 5 weighted" })
	void farFromTheOriginAndAsNearIt(String code) {
		Search search = Search.parse(code);
		PackReader nearReader = new PackReader(pack(training, labels, search).bytes(null, ""));
		RadioMap farTest = shifted(test, 420_000, 4_860_000);
		DevicePack pack = pack(shifted(training, 420_000, 4_860_000), labels, search);
		PackReader reader = new PackReader(pack.bytes(null, ""));
		requireAgreement(pack, reader, farTest, PackAddresses::of, "far");
		for (int s = 0; s < test.size(); s++) {
			PackReader.Position far = Packing.locate(reader, farTest, s, PackAddresses::of);
			PackReader.Position expected = Packing.locate(nearReader, test, s, PackAddresses::of);
			assertEquals(expected.xMetres() + 420_000, far.xMetres(), 1e-6);
			assertEquals(expected.yMetres() + 4_860_000, far.yMetres(), 1e-6);
			assertEquals(expected.floor(), far.floor());
		}
	}

	private static Stream<Search> searches() {
		return Stream.of(false, true)
				.flatMap(cut -> IntStream.of(0, 1, 2, 5).boxed().flatMap(groups -> IntStream.of(1, 2, 4, 30).boxed()
						.flatMap(cells -> Stream.of(false, true)
								.map(relative -> new Search(cut, groups, cells, relative, Voting.NEAREST)))));
	}

	/** Maps of few levels and many like samples, so that ties abound. */
	@ParameterizedTest(name = "{0}")
	@MethodSource("searches")
	void onRandomMaps(Search base) {
		SplittableRandom random = new SplittableRandom(base.code().hashCode());
		int twoLevels = 0;
		int changed = 0;
		for (int i = 0; i < 12; i++) {
			Search search = base.with(base.cellProbes(), new Voting(new int[] { 1, 3, 5, 100 }[i % 4], i % 3 != 0));
			RandomSplit made = new RandomSplit(random, ORIGINS[i % ORIGINS.length], 1 + random.nextInt(30),
					1 + random.nextInt(6));
			boolean hidden = random.nextBoolean();
			DevicePack pack = pack(made.map, made.labels, random.nextBoolean(), STEPS[random.nextInt(STEPS.length)],
					search);
			byte[] bytes = pack.bytes(hidden ? Packing.PSEUDONYMS : null, "");
			assertEquals(pack.split().groups() > 0 || i % ORIGINS.length != 0 ? 2 : 1, bytes[4]);
			ToLongFunction<String> number = hidden ? name -> PackAddresses.of(name, Packing.PSEUDONYMS)
					: PackAddresses::of;
			requireAgreement(pack, new PackReader(bytes), made.test, number, search + ", map " + i);
			twoLevels += pack.split().groups() > 0 ? 1 : 0;
			changed += pack.samples() > 0 ? 1 : 0;
		}
		assertTrue(changed > 8 && (base.twoLevels() ? twoLevels > 3 : twoLevels == 0),
				changed + " packs with samples, " + twoLevels);
	}

	/** Fingerprints around some spots, each a cluster, and some noise; queries hear what the map never did, and fainter. */
	private static final class RandomSplit {
		final RadioMap map;
		final int[] labels;
		final RadioMap test;
		private final SplittableRandom random;
		private final int[][] spotLevels;
		private final double[] origin;

		RandomSplit(SplittableRandom random, double[] origin, int spots, int spread) {
			this.random = random;
			this.origin = origin;
			spotLevels = new int[spots][8];
			for (int[] spot : spotLevels) {
				Arrays.setAll(spot, a -> random.nextInt(3) == 0 ? 1 : -50 - 10 * random.nextInt(3));
			}
			RadioMapBuilder builder = new RadioMapBuilder();
			int samples = 4 * spots;
			labels = new int[samples];
			for (int s = 0; s < samples; s++) {
				labels[s] = random.nextInt(8) == 0 ? Clustering.NOISE : s % spots;
				add(builder, s % spots, spread, labels[s] == Clustering.NOISE ? "noise only" : null);
			}
			for (int s = 0, next = 0; s < samples; s++) { // clusters are numbered without gaps
				int spot = labels[s];
				if (spot >= 0 && spot >= next && Arrays.stream(labels, 0, s).noneMatch(l -> l == spot)) {
					for (int o = s; o < samples; o++) {
						labels[o] = labels[o] == spot ? next : labels[o] == next ? spot : labels[o];
					}
					next++;
				}
			}
			map = builder.build();
			RadioMapBuilder asked = new RadioMapBuilder();
			for (int q = 0; q < 40; q++) {
				add(asked, random.nextInt(spots), 12, q % 3 == 0 ? "noise only" : q % 3 == 1 ? "never heard" : null);
			}
			test = asked.build();
		}

		private void add(RadioMapBuilder builder, int spot, int spread, String besides) {
			builder.sample("site " + spot % 3, spot % 5 - 2, origin[0] + random.nextInt(4000) / 100.0,
					origin[1] + random.nextInt(4000) / 100.0);
			for (int a = 0; a < spotLevels[spot].length; a++) {
				if (spotLevels[spot][a] < 0) {
					builder.reading(String.format("02:00:5E:00:53:%02X", 0xF0 - 17 * a),
							spotLevels[spot][a] + random.nextInt(spread) - spread / 2);
				}
			}
			if (besides != null) {
				builder.reading(besides, -60);
			}
		}
	}

	@Test
	void leavesOutOfAQueryWhatOnlySamplesOutsideThePackHeard() {
		RadioMap map = new RadioMapBuilder().sample("Quay", 0, 0, 0).reading("a", -60).sample("Quay", 0, 10, 0)
				.reading("a", -70)
				.sample("Quay", 0, 5, 5).reading("hotspot", -40).build();
		RadioMap asked = new RadioMapBuilder().sample("Quay", 0, 0, 0).reading("a", -62).reading("hotspot", -40)
				.build();
		DevicePack pack = pack(map, new int[] { 0, 0, Clustering.NOISE }, Search.parse("cells 1 plain k 2 weighted"));
		PackReader reader = new PackReader(pack.bytes(null, ""));
		requireAgreement(pack, reader, asked, PackAddresses::of, "hotspot");
		PackReader.Position found = Packing.locate(reader, asked, 0, PackAddresses::of);
		assertEquals(1, found.known());
		assertEquals(10 * (1 / 9.0) / (1 / 3.0 + 1 / 9.0), found.xMetres(), 1e-12); // 2 dB and 8 dB away
	}

	@Test
	void staysInOneLevelWhereFewCellsAreAskedForInTwo() {
		RadioMap map = new RadioMapBuilder().sample("Quay", 0, 0, 0).reading("a", -60).sample("Quay", 0, 9, 0)
				.reading("b", -70).build();
		for (int[] few : new int[][] { { 0, 1 }, { 0, 0 }, { 0, Clustering.NOISE },
				{ Clustering.NOISE, Clustering.NOISE } }) {
			DevicePack pack = pack(map, few, Search.parse("groups 3 cells 2 relative k 3 weighted"));
			byte[] bytes = pack.bytes(null, "");
			assertEquals(1, bytes[4]);
			requireAgreement(pack, new PackReader(bytes), map, PackAddresses::of, Arrays.toString(few));
		}
	}

	/** A device compares positive levels, whatever the workbench made the split with. */
	@Test
	void keepsTheCellsAndGroupsOfASplitMadeByAnotherDistance() {
		Search search = Search.parse("cut groups 2 cells 3 relative k 3 weighted");
		SplitMap made = Packing.split(Signals.of(training, Representation.named("powed"), Distance.EUCLIDEAN), labels,
				false, search);
		DevicePack pack = DevicePack.of(made, new PackSettings(1, search));
		assertEquals(made.groups(), pack.split().groups());
		assertTrue(made.groups() > 1);
		for (int g = 0; g < made.groups(); g++) {
			assertEquals(Arrays.toString(made.cellsOf(g)), Arrays.toString(pack.split().cellsOf(g)));
		}
		for (int c = 0; c <= made.cells(); c++) {
			assertEquals(Arrays.toString(made.members(c)), Arrays.toString(pack.split().members(c)));
		}
		assertNotEquals(Distance.EUCLIDEAN, pack.matcher().signals().distance());
		requireAgreement(pack, new PackReader(pack.bytes(null, "")), test, PackAddresses::of, "powed");
	}

	/** As in one level, since the pack counts only in whole numbers: the sum decides, not the order. */
	@Test
	void countsAnAccessPointOnceHoweverOftenAQueryNamesIt() {
		PackReader reader = new PackReader(
				pack(training, labels, Search.parse("cut groups 3 cells 4 relative k 5 weighted")).bytes(null, ""));
		long[] once = { PackAddresses.of(training.accessPoints().get(0)),
				PackAddresses.of(training.accessPoints().get(1)) };
		PackReader.Position expected = reader.locate(once, new int[] { -60, -50 });
		assertEquals(expected,
				reader.locate(new long[] { once[0], once[1], once[0], once[0] }, new int[] { -60, -50, -40, -60 }));
	}
}
