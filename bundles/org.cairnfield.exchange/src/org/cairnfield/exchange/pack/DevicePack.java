package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.zip.CRC32;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.exchange.export.Pseudonyms;

/**
 * A split map made ready for a device, and the workbench's matcher over the same numbers. The same map, split and settings
 * give the same bytes.
 */
public final class DevicePack {

	/** Of one unit of level that values of centroids count. */
	public static final int CENTROID_PARTS = 16;

	private static final int FLAG_PSEUDONYMS = 1;
	private static final int FLAG_RELATIVE = 2;
	private static final int FLAG_WEIGHTED = 4;
	private static final int MOST_NAME_BYTES = 255;

	private final PackedMap packed;
	private final SplitMap split;
	private final PackSettings settings;

	private DevicePack(PackedMap packed, SplitMap split, PackSettings settings) {
		this.packed = packed;
		this.split = split;
		this.settings = settings;
	}

	/**
	 * @param map    at least one sample
	 * @param labels cluster of each sample, or {@link Clustering#NOISE}
	 * @param pool   whether noise is searched with every query; otherwise it is left out of the pack
	 * @throws PackLimitException for a map that a pack cannot hold
	 */
	public static DevicePack of(RadioMap map, int[] labels, boolean pool, PackSettings settings) {
		if (map.size() == 0 || labels.length != map.size()) {
			throw new IllegalArgumentException(labels.length + " labels for a map of " + map.size() + " samples");
		}
		for (int s = 0; s < map.size(); s++) {
			if (map.floor(s) != (byte) map.floor(s)) {
				throw new PackLimitException("a device pack holds floors from -128 to 127, not " + map.floor(s));
			}
		}
		PackedMap packed = PackedMap.of(map, settings.levelStepDb());
		Clustering clustering = new Clustering(labels, null);
		SplitMap split = SplitMap.of(Signals.of(packed.map()), clustering, Centroids.Kind.MEAN, pool)
				.withRoundedCentroids(CENTROID_PARTS);
		return new DevicePack(packed, split, settings);
	}

	/** Positions and levels as the pack has them. */
	public PackedMap packed() {
		return packed;
	}

	/** The workbench's search of the same samples by the same rules. */
	public SplitMatcher matcher() {
		return new SplitMatcher(split, 1, settings.cellProbes(), settings.relative(), settings.voting());
	}

	/** The clusters that are in the pack, and their samples. */
	public SplitMap split() {
		return split;
	}

	/** Bytes of a sample in a pack: its place, and three for each access point heard. */
	public static int sampleBytes(RadioMap map, int sample) {
		return 12 + 3 * map.heard(sample);
	}

	/** Bytes of all centroids in a pack. */
	public static long centroidBytes(Centroids centroids) {
		long bytes = 0;
		for (int c = 0; c < centroids.size(); c++) {
			bytes += 6 + 4L * (centroids.end(c) - centroids.start(c));
		}
		return bytes;
	}

	/** Samples in the pack. */
	public int samples() {
		return split.samples();
	}

	/**
	 * The bytes of the pack.
	 *
	 * @param pseudonyms in place of addresses, or null
	 * @param source     SHA-256 of the content that it was made from, in hexadecimal digits; may be empty
	 */
	public byte[] bytes(Pseudonyms pseudonyms, String source) {
		RadioMap map = packed.map();
		int[] columns = heard();
		long[] address = new long[map.accessPointCount()];
		for (int c : columns) {
			String name = map.accessPoints().get(c);
			address[c] = pseudonyms == null ? PackAddresses.of(name) : PackAddresses.of(name, pseudonyms);
		}
		int[] sorted = IntStream.of(columns).boxed().sorted(Comparator.comparing(c -> address[c], Long::compareUnsigned))
				.mapToInt(Integer::intValue).toArray();
		int[] column = new int[map.accessPointCount()];
		for (int i = 0; i < sorted.length; i++) {
			column[sorted[i]] = i;
			if (i > 0 && address[sorted[i]] == address[sorted[i - 1]]) {
				throw new IllegalArgumentException("two access points have the number of " + map.accessPoints().get(sorted[i]));
			}
		}
		limit("access points", sorted.length, 0xFFFF);
		limit("clusters", split.cells(), 0xFFFF);
		limit("sites", map.sites().size(), 0xFF);
		ByteBuffer out = ByteBuffer.allocate(size(sorted.length)).order(ByteOrder.LITTLE_ENDIAN);
		out.position(PackReader.HEADER_BYTES);
		int sites = out.position();
		writeSites(out);
		int addresses = out.position();
		for (int c : sorted) {
			out.putLong(address[c]);
		}
		int centroids = out.position();
		writeCentroids(out, column, pseudonyms != null);
		int cells = out.position();
		int samples = cells + 8 * (split.cells() + 1);
		writeSamples(out, cells, samples, column, pseudonyms != null);
		writeHeader(out, sorted.length, new int[] {sites, addresses, centroids, cells, samples},
				pseudonyms != null, source);
		return seal(out);
	}

	/** Of the format: the first one wherever it holds the map, since every reader knows it. */
	private int version() {
		return packed.hasNearOrigins() ? PackReader.NEAR_ORIGINS : PackReader.FAR_ORIGINS;
	}

	private static void limit(String what, int count, int most) {
		if (count > most) {
			throw new PackLimitException("a device pack holds at most " + most + ' ' + what + ", not " + count);
		}
	}

