package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Positions from a device pack alone, of either version of the format. With {@link PackCheck} it depends on nothing but the
 * JDK and is written to be carried over to a microcontroller: whole numbers throughout, but for two divisions a centroid and
 * the weighted mean at the end. Not safe for use by several threads.
 */
public final class PackReader {

	/** An estimate: site by its place in the pack, floor level, metres in the floor's frame, access points that were known. */
	public record Position(int site, int floor, double xMetres, double yMetres, int known) {
	}

	static final int MAGIC = 0x4B504643; // "CFPK"
	/** Origins of 32 bits, one level. */
	static final int VERSION_1 = 1;
	/** Origins of 64 bits, one level or two. */
	static final int VERSION_2 = 2;
	static final int HEADER_BYTES = 64;
	static final int TRAILER_BYTES = 36;
	/** Flags. */
	static final int PSEUDONYMS = 1;
	static final int RELATIVE = 2;
	static final int WEIGHTED = 4;

	private final ByteBuffer pack;
	private final int lowestRssiDbm;
	private final int levelStepDb;
	private final int k;
	private final int parts;
	private final boolean relative;
	private final boolean weighted;
	private final int unitMm;
	private final long[] address;
	private final String[] siteName;
	private final long[] originXMm;
	private final long[] originYMm;
	/** Where the centroid of each group begins; none in one level. */
	private final int[] groupAt;
	private final int[] centroidAt;
	private final int cellTable;
	private final int[] query;
	private final Candidates groups;
	private final Candidates cells;
	private final int[] nearest;
	private final long[] distance;

	/**
	 * Checks the whole pack before anything is used.
	 *
	 * @throws IllegalArgumentException telling what is wrong with it
	 */
	public PackReader(byte[] bytes) {
		pack = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
		PackCheck.check(pack);
		relative = (pack.getShort(6) & RELATIVE) != 0;
		weighted = (pack.getShort(6) & WEIGHTED) != 0;
		int accessPoints = unsigned(16);
		int clusters = unsigned(18);
		lowestRssiDbm = pack.get(21);
		levelStepDb = pack.get(22);
		k = pack.get(23);
		parts = pack.get(25);
		unitMm = unsigned(26);
		siteName = new String[pack.get(20) & 0xFF];
		originXMm = new long[siteName.length];
		originYMm = new long[siteName.length];
		readSites(bytes, pack.getInt(28));
		address = new long[accessPoints];
		for (int a = 0; a < accessPoints; a++) {
			address[a] = pack.getLong(pack.getInt(32) + 8 * a);
		}
		centroidAt = new int[clusters];
		for (int c = 0, at = pack.getInt(36); c < clusters; c++) {
			centroidAt[c] = at;
			at = entriesEnd(at);
		}
		int twoLevels = pack.getInt(56);
		groupAt = new int[twoLevels == 0 ? 0 : unsigned(twoLevels)];
		for (int g = 0, at = twoLevels + 4; g < groupAt.length; g++) {
			groupAt[g] = at;
			at = entriesEnd(at);
			at += 2 + 2 * unsigned(at);
		}
		groups = new Candidates(groupAt.length == 0 ? 0 : Math.min(pack.get(twoLevels + 2), groupAt.length));
		cells = new Candidates(Math.min(pack.get(24), clusters));
		cellTable = pack.getInt(40);
		query = new int[accessPoints];
		nearest = new int[k];
		distance = new long[k];
	}

	private void readSites(byte[] bytes, int from) {
		int at = from;
		int origin = originBytes(unsigned(4));
		for (int s = 0; s < siteName.length; s++) {
			originXMm[s] = origin == 4 ? pack.getInt(at) : pack.getLong(at);
			originYMm[s] = origin == 4 ? pack.getInt(at + origin) : pack.getLong(at + origin);
			at += 2 * origin;
			int length = pack.get(at) & 0xFF;
			siteName[s] = new String(bytes, at + 1, length, StandardCharsets.UTF_8);
			at += 1 + length;
		}
	}

	/** Bytes of each of the two numbers of an origin. */
	static int originBytes(int version) {
		return version == VERSION_1 ? 4 : 8;
	}

	private int unsigned(int at) {
		return pack.getShort(at) & 0xFFFF;
	}

	/** Behind the centroid that begins somewhere. */
	private int entriesEnd(int centroid) {
		return centroid + 6 + 4 * unsigned(centroid);
	}

	/** Names of the sites, in the pack's order. */
	public String[] sites() {
		return siteName.clone();
	}

	/** Whether addresses are pseudonyms: a device then needs the key to make them from what it hears. */
	public boolean pseudonyms() {
		return (pack.getShort(6) & PSEUDONYMS) != 0;
	}

	/**
	 * Estimates a position.
	 *
	 * @param addresses of what is heard: the six octets in the upper 48 bits, or a pseudonym; unknown ones are passed over
	 * @param rssiDbm   as many levels
	 */
	public Position locate(long[] addresses, int[] rssiDbm) {
		Arrays.fill(query, 0);
		int known = 0;
		int magnitude = 0;
		for (int i = 0; i < addresses.length; i++) {
			int a = indexOf(addresses[i]);
			int code = code(rssiDbm[i], lowestRssiDbm, levelStepDb);
			if (a >= 0 && code > 0 && query[a] == 0) {
				query[a] = value(code);
				magnitude += query[a];
				known++;
			}
		}
		findCells(magnitude);
		int found = 0;
		for (int i = 0; i < cells.size; i++) {
			found = search(cells.index[i], magnitude, found);
		}
		return vote(search(centroidAt.length, magnitude, found), known);
	}

