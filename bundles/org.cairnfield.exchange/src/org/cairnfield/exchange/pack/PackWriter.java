package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.export.Pseudonyms;

/** Writes the bytes of a device pack, in the first version of the format that holds it: every reader knows that one. */
final class PackWriter {

	private static final int MOST_NAME_BYTES = 255;

	private final PackedMap packed;
	private final RadioMap map;
	private final SplitMap split;
	private final Search search;
	private final boolean hidden;
	private final int version;
	/** The number of each access point, by column of the pack. */
	private final long[] address;
	/** By access point of the map. */
	private final int[] column;

	/** @param pseudonyms in place of addresses, or null */
	PackWriter(PackedMap packed, SplitMap split, Search search, Pseudonyms pseudonyms) {
		this.packed = packed;
		this.split = split;
		this.search = search;
		map = packed.map();
		hidden = pseudonyms != null;
		version = packed.hasNearOrigins() && split.groups() == 0 ? PackReader.VERSION_1 : PackReader.VERSION_2;
		column = new int[map.accessPointCount()];
		address = addresses(pseudonyms);
	}

	/** Fills {@link #column} too: columns are in the order of the numbers. */
	private long[] addresses(Pseudonyms pseudonyms) {
		long[] number = new long[column.length];
		int[] held = packed.accessPoints();
		for (int a : held) {
			String name = map.accessPoints().get(a);
			number[a] = hidden ? PackAddresses.of(name, pseudonyms) : PackAddresses.of(name);
		}
		int[] sorted = IntStream.of(held).boxed().sorted(Comparator.comparing(a -> number[a], Long::compareUnsigned))
				.mapToInt(Integer::intValue).toArray();
		for (int i = 0; i < sorted.length; i++) {
			column[sorted[i]] = i;
			if (i > 0 && number[sorted[i]] == number[sorted[i - 1]]) {
				throw new IllegalArgumentException(
						"two access points have the number of " + map.accessPoints().get(sorted[i]));
			}
		}
		return IntStream.of(sorted).mapToLong(a -> number[a]).toArray();
	}

	/** @param source SHA-256 of the content that the pack was made from, in hexadecimal digits; may be empty */
	byte[] write(String source) {
		limit(Messages.PackWriter_accessPoints, address.length, 0xFFFF);
		limit("clusters", split.cells(), 0xFFFF);
		limit("sites", map.sites().size(), 0xFF);
		ByteBuffer out = ByteBuffer.allocate(size()).order(ByteOrder.LITTLE_ENDIAN);
		out.position(PackReader.HEADER_BYTES);
		begin(out, 28);
		writeSites(out);
		begin(out, 32);
		for (long a : address) {
			out.putLong(a);
		}
		begin(out, 36);
		for (int c = 0; c < split.cells(); c++) {
			writeCentroid(out, split.centroids(), c);
		}
		if (split.groups() > 0) {
			begin(out, 56);
			writeGroups(out);
		}
		begin(out, 40);
		writeSamples(out);
		writeHeader(out, source);
		return seal(out);
	}

	private static void limit(String what, int count, int most) {
		if (count > most) {
			throw new PackLimitException(Words.bind(Messages.PackWriter_aDevicePackHoldsAt, most, what, count));
		}
	}

	/** Writes in the header where a part begins. */
	private static void begin(ByteBuffer out, int headerAt) {
		out.putInt(headerAt, out.position());
	}

