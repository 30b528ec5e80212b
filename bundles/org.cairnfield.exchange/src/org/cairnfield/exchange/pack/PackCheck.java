package org.cairnfield.exchange.pack;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.zip.CRC32;

import org.cairnfield.core.text.Words;

/**
 * Refuses what is no sound device pack. Afterwards every offset, count, column and cell in it leads where it should, even if
 * somebody who means harm made it: the checksums only show accidents. Belongs to {@link PackReader} and, like it, depends on
 * nothing but the JDK.
 */
final class PackCheck {

	private static final long FARTHEST_MM = 10_000_000_000_000L;

	private final ByteBuffer pack;
	private final int end;
	private final int accessPoints;
	private final int clusters;
	private final int sites;
	/** By column: the last list that named it. */
	private final int[] inList;
	private int list;
	/** The walk goes through the pack once, from part to part. */
	private int at = PackReader.HEADER_BYTES;

	private PackCheck(ByteBuffer pack) {
		this.pack = pack;
		end = pack.capacity() - PackReader.TRAILER_BYTES;
		accessPoints = unsigned(16);
		clusters = unsigned(18);
		sites = pack.get(20) & 0xFF;
		inList = new int[accessPoints];
	}

	/**
	 * @param pack little-endian, over the whole of an array
	 * @throws IllegalArgumentException telling what is wrong with it
	 */
	static void check(ByteBuffer pack) {
		checksums(pack, pack.array());
		new PackCheck(pack).walk();
	}

