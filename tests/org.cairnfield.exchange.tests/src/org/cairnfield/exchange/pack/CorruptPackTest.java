package org.cairnfield.exchange.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no sound pack is refused, and nothing worse happens: no other exception, no endless loop, no lookup that fails. */
@Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class CorruptPackTest {

	private static final RadioMap MAP = map();

	private enum Kind {
		VERSION_1("cells 2 relative k 3 weighted", 0), FAR("cells 2 relative k 3 weighted", 4_860_000),
		TWO_LEVELS("groups 2 cells 2 relative k 3 weighted", 0);

		final String search;
		final double y;

		Kind(String search, double y) {
			this.search = search;
			this.y = y;
		}

		byte[] bytes() {
			return Packing.pack(Packing.shifted(MAP, 0, y), new int[] { 0, 1, 2, 3, 4, 0, 1, -1 }, true, 1,
					Search.parse(search)).bytes(null, "ab");
		}
	}

	private static RadioMap map() {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < 8; s++) {
			builder.sample(s < 4 ? "Quay" : "Loft", s % 3, s, 2 * s).reading("ap " + s % 5, -60 - s)
					.reading("ap " + (s + 1) % 5, -80 + s);
		}
		return builder.build();
	}

	private static void locateAll(PackReader reader) {
		for (int s = 0; s < MAP.size(); s++) {
			Packing.locate(reader, MAP, s, PackAddresses::of);
		}
		reader.locate(new long[0], new int[0]);
	}

	@ParameterizedTest
	@EnumSource
	void isRefusedWithAnyByteOfItChangedOrCut(Kind kind) {
		byte[] bytes = kind.bytes();
		for (int at = 0; at < bytes.length; at++) {
			byte[] changed = bytes.clone();
			changed[at] ^= (byte) (1 << at % 8);
			assertThrows(IllegalArgumentException.class, () -> new PackReader(changed), "byte " + at);
			byte[] cut = Arrays.copyOf(bytes, at);
			assertThrows(IllegalArgumentException.class, () -> new PackReader(cut), "cut at " + at);
		}
	}

	/** Whether it was refused; anything but an answer or a refusal fails the test. */
	private static boolean refused(byte[] forged, String what) {
		PackReader reader;
		try {
			reader = new PackReader(Packing.sealed(forged));
		} catch (IllegalArgumentException e) {
			assertTrue(e.getMessage() != null && !e.getMessage().contains("match its"), what + ": " + e.getMessage());
			return true;
		} catch (RuntimeException | Error e) {
			throw new AssertionError(what, e);
		}
		try {
			locateAll(reader);
			return false;
		} catch (RuntimeException | Error e) {
			throw new AssertionError(what, e);
		}
	}

	@ParameterizedTest
	@EnumSource
	void isRefusedOrHarmlessWithForgedChecksums(Kind kind) {
		byte[] bytes = kind.bytes();
		locateAll(new PackReader(Packing.sealed(bytes.clone())));
		int refused = 0;
		int all = 0;
		for (int at = 0; at < bytes.length - PackReader.TRAILER_BYTES; at++) {
			for (int value : new int[] { 0, 1, 0x7F, 0x80, 0xFF, bytes[at] + 1, bytes[at] - 1, bytes[at] ^ 0x10 }) {
				byte[] forged = bytes.clone();
				forged[at] = (byte) value;
				refused += refused(forged, "byte " + at + " as " + value) ? 1 : 0;
				all++;
			}
		}
		assertTrue(refused > all / 3 && refused < all, refused + " of " + all);
	}

	@ParameterizedTest
	@EnumSource
	void isRefusedOrHarmlessWithSeveralNumbersForged(Kind kind) {
		byte[] bytes = kind.bytes();
		SplittableRandom random = new SplittableRandom(7);
		int refused = 0;
		for (int i = 0; i < 20_000; i++) {
			byte[] forged = bytes.clone();
			for (int n = 1 + random.nextInt(3); n > 0; n--) {
				int at = random.nextInt(8, bytes.length - PackReader.TRAILER_BYTES - 4);
				int value = switch (random.nextInt(4)) {
				case 0 -> random.nextInt();
				case 1 -> random.nextInt(bytes.length);
				case 2 -> -1 >>> random.nextInt(32);
				default -> Packing.read(bytes).getInt(random.nextInt(bytes.length - 4));
				};
				if (random.nextBoolean()) {
					Packing.read(forged).putInt(at, value);
				} else {
					Packing.read(forged).putShort(at, (short) value);
				}
			}
			refused += refused(forged, "round " + i) ? 1 : 0;
		}
		assertTrue(refused > 15_000, refused + " refused");
	}

	private record Lie(String name, Kind kind, Consumer<ByteBuffer> told) {
		@Override
		public String toString() {
			return name;
		}
	}

	/** Where the first group's list of cells begins. */
	private static int list(ByteBuffer in) {
		int group = in.getInt(56) + 4;
		return group + 6 + 4 * in.getShort(group);
	}

	private static Stream<Lie> lies() {
		Kind two = Kind.TWO_LEVELS;
		return Stream.of(new Lie("no group", two, in -> in.putShort(in.getInt(56), (short) 0)),
				new Lie("a group more", two,
						in -> in.putShort(in.getInt(56), (short) (in.getShort(in.getInt(56)) + 1))),
				new Lie("65,535 groups", two, in -> in.putShort(in.getInt(56), (short) 0xFFFF)),
				new Lie("no group entered", two, in -> in.put(in.getInt(56) + 2, (byte) 0)),
				new Lie("101 groups entered", two, in -> in.put(in.getInt(56) + 2, (byte) 101)),
				new Lie("255 groups entered", two, in -> in.put(in.getInt(56) + 2, (byte) 255)),
				new Lie("65,535 entries of a group", two, in -> in.putShort(in.getInt(56) + 4, (short) 0xFFFF)),
				new Lie("another sum of a group", two, in -> in.putInt(in.getInt(56) + 6, -1)),
				new Lie("a column of a group beyond all", two, in -> in.putShort(in.getInt(56) + 10, (short) 5)),
				new Lie("65,535 cells of a group", two, in -> in.putShort(list(in), (short) 0xFFFF)),
				new Lie("a cell of a group beyond all", two, in -> in.putShort(list(in) + 2, (short) 5)),
				new Lie("a cell of a group far beyond all", two, in -> in.putShort(list(in) + 2, (short) 0xFFFF)),
				new Lie("a cell in two groups", two, in -> in.putShort(in.getInt(40) - 2, in.getShort(list(in) + 2))),
				new Lie("groups of nothing", two, in -> in.putInt(56, 0)),
				new Lie("groups in the header", two, in -> in.putInt(56, 8)),
				new Lie("groups behind the end", two, in -> in.putInt(56, in.capacity())),
				new Lie("groups before the beginning", two, in -> in.putInt(56, -4)),
				new Lie("groups where the centroids are", two, in -> in.putInt(56, in.getInt(36))),
				new Lie("two levels in version 1", two, in -> in.putShort(4, (short) 1)),
				new Lie("groups in version 1", Kind.VERSION_1, in -> in.putInt(56, in.getInt(40))),
				new Lie("version 1 as version 2", Kind.VERSION_1, in -> in.putShort(4, (short) 2)),
				new Lie("version 2 as version 1", Kind.FAR, in -> in.putShort(4, (short) 1)),
				new Lie("version 3", Kind.FAR, in -> in.putShort(4, (short) 3)),
				new Lie("an origin beyond all", Kind.FAR, in -> in.putLong(64, Long.MIN_VALUE)),
				new Lie("four thousand million samples", two, in -> in.putInt(in.getInt(40) + 4, -1)),
				new Lie("another number of samples", two, in -> in.putInt(12, 7)),
				new Lie("a cell of other samples", two, in -> in.putInt(in.getInt(40) + 8, in.getInt(in.getInt(40)))),
				new Lie("a sample at a third site", two, in -> in.put(in.getInt(44) + 4, (byte) 2)),
				new Lie("65,535 readings", two, in -> in.putShort(in.getInt(44) + 10, (short) 0xFFFF)),
				new Lie("a column of a sample twice", two,
						in -> in.putShort(in.getInt(44) + 15, in.getShort(in.getInt(44) + 12))),
				new Lie("a code of 0", two, in -> in.put(in.getInt(44) + 14, (byte) 0)),
				new Lie("a code above 0 dBm", two, in -> in.put(in.getInt(44) + 14, (byte) 255)),
				new Lie("addresses that descend", two, in -> in.putLong(in.getInt(32), -1)),
				new Lie("no voter", two, in -> in.put(23, (byte) 0)),
				new Lie("101 voters", two, in -> in.put(23, (byte) 101)),
				new Lie("no cell searched", two, in -> in.put(24, (byte) 0)),
				new Lie("steps of 0 dB", two, in -> in.put(22, (byte) 0)),
				new Lie("no parts", two, in -> in.put(25, (byte) 0)),
				new Lie("a unit of 9 mm", two, in -> in.putShort(26, (short) 9)),
				new Lie("lowest level above 0 dBm", two, in -> in.put(21, (byte) 1)));
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("lies")
	void isRefusedWhereItLies(Lie lie) {
		byte[] bytes = lie.kind.bytes();
		lie.told.accept(Packing.read(bytes));
		assertTrue(refused(bytes, lie.name));
	}

	@Test
	void hasGroupsToLieAbout() {
		assertEquals(2, Packing.pack(MAP, new int[] { 0, 1, 2, 3, 4, 0, 1, -1 }, Search.parse(Kind.TWO_LEVELS.search))
				.split().groups());
	}
}