	private int size() {
		long size = PackReader.HEADER_BYTES + 8L * address.length + 8L * (split.cells() + 1) + PackReader.TRAILER_BYTES
				+ DevicePack.centroidBytes(split.centroids());
		for (String name : map.sites()) {
			size += 2 * PackReader.originBytes(version) + 1 + name(name).length;
		}
		if (split.groups() > 0) {
			size += 4 + DevicePack.centroidBytes(split.groupCentroids());
			for (int g = 0; g < split.groups(); g++) {
				size += DevicePack.listBytes(split, g);
			}
		}
		for (int cell = 0; cell <= split.cells(); cell++) {
			for (int s : split.members(cell)) {
				size += DevicePack.sampleBytes(map, s);
			}
		}
		if (size > Integer.MAX_VALUE) {
			throw new PackLimitException(Messages.PackWriter_aDevicePackEndsAt);
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
		List<String> names = map.sites();
		for (String site : names) {
			byte[] name = name(site);
			if (version == PackReader.VERSION_1) {
				out.putInt((int) packed.originXMm(site)).putInt((int) packed.originYMm(site));
			} else {
				out.putLong(packed.originXMm(site)).putLong(packed.originYMm(site));
			}
			out.put((byte) name.length).put(name);
		}
	}

	/**
	 * Entries in the order that they are written in: as the map has its access points or, where pseudonyms hide these, by
	 * column, since the order of addresses would show between which others an unknown one lies.
	 */
	private int[] inOrder(int from, int to, IntUnaryOperator columnOf) {
		IntStream entries = IntStream.range(from, to);
		return hidden
				? entries.boxed().sorted(Comparator.comparingInt(columnOf::applyAsInt)).mapToInt(Integer::intValue)
						.toArray()
				: entries.toArray();
	}

	private void writeCentroid(ByteBuffer out, Centroids centroids, int c) {
		out.putShort((short) (centroids.end(c) - centroids.start(c)));
		out.putInt((int) Math.round(centroids.magnitude(c) * DevicePack.CENTROID_PARTS));
		for (int e : inOrder(centroids.start(c), centroids.end(c), e -> column[centroids.column(e)])) {
			out.putShort((short) column[centroids.column(e)]);
			out.putShort((short) Math.round(centroids.value(e) * DevicePack.CENTROID_PARTS));
		}
	}

	private void writeGroups(ByteBuffer out) {
		out.putShort((short) split.groups()).put((byte) search.groupProbes()).put((byte) 0);
		for (int g = 0; g < split.groups(); g++) {
			writeCentroid(out, split.groupCentroids(), g);
			int[] cells = split.cellsOf(g);
			out.putShort((short) cells.length);
			for (int cell : cells) {
				out.putShort((short) cell);
			}
		}
	}

	private void writeSamples(ByteBuffer out) {
		int[] rank = split.ranks();
		int table = out.position();
		out.position(table + 8 * (split.cells() + 1));
		begin(out, 44);
		for (int cell = 0; cell <= split.cells(); cell++) {
			int[] members = split.members(cell);
			out.putInt(table + 8 * cell, out.position()).putInt(table + 8 * cell + 4, members.length);
			for (int s : members) {
				out.putInt(rank[s]).put((byte) map.site(s)).put((byte) map.floor(s));
				out.putShort((short) packed.unitsX(s)).putShort((short) packed.unitsY(s))
						.putShort((short) map.heard(s));
				for (int k : inOrder(map.firstReading(s), map.endReading(s), e -> column[map.accessPoint(e)])) {
					out.putShort((short) column[map.accessPoint(k)]).put((byte) packed.code(map.rssiDbm(k)));
				}
			}
		}
	}

	private void writeHeader(ByteBuffer out, String source) {
		int flags = (hidden ? PackReader.PSEUDONYMS : 0) | (search.relative() ? PackReader.RELATIVE : 0)
				| (search.voting().weighted() ? PackReader.WEIGHTED : 0);
		out.putInt(0, PackReader.MAGIC).putShort(4, (short) version).putShort(6, (short) flags);
		out.putInt(8, out.capacity()).putInt(12, split.samples()).putShort(16, (short) address.length);
		out.putShort(18, (short) split.cells()).put(20, (byte) map.sites().size());
		out.put(21, (byte) packed.lowestRssiDbm()).put(22, (byte) packed.levelStepDb());
		out.put(23, (byte) search.voting().k()).put(24, (byte) search.cellProbes()).put(25,
				(byte) DevicePack.CENTROID_PARTS);
		out.putShort(26, (short) packed.unitMm());
		for (int i = 0; i < 8 && 2 * i + 2 <= source.length(); i++) {
			out.put(48 + i, (byte) Integer.parseInt(source.substring(2 * i, 2 * i + 2), 16));
		}
	}

	private static byte[] seal(ByteBuffer out) {
		byte[] bytes = out.array();
		out.putInt(60, PackCheck.crc(bytes, 60));
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			sha.update(bytes, 0, bytes.length - PackReader.TRAILER_BYTES);
			out.position(bytes.length - PackReader.TRAILER_BYTES);
			out.put(sha.digest());
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
		out.putInt(PackCheck.crc(bytes, bytes.length - 4));
		return bytes;
	}
}