	/** What a level is written as: whole steps above the lowest, from 1; 0 or less: too faint. */
	static int code(int rssiDbm, int lowestRssiDbm, int levelStepDb) {
		int most = Math.floorDiv(-lowestRssiDbm, levelStepDb) + 1;
		return Math.min(most, Math.floorDiv(rssiDbm - lowestRssiDbm + levelStepDb / 2, levelStepDb) + 1);
	}

	private int value(int code) {
		return (code - 1) * levelStepDb + 1;
	}

	private int indexOf(long wanted) {
		int low = 0;
		int high = address.length - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int order = Long.compareUnsigned(address[middle], wanted);
			if (order == 0) {
				return middle;
			} else if (order < 0) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return -1;
	}

	/** Of all cells in one level, of those in the nearest groups in two. */
	private void findCells(int magnitude) {
		cells.size = 0;
		if (groupAt.length == 0) {
			for (int c = 0; c < centroidAt.length; c++) {
				cells.offer(c, coarse(centroidAt[c], magnitude));
			}
			return;
		}
		groups.size = 0;
		for (int g = 0; g < groupAt.length; g++) {
			groups.offer(g, coarse(groupAt[g], magnitude));
		}
		for (int i = 0; i < groups.size; i++) {
			int list = entriesEnd(groupAt[groups.index[i]]);
			for (int n = unsigned(list), at = list + 2; n > 0; n--, at += 2) {
				int cell = unsigned(at);
				cells.offer(cell, coarse(centroidAt[cell], magnitude));
			}
		}
	}

	private double coarse(int at, int magnitude) {
		long both = (long) magnitude * parts + (pack.getInt(at + 2) & 0xFFFFFFFFL);
		long overlap = 0;
		for (int i = 0, n = unsigned(at); i < n; i++) {
			overlap += Math.min(query[unsigned(at + 6 + 4 * i)] * parts, unsigned(at + 8 + 4 * i));
		}
		double d = (double) (both - 2 * overlap) / parts;
		return relative && both > 0 ? d / ((double) both / parts) : d;
	}

	private int search(int cell, int magnitude, int alreadyFound) {
		int size = alreadyFound;
		int at = pack.getInt(cellTable + 8 * cell);
		for (int i = 0, n = pack.getInt(cellTable + 8 * cell + 4); i < n; i++) {
			int heard = unsigned(at + 10);
			int own = 0;
			int overlap = 0;
			for (int r = 0, entry = at + 12; r < heard; r++, entry += 3) {
				int v = value(pack.get(entry + 2) & 0xFF);
				own += v;
				overlap += Math.min(query[unsigned(entry)], v);
			}
			size = offer(at, magnitude + own - 2 * overlap, size);
			at += 12 + 3 * heard;
		}
		return size;
	}

	private int offer(int sampleAt, int d, int found) {
		int size = found;
		if (size == k) {
			if (!before(d, sampleAt, k - 1)) {
				return size;
			}
			size--;
		}
		int i = size;
		for (; i > 0 && before(d, sampleAt, i - 1); i--) {
			nearest[i] = nearest[i - 1];
			distance[i] = distance[i - 1];
		}
		nearest[i] = sampleAt;
		distance[i] = d;
		return size + 1;
	}

	private boolean before(long d, int sampleAt, int i) {
		return d < distance[i] || d == distance[i]
				&& Integer.compareUnsigned(pack.getInt(sampleAt), pack.getInt(nearest[i])) < 0;
	}

	private int place(int i) {
		return pack.getShort(nearest[i] + 4);
	}

	private Position vote(int voters, int known) {
		if (voters == 0) {
			return null;
		}
		int winner = -1;
		double most = 0;
		for (int i = 0; i < voters; i++) {
			double sum = 0;
			for (int j = 0; j < voters; j++) {
				sum += place(j) == place(i) ? weight(j) : 0;
			}
			if (winner < 0 || sum > most) {
				most = sum;
				winner = i;
			}
		}
		int site = place(winner) & 0xFF;
		double weights = 0;
		double x = 0;
		double y = 0;
		for (int i = 0; i < voters; i++) {
			if ((place(i) & 0xFF) == site) {
				weights += weight(i);
				x += weight(i) * metres(originXMm[site], unsigned(nearest[i] + 6));
				y += weight(i) * metres(originYMm[site], unsigned(nearest[i] + 8));
			}
		}
		return new Position(site, place(winner) >> 8, x / weights, y / weights, known);
	}

	private double weight(int i) {
		return weighted ? 1 / ((double) distance[i] + 1) : 1;
	}

	private double metres(long originMm, int units) {
		return metres(originMm, units, unitMm);
	}

	static double metres(long originMm, int units, int unitMm) {
		return (originMm + (long) units * unitMm) / 1000.0;
	}

	/** The nearest of what was offered, nearest first; of equals the one with the smaller number, whichever was offered first. */
	private static final class Candidates {
		final int[] index;
		final double[] distance;
		int size;

		Candidates(int most) {
			index = new int[most];
			distance = new double[most];
		}

		void offer(int candidate, double d) {
			if (size == index.length && !before(candidate, d, size - 1)) {
				return;
			}
			int i = size < index.length ? size++ : size - 1;
			for (; i > 0 && before(candidate, d, i - 1); i--) {
				index[i] = index[i - 1];
				distance[i] = distance[i - 1];
			}
			index[i] = candidate;
			distance[i] = d;
		}

		private boolean before(int candidate, double d, int i) {
			return d < distance[i] || d == distance[i] && candidate < index[i];
		}
	}
}