	private int[] heard() {
		RadioMap map = packed.map();
		boolean[] heard = new boolean[map.accessPointCount()];
		for (int cell = 0; cell <= split.cells(); cell++) {
			for (int s : split.members(cell)) {
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					heard[map.accessPoint(k)] = true;
				}
			}
		}
		return IntStream.range(0, heard.length).filter(c -> heard[c]).toArray();
	}

	private int size(int accessPoints) {
		RadioMap map = packed.map();
		long size = PackReader.HEADER_BYTES + 8L * accessPoints + 8L * (split.cells() + 1) + PackReader.TRAILER_BYTES
				+ centroidBytes(split.centroids());
		for (String name : map.sites()) {
			size += 2 * PackReader.originBytes(version()) + 1 + name(name).length;
		}
		for (int cell = 0; cell <= split.cells(); cell++) {
			for (int s : split.members(cell)) {
				size += sampleBytes(map, s);
			}
		}
		if (size > Integer.MAX_VALUE) {
			throw new PackLimitException("a device pack ends at 2 GiB");
		}
		return (int) size;
	}

	/** As many whole characters as fit. */
	private static byte[] name(String site) {
		String cut = site;
		byte[] bytes = cut.getBytes(StandardCharsets.UTF_8);
		while (bytes.length > MOST_NAME_BYTES) {
			cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
			bytes = cut.getBytes(StandardCharsets.UTF_8);
		}
		return bytes;
	}

	private void writeSites(ByteBuffer out) {
		List<String> names = packed.map().sites();
		for (int s = 0; s < names.size(); s++) {
			byte[] name = name(names.get(s));
			if (packed.hasNearOrigins()) {
				out.putInt((int) packed.originXMm(names.get(s))).putInt((int) packed.originYMm(names.get(s)));
			} else {
				out.putLong(packed.originXMm(names.get(s))).putLong(packed.originYMm(names.get(s)));
			}
			out.put((byte) name.length).put(name);
		}
	}

	/**
	 * Entries in the order that they are written in: as the map has its access points or, where pseudonyms hide these, by
	 * column, since the order of addresses would show between which others an unknown one lies.
	 */
	private static int[] inOrder(int from, int to, IntUnaryOperator column, boolean hidden) {
		IntStream entries = IntStream.range(from, to);
		return hidden ? entries.boxed().sorted(Comparator.comparingInt(column::applyAsInt)).mapToInt(Integer::intValue).toArray()
				: entries.toArray();
	}

	private void writeCentroids(ByteBuffer out, int[] column, boolean hidden) {
		Centroids centroids = split.centroids();
		for (int c = 0; c < centroids.size(); c++) {
			out.putShort((short) (centroids.end(c) - centroids.start(c)));
			out.putInt((int) Math.round(centroids.magnitude(c) * CENTROID_PARTS));
			for (int k : inOrder(centroids.start(c), centroids.end(c), e -> column[centroids.column(e)], hidden)) {
				out.putShort((short) column[centroids.column(k)]);
				out.putShort((short) Math.round(centroids.value(k) * CENTROID_PARTS));
			}
		}
	}

	private void writeSamples(ByteBuffer out, int cells, int samples, int[] column, boolean hidden) {
		RadioMap map = packed.map();
		int[] rank = split.ranks();
		out.position(samples);
		for (int cell = 0; cell <= split.cells(); cell++) {
			int[] members = split.members(cell);
			out.putInt(cells + 8 * cell, out.position()).putInt(cells + 8 * cell + 4, members.length);
			for (int s : members) {
				out.putInt(rank[s]).put((byte) map.site(s)).put((byte) map.floor(s));
				out.putShort((short) packed.unitsX(s)).putShort((short) packed.unitsY(s)).putShort((short) map.heard(s));
				for (int k : inOrder(map.firstReading(s), map.endReading(s), e -> column[map.accessPoint(e)], hidden)) {
					out.putShort((short) column[map.accessPoint(k)]).put((byte) packed.code(map.rssiDbm(k)));
				}
			}
		}
	}

	private void writeHeader(ByteBuffer out, int accessPoints, int[] offsets, boolean pseudonyms, String source) {
		int flags = (pseudonyms ? FLAG_PSEUDONYMS : 0) | (settings.relative() ? FLAG_RELATIVE : 0)
				| (settings.voting().weighted() ? FLAG_WEIGHTED : 0);
		out.putInt(0, PackReader.MAGIC).putShort(4, (short) version()).putShort(6, (short) flags);
		out.putInt(8, out.capacity()).putInt(12, samples()).putShort(16, (short) accessPoints);
		out.putShort(18, (short) split.cells()).put(20, (byte) packed.map().sites().size());
		out.put(21, (byte) packed.lowestRssiDbm()).put(22, (byte) packed.levelStepDb());
		out.put(23, (byte) settings.voting().k()).put(24, (byte) settings.cellProbes()).put(25, (byte) CENTROID_PARTS);
		out.putShort(26, (short) packed.unitMm());
		for (int i = 0; i < offsets.length; i++) {
			out.putInt(28 + 4 * i, offsets[i]);
		}
		for (int i = 0; i < 8 && 2 * i + 2 <= source.length(); i++) {
			out.put(48 + i, (byte) Integer.parseInt(source.substring(2 * i, 2 * i + 2), 16));
		}
	}

	private static byte[] seal(ByteBuffer out) {
		byte[] bytes = out.array();
		out.putInt(60, crc(bytes, 60));
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			sha.update(bytes, 0, bytes.length - PackReader.TRAILER_BYTES);
			out.position(bytes.length - PackReader.TRAILER_BYTES);
			out.put(sha.digest());
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
		out.putInt(crc(bytes, bytes.length - 4));
		return Arrays.copyOf(bytes, bytes.length);
	}

	private static int crc(byte[] bytes, int length) {
		CRC32 crc = new CRC32();
		crc.update(bytes, 0, length);
		return (int) crc.getValue();
	}
}
