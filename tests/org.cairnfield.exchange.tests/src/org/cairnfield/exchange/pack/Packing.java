package org.cairnfield.exchange.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.function.ToLongFunction;
import java.util.zip.CRC32;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.export.Pseudonyms;

/** Makes packs for tests, asks their readers, and compares with the workbench. */
final class Packing {

	static final Pseudonyms PSEUDONYMS = new Pseudonyms(
			"a key that is long enough".getBytes(StandardCharsets.US_ASCII));

	private static final long SEED = 1;

	private Packing() {
	}

	/** The map of the workbench, made ready for a search; noise in a pool or left out. */
	static SplitMap split(Signals signals, int[] labels, boolean pool, Search search) {
		Clustering cells = search.cells(signals, new Clustering(labels, null), SEED, Workers.inline());
		if (!pool) {
			return search.map(signals, cells, SEED, Workers.inline());
		}
		SplitMap split = SplitMap.of(signals, cells, Centroids.Kind.MEAN, true);
		return search.twoLevels() ? split.inTwoLevels(SEED, Workers.inline()) : split;
	}

	static DevicePack pack(RadioMap map, int[] labels, boolean pool, int stepDb, Search search) {
		return DevicePack.of(split(Signals.of(map), labels, pool, search), new PackSettings(stepDb, search));
	}

	static DevicePack pack(RadioMap map, int[] labels, Search search) {
		return pack(map, labels, false, 1, search);
	}

	static DevicePack pack(RadioMap map, int... labels) {
		return pack(map, labels, Search.USUAL);
	}

	static PackReader.Position locate(PackReader reader, RadioMap map, int sample, ToLongFunction<String> number) {
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
	static void requireAgreement(DevicePack pack, PackReader reader, RadioMap test, ToLongFunction<String> number,
			String what) {
		Estimates expected = Estimates.of(pack.matcher(), pack.matcher().signals().align(pack.packed().queries(test)),
				Workers.inline());
		for (int s = 0; s < test.size(); s++) {
			String where = what + ", query " + s;
			PackReader.Position found = locate(reader, test, s, number);
			if (expected.site(s) == Estimates.UNKNOWN) {
				assertNull(found, where);
				continue;
			}
			assertEquals(pack.packed().map().sites().get(expected.site(s)), reader.sites()[found.site()], where);
			assertEquals(expected.floor(s), found.floor(), where);
			assertEquals(expected.x(s), found.xMetres(), where);
			assertEquals(expected.y(s), found.yMetres(), where);
		}
	}

	static RadioMap shifted(RadioMap map, double x, double y) {
		RadioMapBuilder all = new RadioMapBuilder();
		map.accessPoints().forEach(all::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			all.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s) + x, map.y(s) + y);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				all.reading(map.accessPoint(k), map.rssiDbm(k));
			}
		}
		return all.build();
	}

	static ByteBuffer read(byte[] bytes) {
		return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
	}

	/** Makes the checksums right again, as somebody does who changes a pack on purpose. */
	static byte[] sealed(byte[] bytes) {
		ByteBuffer out = read(bytes);
		out.putInt(60, crc(bytes, 60));
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			sha.update(bytes, 0, bytes.length - PackReader.TRAILER_BYTES);
			out.put(bytes.length - PackReader.TRAILER_BYTES, sha.digest());
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException(e);
		}
		out.putInt(bytes.length - 4, crc(bytes, bytes.length - 4));
		return bytes;
	}

	private static int crc(byte[] bytes, int length) {
		CRC32 crc = new CRC32();
		crc.update(bytes, 0, length);
		return (int) crc.getValue();
	}
}