	private static void checksums(ByteBuffer pack, byte[] bytes) {
		if (bytes.length < PackReader.HEADER_BYTES + PackReader.TRAILER_BYTES || pack.getInt(0) != PackReader.MAGIC) {
			throw new IllegalArgumentException("this is no device pack");
		}
		int version = pack.getShort(4) & 0xFFFF;
		if (version != PackReader.VERSION_1 && version != PackReader.VERSION_2) {
			throw new IllegalArgumentException("version " + version + " of the format is not known here");
		}
		if (pack.getInt(8) != bytes.length) {
			throw new IllegalArgumentException("the pack has " + bytes.length + " bytes and not the "
					+ Integer.toUnsignedString(pack.getInt(8)) + " it names");
		}
		if (crc(bytes, 60) != pack.getInt(60) || crc(bytes, bytes.length - 4) != pack.getInt(bytes.length - 4)) {
			throw new IllegalArgumentException("the pack does not match its CRC-32");
		}
		try {
			MessageDigest sha = MessageDigest.getInstance("SHA-256");
			sha.update(bytes, 0, bytes.length - PackReader.TRAILER_BYTES);
			if (!Arrays.equals(sha.digest(),
					Arrays.copyOfRange(bytes, bytes.length - PackReader.TRAILER_BYTES, bytes.length - 4))) {
				throw new IllegalArgumentException("the pack does not match its SHA-256");
			}
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	static int crc(byte[] bytes, int length) {
		CRC32 crc = new CRC32();
		crc.update(bytes, 0, length);
		return (int) crc.getValue();
	}

	private void walk() {
		settings();
		begins(28, "sites");
		for (int s = 0; s < sites; s++) {
			site(PackReader.originBytes(unsigned(4)));
		}
		begins(32, Messages.PackCheck_accessPoints);
		addresses();
		begins(36, "centroids");
		for (int c = 0; c < clusters; c++) {
			centroid();
		}
		groups();
		begins(40, "clusters");
		int table = take(8L * (clusters + 1));
		begins(44, "samples");
		samples(table);
		require(at == end, Messages.PackCheck_somethingFollowsTheSamples);
	}

	private void settings() {
		require(pack.get(21) >= -120 && pack.get(21) <= 0, Messages.PackCheck_theLowestLevelIsNot);
		within(Messages.PackCheck_stepOfLevels, pack.get(22), 16);
		within(Messages.PackCheck_numberOfVoters, pack.get(23), 100);
		within(Messages.PackCheck_numberOfClustersSearched, pack.get(24), 100);
		within(Messages.PackCheck_numberOfPartsThatCentroids, pack.get(25), 16);
		require(unsigned(26) >= 10, Messages.PackCheck_theUnitOfPositionsIs);
	}

	private static void within(String what, int value, int most) {
		if (value < 1 || value > most) {
			throw unsound(Words.bind(Messages.PackCheck_isNot1To, what, value, most));
		}
	}

	private void site(int originBytes) {
		int from = take(2L * originBytes + 1);
		for (int i = 0; i < 2; i++) {
			long mm = originBytes == 4 ? pack.getInt(from + 4 * i) : pack.getLong(from + 8 * i);
			require(mm >= -FARTHEST_MM && mm <= FARTHEST_MM, Messages.PackCheck_anOriginIsTooFar);
		}
		take(pack.get(at - 1) & 0xFF);
	}

	private void addresses() {
		int from = take(8L * accessPoints);
		for (int a = 1; a < accessPoints; a++) {
			require(Long.compareUnsigned(pack.getLong(from + 8 * (a - 1)), pack.getLong(from + 8 * a)) < 0,
					Messages.PackCheck_accessPointsDoNotAscend);
		}
	}

	private void centroid() {
		int from = take(6);
		int entries = unsigned(from);
		take(4L * entries);
		list++;
		long sum = 0;
		for (int i = 0; i < entries; i++) {
			column(unsigned(from + 6 + 4 * i));
			sum += unsigned(from + 8 + 4 * i);
		}
		require(sum == (pack.getInt(from + 2) & 0xFFFFFFFFL), Messages.PackCheck_sumOfACentroidIs);
	}

	private void column(int column) {
		require(column < accessPoints && inList[column] != list, Messages.PackCheck_aListHasAColumn);
		inList[column] = list;
	}

	private void groups() {
		if (pack.getInt(56) == 0) {
			return;
		}
		require(unsigned(4) != PackReader.VERSION_1, Messages.PackCheck_groupsInVersion1);
		begins(56, "groups");
		int from = take(4);
		within(Messages.PackCheck_numberOfGroupsEntered, pack.get(from + 2), 100);
		require(unsigned(from) > 0, Messages.PackCheck_noGroup);
		boolean[] grouped = new boolean[clusters];
		int count = 0;
		for (int g = 0; g < unsigned(from); g++) {
			centroid();
			int cells = unsigned(take(2));
			int first = take(2L * cells);
			for (int i = 0; i < cells; i++) {
				int cell = unsigned(first + 2 * i);
				require(cell < clusters && !grouped[cell],
						Messages.PackCheck_aGroupHasACluster);
				grouped[cell] = true;
				count++;
			}
		}
		require(count == clusters, Messages.PackCheck_aClusterIsInNo);
	}

	private void samples(int table) {
		long all = 0;
		int mostCode = -pack.get(21) / pack.get(22) + 1;
		for (int cell = 0; cell <= clusters; cell++) {
			require(pack.getInt(table + 8 * cell) == at, Messages.PackCheck_aClusterDoesNotBegin);
			long members = pack.getInt(table + 8 * cell + 4) & 0xFFFFFFFFL;
			for (long i = 0; i < members; i++) {
				sample(mostCode);
			}
			all += members;
		}
		require(all == (pack.getInt(12) & 0xFFFFFFFFL), Messages.PackCheck_theClustersHaveAnotherNumber);
	}

	private void sample(int mostCode) {
		int from = take(12);
		int heard = unsigned(from + 10);
		take(3L * heard);
		require((pack.get(from + 4) & 0xFF) < sites, Messages.PackCheck_aSampleIsAtNo);
		list++;
		for (int i = 0; i < heard; i++) {
			column(unsigned(from + 12 + 3 * i));
			within(Messages.PackCheck_codeOfALevel, pack.get(from + 14 + 3 * i) & 0xFF, mostCode);
		}
	}

	private void begins(int headerAt, String part) {
		if (pack.getInt(headerAt) != at) {
			throw unsound(Words.bind(Messages.PackCheck_doNotBeginWhereThe, part));
		}
	}

	/** Goes on by some bytes, and gives where they begin. */
	private int take(long bytes) {
		require(bytes <= end - at, Messages.PackCheck_itEndsTooEarly);
		int from = at;
		at += (int) bytes;
		return from;
	}

	private int unsigned(int from) {
		return pack.getShort(from) & 0xFFFF;
	}

	private static void require(boolean sound, String what) {
		if (!sound) {
			throw unsound(what);
		}
	}

	private static IllegalArgumentException unsound(String what) {
		return new IllegalArgumentException("the pack is not made as its format says: " + what);
	}
}
