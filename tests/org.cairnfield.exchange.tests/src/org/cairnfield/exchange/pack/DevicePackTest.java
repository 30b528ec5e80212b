package org.cairnfield.exchange.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.stream.IntStream;
import java.util.zip.CRC32;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DevicePackTest {

	private static RadioMap training;
	private static int[] labels;

	@BeforeAll
	static void simulate() {
		training = RandomMap.of(3, CampusSize.of(2, 2, 60), 400, Workers.inline());
		labels = Dbscan.cluster(Signals.of(training), 150, 3, Workers.inline()).labels();
		assertTrue(Arrays.stream(labels).max().getAsInt() > 3
				&& Arrays.stream(labels).anyMatch(l -> l == Clustering.NOISE));
	}

	@Test
	void roundsPositionsByNoMoreThanHalfAUnitAndLevelsByHalfAStep() {
		PackedMap packed = Packing.pack(training, labels, false, 4, Search.USUAL).packed();
		for (int s = 0; s < training.size(); s++) {
			assertEquals(training.x(s), packed.map().x(s), 0.0051);
			assertEquals(training.y(s), packed.map().y(s), 0.0051);
			for (int k = training.firstReading(s),
					p = packed.map().firstReading(s); k < training.endReading(s); k++, p++) {
				assertEquals(training.rssiDbm(k), packed.map().rssiDbm(p), 2.0);
			}
		}
	}

	@Test
	void takesACoarserUnitForASiteLargerThan655Metres() {
		RadioMap large = new RadioMapBuilder().sample("Far", 0, -1000, 0).reading("a", -50).sample("Far", 0, 3000, 7)
				.reading("b", -50).build();
		DevicePack pack = Packing.pack(large, new int[] { 0, 1 }, Search.PUBLISHED);
		assertEquals(3000, pack.packed().map().x(1), 0.04);
		PackReader.Position found = new PackReader(pack.bytes(null, "")).locate(new long[] { PackAddresses.of("b") },
				new int[] { -50 });
		assertEquals(7, found.yMetres(), 0.04);
	}

	@Test
	void writesVersion2WhereAnOriginNeedsIt() {
		RadioMap edge = new RadioMapBuilder().sample("Edge", 0, 2_147_483.647, -2_147_483.648).reading("a", -50)
				.build();
		assertEquals(1, Packing.pack(edge, 0).bytes(null, "")[4]);
		RadioMap far = new RadioMapBuilder().sample("Edge", 0, 2_147_483.648, -2_147_483.649).reading("a", -50).build();
		byte[] bytes = Packing.pack(far, 0).bytes(null, "");
		ByteBuffer in = Packing.read(bytes);
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
		RadioMap apart = new RadioMapBuilder().sample("Far", 0, 0, 0).reading("a", -50)
				.sample("Far", 0, 420_000, 4_860_000).reading("a", -50).build();
		assertTrue(assertThrows(PackLimitException.class, () -> Packing.pack(apart, 0, 0)).getMessage()
				.contains("far from the others"));
		RadioMap high = new RadioMapBuilder().sample("High", 128, 0, 0).reading("a", -50).build();
		assertThrows(PackLimitException.class, () -> Packing.pack(high, 0));
	}

	@Test
	void laysTheHeaderOutAsDocumented() {
		DevicePack pack = Packing.pack(training, labels);
		byte[] bytes = pack.bytes(null, "0123456789abcdef" + "00".repeat(24));
		ByteBuffer in = Packing.read(bytes);
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
		byte[] bytes = Packing.pack(training, labels).bytes(null, "");
		crc.reset();
		crc.update(bytes, 0, bytes.length - 4);
		assertEquals((int) crc.getValue(), Packing.read(bytes).getInt(bytes.length - 4));
	}

	@Test
	void givesTheSameBytesAgain() {
		assertArrayEquals(Packing.pack(training, labels, true, 1, Search.USUAL).bytes(Packing.PSEUDONYMS, "ab"),
				Packing.pack(training, labels, true, 1, Search.USUAL).bytes(Packing.PSEUDONYMS, "ab"));
	}

	@Test
	void passesOverWhatItDoesNotKnowAndWhatIsTooFaint() {
		RadioMap two = new RadioMapBuilder().sample("Quay", 2, 1, 2).reading("a", -60).sample("Quay", -1, 9, 2)
				.reading("b", -60).build();
		PackReader reader = new PackReader(Packing.pack(two, new int[] { 0, 1 }, Search.PUBLISHED).bytes(null, ""));
		long a = PackAddresses.of("a");
		assertEquals(new PackReader.Position(0, -1, 9, 2, 1),
				reader.locate(new long[] { PackAddresses.of("b"), PackAddresses.of("never heard"), a },
						new int[] { -58, -40, -61 }));
		assertEquals(0, reader.locate(new long[] { a }, new int[] { -61 }).known());
	}

	@Test
	void refusesWhatAPackCannotHold() {
		RadioMapBuilder sites = new RadioMapBuilder();
		for (int i = 0; i < 256; i++) {
			sites.sample("site " + i, 0, 0, 0).reading("a", -60);
		}
		DevicePack many = Packing.pack(sites.build(), new int[256]);
		assertThrows(PackLimitException.class, () -> many.bytes(null, ""));
		assertThrows(IllegalArgumentException.class, () -> Packing.pack(new RadioMapBuilder().build()));
	}

	@Test
	void refusesASearchInOneLevelOfAMapInTwoAndStepsOutOfRange() {
		Search two = Search.parse("cut groups 2 cells 3 relative k 3 weighted");
		assertThrows(IllegalArgumentException.class,
				() -> DevicePack.of(Packing.split(Signals.of(training), labels, false, two), PackSettings.USUAL));
		assertThrows(IllegalArgumentException.class, () -> new PackSettings(0, Search.USUAL));
		assertThrows(IllegalArgumentException.class, () -> new PackSettings(17, Search.USUAL));
	}

	@Test
	void holdsAsManyClustersAs16BitsCount() {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < 0x10000; s++) {
			builder.sample("Quay", 0, s % 300, s / 300).reading("ap " + s % 251, -100 + s / 251 % 97)
					.reading("more " + s / (251 * 97), -90);
		}
		RadioMap map = builder.build();
		int[] each = new int[0x10000];
		Arrays.setAll(each, s -> s);
		DevicePack most = Packing.pack(map.where(s -> s < 0xFFFF), Arrays.copyOf(each, 0xFFFF), Search.PUBLISHED);
		PackReader reader = new PackReader(most.bytes(null, ""));
		for (int s : new int[] { 0, 0x7FFF, 0x8000, 0xFFFE }) {
			assertEquals(new PackReader.Position(0, 0, s % 300, s / 300, 2),
					Packing.locate(reader, map, s, PackAddresses::of));
		}
		DevicePack tooMany = Packing.pack(map, each, Search.PUBLISHED);
		assertTrue(assertThrows(PackLimitException.class, () -> tooMany.bytes(null, "")).getMessage()
				.contains("65535 clusters"));
	}

	private static RadioMap threeSamples() {
		return new RadioMapBuilder().sample("Tide House", 0, 0.25, -1.5).reading("00:00:5E:00:53:01", -61)
				.reading("02:00:5E:00:53:02", -70)
				.sample("Tide House", 1, 12.4, 7.85).reading("00:00:5E:00:53:01", -44)
				.sample("Lantern Store", -1, -3.5, 100).reading("lamp", -90).reading("00:00:5E:00:53:01", -62).build();
	}

	/** Devices in the field read these bytes: written before the format had a second version. */
	@Test
	void writesVersion1ByteForByteAsItAlwaysWas() {
		byte[] bytes = Packing
				.pack(threeSamples(), new int[] { 0, 0, 1 }, Search.parse("cells 2 relative k 3 weighted"))
				.bytes(null, "0123456789abcdef");
		assertEquals(
				"4346504b010006000c010000030000000300020002a6010302100a004000000069000000810000009d000000b50000000123456789abcdef0000000023bb32f6fa00000024faffff0a5469646520486f75736554f2ffffa08601000d4c616e7465726e2053746f726500000153005e000000000253005e0002032f0049f2858ec9020010030000000068020100a8000200e00100000000d00102001000b500000002000000d600000001000000e80000000000000001000000000000000000020000001e010015020000000001bf04a703010000002f0000000001ff00000000020000001d02000175e6935fa52e854ee7d7ec5ff3758e41650179a9f85b6da02e090be8bc4b78867b4f8e1b",
				HexFormat.of().formatHex(bytes));
	}

	/** Walks a pack in two levels by nothing but the documentation. */
	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void laysVersion2OutAsDocumented(boolean hidden) {
		Search search = Search.parse("cut groups 2 cells 3 relative k 3 weighted");
		DevicePack pack = Packing.pack(training, labels, search);
		byte[] bytes = pack.bytes(hidden ? Packing.PSEUDONYMS : null, "");
		ByteBuffer in = Packing.read(bytes);
		assertEquals(2, in.getShort(4));
		assertEquals(hidden ? 7 : 6, in.getShort(6));
		assertEquals(3, in.get(23));
		assertEquals(3, in.get(24));
		int at = 64;
		for (int s = 0; s < in.get(20); s++) {
			assertEquals(training.sites().get(s), new String(bytes, at + 17, in.get(at + 16), StandardCharsets.UTF_8));
			at += 17 + in.get(at + 16);
		}
		assertEquals(at, in.getInt(32));
		at += 8 * in.getShort(16);
		assertEquals(at, in.getInt(36));
		int cells = in.getShort(18);
		for (int c = 0; c < cells; c++) {
			at = requireCentroid(in, at, pack.split().centroids().magnitude(c), hidden);
		}
		assertEquals(at, in.getInt(56));
		assertEquals(pack.split().groups(), in.getShort(at));
		assertTrue(pack.split().groups() > 2);
		assertEquals(2, in.get(at + 2));
		assertEquals(0, in.get(at + 3));
		at += 4;
		for (int g = 0; g < pack.split().groups(); g++) {
			at = requireCentroid(in, at, pack.split().groupCentroids().magnitude(g), hidden);
			int[] list = new int[in.getShort(at)];
			for (int i = 0; i < list.length; i++) {
				list[i] = in.getShort(at + 2 + 2 * i);
			}
			assertArrayEquals(pack.split().cellsOf(g), list);
			at += 2 + 2 * list.length;
		}
		assertEquals(at, in.getInt(40));
		assertEquals(at + 8 * (cells + 1), in.getInt(44));
		for (int c = 0, first = in.getInt(44), total = 0; c <= cells; c++) {
			assertTrue(in.getInt(at + 8 * c) >= first);
			assertEquals(pack.split().members(c).length, in.getInt(at + 8 * c + 4));
			total += in.getInt(at + 8 * c + 4);
			assertEquals(c < cells ? total : in.getInt(12), total);
		}
	}

	/** Gives where it ends. */
	private static int requireCentroid(ByteBuffer in, int at, double magnitude, boolean ascending) {
		int entries = in.getShort(at);
		long sum = 0;
		for (int i = 0; i < entries; i++) {
			sum += in.getShort(at + 8 + 4 * i);
		}
		assertEquals(in.getInt(at + 2), sum);
		assertEquals(magnitude * 16, sum);
		if (ascending) {
			requireAscending(in, at + 6, entries, 4);
		}
		return at + 6 + 4 * entries;
	}

	@Test
	void reckonsWhatADeviceReadsForAQuery() {
		Search one = Search.parse("cut cells 3 relative k 3 weighted");
		SplitMap flat = Packing.pack(training, labels, one).split();
		double sample = IntStream.range(0, flat.cells()).flatMap(c -> IntStream.of(flat.members(c)))
				.map(s -> DevicePack.sampleBytes(training, s)).average().orElseThrow();
		assertEquals(DevicePack.centroidBytes(flat.centroids()) + 10 * sample,
				DevicePack.queryBytes(flat, one, flat.cells() + 10), 1e-6);

		Search all = Search.parse("cut groups 100 cells 3 relative k 3 weighted");
		SplitMap grouped = Packing.pack(training, labels, all).split();
		double lists = 2 * grouped.groups() + 2 * grouped.cells();
		double groups = DevicePack.centroidBytes(grouped.groupCentroids());
		double entered = DevicePack.queryBytes(grouped, new Search(true, 1, 3, true, Voting.NEAREST), 0);
		assertTrue(
				entered > groups + 6 && entered < groups + lists + DevicePack.centroidBytes(grouped.centroids()) / 2.0);
		assertEquals(grouped.groups(),
				IntStream.range(0, grouped.groups()).filter(g -> grouped.cellsOf(g).length > 0).count());
		assertEquals(2 * entered - groups,
				DevicePack.queryBytes(grouped, new Search(true, 2, 3, true, Voting.NEAREST), 0), 1e-6);
	}

	/** In every list of a pack with pseudonyms columns ascend: nothing stands in the order of the addresses. */
	@Test
	void hidesTheOrderOfAddressesWhereTheyArePseudonyms() {
		byte[] bytes = Packing.pack(training, labels).bytes(Packing.PSEUDONYMS, "");
		ByteBuffer in = Packing.read(bytes);
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
		assertEquals(in.getShort(18) + in.getInt(12), lists);
	}

	private static void requireAscending(ByteBuffer in, int from, int entries, int bytes) {
		for (int i = 1; i < entries; i++) {
			assertTrue((in.getShort(from + bytes * i) & 0xFFFF) > (in.getShort(from + bytes * (i - 1)) & 0xFFFF));
		}
	}
}
