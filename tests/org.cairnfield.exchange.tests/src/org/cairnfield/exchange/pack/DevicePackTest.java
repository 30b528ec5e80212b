package org.cairnfield.exchange.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.ToLongFunction;
import java.util.zip.CRC32;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.export.Pseudonyms;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DevicePackTest {

	private static final Pseudonyms PSEUDONYMS = new Pseudonyms("a key that is long enough".getBytes(StandardCharsets.US_ASCII));

	private static RadioMap training;
	private static RadioMap test;
	private static int[] labels;

	@BeforeAll
	static void surveyMarrowQuay() {
		SimulatedArchive simulated = MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED);
		training = joined(simulated, SimulatedSurvey.Role.TRAINING);
		test = joined(simulated, SimulatedSurvey.Role.TEST);
		labels = Dbscan.cluster(Signals.of(training), 150, 4, Workers.inline()).labels();
		assertTrue(Arrays.stream(labels).max().getAsInt() > 10 && Arrays.stream(labels).anyMatch(l -> l == Clustering.NOISE));
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

	private static PackReader.Position locate(PackReader reader, RadioMap map, int sample, ToLongFunction<String> number) {
		int n = map.heard(sample);
		long[] addresses = new long[n];
		int[] levels = new int[n];
		for (int i = 0; i < n; i++) {
			addresses[i] = number.applyAsLong(map.accessPoints().get(map.accessPoint(map.firstReading(sample) + i)));
			levels[i] = map.rssiDbm(map.firstReading(sample) + i);
		}
		return reader.locate(addresses, levels);
	}

	/** Bit for bit, on every test sample. */
	private static void requireAgreement(DevicePack pack, PackReader reader, ToLongFunction<String> number) {
		Estimates expected = Estimates.of(pack.matcher(), pack.matcher().signals().align(pack.packed().queries(test)), Workers.inline());
		for (int s = 0; s < test.size(); s++) {
			PackReader.Position found = locate(reader, test, s, number);
			assertEquals(pack.packed().map().sites().get(expected.site(s)), reader.sites()[found.site()], "site of " + s);
			assertEquals(expected.floor(s), found.floor(), "floor of " + s);
			assertEquals(expected.x(s), found.xMetres(), "x of " + s);
			assertEquals(expected.y(s), found.yMetres(), "y of " + s);
		}
	}

	@ParameterizedTest(name = "steps of {0} dB, {1} cells, relative {2}, k {3} weighted {4}, pool {5}")
	@CsvSource({"1,3,true,3,true,false", "4,1,false,1,false,false", "3,2,true,5,true,true", "1,1,true,3,false,true"})
	void positionsAsTheWorkbenchDoesOnEveryTestSampleOfTheDemo(int step, int probes, boolean relative, int k, boolean weighted,
			boolean pool) {
		DevicePack pack = DevicePack.of(training, labels, pool, new PackSettings(step, probes, relative, new Voting(k, weighted)));
		requireAgreement(pack, new PackReader(pack.bytes(null, "")), PackAddresses::of);
		assertTrue(test.size() > 300);
	}

	@Test
	void positionsByPseudonymsLikewiseAndHoldsNoAddress() {
		DevicePack pack = DevicePack.of(training, labels, false, PackSettings.USUAL);
		byte[] bytes = pack.bytes(PSEUDONYMS, "");
		PackReader reader = new PackReader(bytes);
		assertTrue(reader.pseudonyms());
		requireAgreement(pack, reader, name -> PackAddresses.of(name, PSEUDONYMS));
		assertEquals(0, locate(reader, test, 0, PackAddresses::of).known());
		assertFalse(new PackReader(pack.bytes(null, "")).pseudonyms());
	}

	@Test
	void roundsPositionsByNoMoreThanHalfAUnitAndLevelsByHalfAStep() {
		PackedMap packed = PackedMap.of(training, 4);
		for (int s = 0; s < training.size(); s++) {
			assertEquals(training.x(s), packed.map().x(s), 0.0051);
			assertEquals(training.y(s), packed.map().y(s), 0.0051);
			for (int k = training.firstReading(s), p = packed.map().firstReading(s); k < training.endReading(s); k++, p++) {
				assertEquals(training.rssiDbm(k), packed.map().rssiDbm(p), 2.0);
			}
		}
	}

	@Test
	void takesACoarserUnitForASiteLargerThan655Metres() {
		RadioMap large = new RadioMapBuilder().sample("Far", 0, -1000, 0).reading("a", -50).sample("Far", 0, 3000, 7).reading("b", -50).build();
		DevicePack pack = DevicePack.of(large, new int[] {0, 1}, false, new PackSettings(1, 1, true, Voting.NEAREST));
		assertEquals(3000, pack.packed().map().x(1), 0.04);
		PackReader.Position found = new PackReader(pack.bytes(null, "")).locate(new long[] {PackAddresses.of("b")}, new int[] {-50});
		assertEquals(7, found.yMetres(), 0.04);
	}

	private static RadioMap shifted(RadioMap map, double x, double y) {
		RadioMapBuilder all = new RadioMapBuilder();
		for (int s = 0; s < map.size(); s++) {
			all.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s) + x, map.y(s) + y);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				all.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
			}
		}
		return all.build();
	}

	/** EPSG 32633 and its like: northings count from the equator. */
	@Test
	void positionsFarFromTheOriginAsTheWorkbenchDoesAndAsNearIt() {
		RadioMap near = training;
		RadioMap nearTest = test;
		PackReader nearReader = new PackReader(DevicePack.of(near, labels, false, PackSettings.USUAL).bytes(null, ""));
		try {
			training = shifted(near, 420_000, 4_860_000);
			test = shifted(nearTest, 420_000, 4_860_000);
			DevicePack pack = DevicePack.of(training, labels, false, PackSettings.USUAL);
			byte[] bytes = pack.bytes(null, "");
			assertEquals(2, ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getShort(4));
			PackReader reader = new PackReader(bytes);
			requireAgreement(pack, reader, PackAddresses::of);
			for (int s = 0; s < test.size(); s++) {
				PackReader.Position far = locate(reader, test, s, PackAddresses::of);
				PackReader.Position expected = locate(nearReader, nearTest, s, PackAddresses::of);
				assertEquals(expected.xMetres() + 420_000, far.xMetres(), 1e-6);
				assertEquals(expected.yMetres() + 4_860_000, far.yMetres(), 1e-6);
				assertEquals(expected.floor(), far.floor());
			}
		} finally {
			training = near;
			test = nearTest;
		}
	}

	@Test
	void writesVersion2OnlyWhereAnOriginNeedsItAndLaysItOutAsDocumented() {
		RadioMap edge = new RadioMapBuilder().sample("Edge", 0, 2_147_483.647, -2_147_483.648).reading("a", -50).build();
		assertEquals(1, DevicePack.of(edge, new int[] {0}, false, PackSettings.USUAL).bytes(null, "")[4]);
		RadioMap far = new RadioMapBuilder().sample("Edge", 0, 2_147_483.648, -2_147_483.649).reading("a", -50).build();
		byte[] bytes = DevicePack.of(far, new int[] {0}, false, PackSettings.USUAL).bytes(null, "");
		ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
		assertEquals(2, in.getShort(4));
		int sites = in.getInt(28);
		assertEquals(2_147_483_648L, in.getLong(sites));
		assertEquals(-2_147_483_649L, in.getLong(sites + 8));
		assertEquals(4, in.get(sites + 16));
		assertEquals("Edge", new String(bytes, sites + 17, 4, StandardCharsets.UTF_8));
		assertEquals(sites + 21, in.getInt(32));
	}

	@Test
	void refusesPositionsTooFarApartAndFloorsTooHigh() {
		RadioMap apart = new RadioMapBuilder().sample("Far", 0, 0, 0).reading("a", -50).sample("Far", 0, 420_000, 4_860_000).reading("a", -50).build();
		assertTrue(assertThrows(PackLimitException.class, () -> DevicePack.of(apart, new int[] {0, 0}, false, PackSettings.USUAL)).getMessage()
				.contains("far from the others"));
		RadioMap high = new RadioMapBuilder().sample("High", 128, 0, 0).reading("a", -50).build();
		assertThrows(PackLimitException.class, () -> DevicePack.of(high, new int[] {0}, false, PackSettings.USUAL));
	}

	@Test
	void laysTheHeaderOutAsDocumented() {
		DevicePack pack = DevicePack.of(training, labels, false, PackSettings.USUAL);
		byte[] bytes = pack.bytes(null, "0123456789abcdef" + "00".repeat(24));
		ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
		assertEquals("CFPK", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
		assertEquals(1, in.getShort(4));
		assertEquals(6, in.getShort(6)); // relative, weighted
		assertEquals(bytes.length, in.getInt(8));
		assertEquals(Arrays.stream(labels).filter(l -> l >= 0).count(), in.getInt(12));
		assertEquals(training.lowestRssiDbm(), in.get(21));
		assertEquals(0x01, in.get(48));
		assertEquals((byte) 0xef, in.get(55));
		int addresses = in.getInt(32);
		for (int a = 1; a < in.getShort(16); a++) {
			assertTrue(Long.compareUnsigned(in.getLong(addresses + 8 * a - 8), in.getLong(addresses + 8 * a)) < 0);
		}
		// 00:00:5E:00:53:01 has its octets on top
		assertEquals(0x0000_5E00_5301_0000L, PackAddresses.of("00:00:5e:00:53:01"));
	}

	@Test
	void hasTheChecksumOfTheUsualCrc32() {
		CRC32 crc = new CRC32(); // check value of CRC-32 (ISO-HDLC), as catalogues of CRCs give it
		crc.update("123456789".getBytes(StandardCharsets.US_ASCII));
		assertEquals(0xCBF43926L, crc.getValue());
		byte[] bytes = DevicePack.of(training, labels, false, PackSettings.USUAL).bytes(null, "");
		crc.reset();
		crc.update(bytes, 0, bytes.length - 4);
		assertEquals((int) crc.getValue(), ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(bytes.length - 4));
	}

	@Test
	void givesTheSameBytesAgain() {
		assertArrayEquals(DevicePack.of(training, labels, true, PackSettings.USUAL).bytes(PSEUDONYMS, "ab"),
				DevicePack.of(training, labels, true, PackSettings.USUAL).bytes(PSEUDONYMS, "ab"));
	}

	@Test
	void refusesAPackWithAnyByteOfItChangedOrCut() {
		RadioMap small = test.view(new int[] {0, 1, 2});
		byte[] bytes = DevicePack.of(small, new int[] {0, 0, 1}, false, PackSettings.USUAL).bytes(null, "ab");
		for (int at = 0; at < bytes.length; at++) {
			byte[] changed = bytes.clone();
			changed[at] ^= (byte) (1 << at % 8);
			assertThrows(IllegalArgumentException.class, () -> new PackReader(changed), "byte " + at);
			byte[] cut = Arrays.copyOf(bytes, at);
			assertThrows(IllegalArgumentException.class, () -> new PackReader(cut), "cut at " + at);
		}
	}

	@Test
	void passesOverWhatItDoesNotKnowAndWhatIsTooFaint() {
		RadioMap two = new RadioMapBuilder().sample("Quay", 2, 1, 2).reading("a", -60).sample("Quay", -1, 9, 2).reading("b", -60).build();
		PackReader reader = new PackReader(DevicePack.of(two, new int[] {0, 1}, false,
				new PackSettings(1, 1, true, Voting.NEAREST)).bytes(null, ""));
		long a = PackAddresses.of("a");
		assertEquals(new PackReader.Position(0, -1, 9, 2, 1),
				reader.locate(new long[] {PackAddresses.of("b"), PackAddresses.of("never heard"), a}, new int[] {-58, -40, -61}));
		assertEquals(0, reader.locate(new long[] {a}, new int[] {-61}).known());
	}

	@Test
	void refusesWhatAPackCannotHold() {
		assertThrows(IllegalArgumentException.class, () -> DevicePack.of(training, new int[3], false, PackSettings.USUAL));
		RadioMapBuilder sites = new RadioMapBuilder();
		for (int i = 0; i < 256; i++) {
			sites.sample("site " + i, 0, 0, 0).reading("a", -60);
		}
		DevicePack many = DevicePack.of(sites.build(), new int[256], false, PackSettings.USUAL);
		assertThrows(IllegalArgumentException.class, () -> many.bytes(null, ""));
		assertThrows(IllegalArgumentException.class, () -> new PackSettings(0, 3, true, Voting.NEAREST));
	}

	/** In every list of a pack with pseudonyms columns ascend: nothing stands in the order of the addresses. */
	@Test
	void hidesTheOrderOfAddressesWhereTheyArePseudonyms() {
		byte[] bytes = DevicePack.of(training, labels, false, PackSettings.USUAL).bytes(PSEUDONYMS, "");
		ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
		int lists = 0;
		int at = in.getInt(36);
		for (int c = 0; c < in.getShort(18); c++) {
			int entries = in.getShort(at) & 0xFFFF;
			requireAscending(in, at + 6, entries, 4);
			at += 6 + 4 * entries;
			lists++;
		}
		at = in.getInt(44);
		for (int s = 0; s < in.getInt(12); s++) {
			int heard = in.getShort(at + 10) & 0xFFFF;
			requireAscending(in, at + 12, heard, 3);
			at += 12 + 3 * heard;
			lists++;
		}
		assertEquals(bytes.length - PackReader.TRAILER_BYTES, at);
		assertTrue(lists > 1000);
	}

	private static void requireAscending(ByteBuffer in, int from, int entries, int bytes) {
		for (int i = 1; i < entries; i++) {
			assertTrue((in.getShort(from + bytes * i) & 0xFFFF) > (in.getShort(from + bytes * (i - 1)) & 0xFFFF));
		}
	}
}
