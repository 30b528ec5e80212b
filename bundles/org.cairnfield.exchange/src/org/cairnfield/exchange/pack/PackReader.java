package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Positions from a device pack alone. It depends on nothing but the JDK and is written to be carried over to a
 * microcontroller: whole numbers throughout, but for two divisions a candidate cell and the weighted mean at the end.
 * Not safe for use by several threads.
 */
public final class PackReader {

	/** An estimate: site by its place in the pack, floor level, metres in the floor's frame, access points that were known. */
	public record Position(int site, int floor, double xMetres, double yMetres, int known) {
	}

	static final int MAGIC = 0x4B504643; // "CFPK"
	/** Version of the format whose origins have 32 bits. */
	static final int NEAR_ORIGINS = 1;
	/** Version of the format whose origins have 64 bits; nothing else differs. */
	static final int FAR_ORIGINS = 2;
	static final int HEADER_BYTES = 64;
	static final int TRAILER_BYTES = 36;

	private final ByteBuffer pack;
	private final int lowestRssiDbm;
	private final int levelStepDb;
	private final int k;
	private final int cellProbes;
	private final int parts;
	private final boolean relative;
	private final boolean weighted;
	private final int unitMm;
	private final long[] address;
	private final String[] siteName;
	private final long[] originXMm;
	private final long[] originYMm;
	private final int[] centroidAt;
	private final int cellTable;
	private final int[] query;
	private final int[] nearest;
	private final long[] distance;

	/**
	 * Checks the whole pack before anything is used.
	 *
	 * @throws IllegalArgumentException telling what is wrong with it
	 */
	public PackReader(byte[] bytes) {
		pack = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
		check(bytes);
		int flags = pack.getShort(6);
		relative = (flags & 2) != 0;
		weighted = (flags & 4) != 0;
		int accessPoints = unsigned(16);
		int clusters = unsigned(18);
		lowestRssiDbm = pack.get(21);
		levelStepDb = pack.get(22);
		k = pack.get(23);
		cellProbes = pack.get(24);
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
			at += 6 + 4 * unsigned(at);
		}
		cellTable = pack.getInt(40);
		query = new int[accessPoints];
		nearest = new int[k];
		distance = new long[k];
	}

	private void check(byte[] bytes) {
		if (bytes.length < HEADER_BYTES + TRAILER_BYTES || pack.getInt(0) != MAGIC) {
			throw new IllegalArgumentException("this is no device pack");
		}
		if (unsigned(4) != NEAR_ORIGINS && unsigned(4) != FAR_ORIGINS) {
			throw new IllegalArgumentException("version " + unsigned(4) + " of the format is not known here");
		}
		if (pack.getInt(8) != bytes.length) {
			throw new IllegalArgumentException("the pack has " + bytes.length + " bytes and not the " + pack.getInt(8) + " it names");
		}
		if (crc(bytes, 60) != pack.getInt(60) || crc(bytes, bytes.length - 4) != pack.getInt(bytes.length - 4)) {
			throw new IllegalArgumentException("the pack does not match its CRC-32");
		}
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			sha.update(bytes, 0, bytes.length - TRAILER_BYTES);
			if (!Arrays.equals(sha.digest(), Arrays.copyOfRange(bytes, bytes.length - TRAILER_BYTES, bytes.length - 4))) {
				throw new IllegalArgumentException("the pack does not match its SHA-256");
			}
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	private static int crc(byte[] bytes, int length) {
		CRC32 crc = new CRC32();
		crc.update(bytes, 0, length);
		return (int) crc.getValue();
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
		return version == NEAR_ORIGINS ? 4 : 8;
	}

	private int unsigned(int at) {
		return pack.getShort(at) & 0xFFFF;
	}

	/** Names of the sites, in the pack's order. */
	public String[] sites() {
		return siteName.clone();
	}

	/** Whether addresses are pseudonyms: a device then needs the key to make them from what it hears. */
	public boolean pseudonyms() {
		return (pack.getShort(6) & 1) != 0;
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
		int found = 0;
		for (int cell : nearestCells(magnitude)) {
			found = search(cell, magnitude, found);
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

	/** The cells whose centroids are nearest, nearest first, of equals the earlier one. */
	private int[] nearestCells(int magnitude) {
		int[] best = new int[Math.min(cellProbes, centroidAt.length)];
		double[] at = new double[best.length];
		int size = 0;
		for (int c = 0; c < centroidAt.length; c++) {
			double d = coarse(c, magnitude);
			if (size == best.length && !(d < at[size - 1])) {
				continue;
			}
			int i = size < best.length ? size++ : size - 1;
			for (; i > 0 && d < at[i - 1]; i--) {
				best[i] = best[i - 1];
				at[i] = at[i - 1];
			}
			best[i] = c;
			at[i] = d;
		}
		return Arrays.copyOf(best, size);
	}

	private double coarse(int centroid, int magnitude) {
		int at = centroidAt[centroid];
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
}
