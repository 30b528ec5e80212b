package org.cairnfield.archive.internal.text;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.values.Readings;
import org.cairnfield.model.values.SampleTableBuilder;

/** Reads {@code ap:rssi ap:rssi …}. Finds the index of an access point by its bytes, without making a text of them. */
final class AccessPointBytes {

	private final SampleTableBuilder builder;
	/** Slots of a hash table: index of the access point, the same as in the builder, or −1. */
	private int[] slots = new int[1024];
	private byte[][] names = new byte[512][];
	private int size;
	private int[] read = new int[64];

	AccessPointBytes(SampleTableBuilder builder) {
		this.builder = builder;
		Arrays.fill(slots, -1);
	}

	/**
	 * The readings in a field.
	 *
	 * @return index and level in turn, ended by −1; valid until the next call
	 */
	int[] read(LineReader line, int field, String nothing) throws Unreadable {
		int count = 0;
		byte[] bytes = line.bytes();
		int at = line.is(field, nothing) ? line.end(field) : line.start(field);
		int end = line.end(field);
		if (at == end && !line.is(field, nothing)) {
			throw new Unreadable(Words.bind(Messages.AccessPointBytes_hasNoReadingsNotEven, nothing));
		}
		while (at < end) {
			int colon = at;
			while (colon < end && bytes[colon] != ':' && bytes[colon] != ' ') {
				colon++;
			}
			if (colon == at || colon == end || bytes[colon] == ' ') {
				throw noReading(bytes, at, end);
			}
			int stop = colon + 1;
			boolean negative = stop < end && bytes[stop] == '-';
			stop += negative ? 1 : 0;
			int level = 0;
			int digits = 0;
			for (; stop < end && bytes[stop] != ' '; stop++, digits++) {
				int digit = bytes[stop] - '0';
				if (digit < 0 || digit > 9 || digits == 3) {
					throw noReading(bytes, at, end);
				}
				level = level * 10 + digit;
			}
			level = negative ? -level : level;
			if (digits == 0 || level < Readings.LOWEST_RSSI_DBM || level > Readings.HIGHEST_RSSI_DBM) {
				throw noReading(bytes, at, end);
			}
			if (count + 2 >= read.length) {
				read = Arrays.copyOf(read, 2 * read.length);
			}
			read[count++] = index(bytes, at, colon);
			read[count++] = level;
			at = stop + 1;
			if (at == end) {
				throw new Unreadable(Messages.AccessPointBytes_endsWithABlank);
			}
		}
		read[count] = -1;
		checkOnce(count);
		return read;
	}

	/** In a file that was not edited access points ascend, so that neighbours differ and the loop ends at once. */
	private void checkOnce(int count) throws Unreadable {
		boolean ascending = true;
		for (int k = 2; ascending && k < count; k += 2) {
			ascending = Arrays.compareUnsigned(names[read[k - 2]], names[read[k]]) < 0;
		}
		if (ascending) {
			return;
		}
		int[] sorted = new int[count / 2];
		for (int k = 0; k < sorted.length; k++) {
			sorted[k] = read[2 * k];
		}
		Arrays.sort(sorted);
		for (int k = 1; k < sorted.length; k++) {
			if (sorted[k] == sorted[k - 1]) {
				throw new Unreadable(Messages.AccessPointBytes_twoReadingsOfOneAccess);
			}
		}
	}

	private static Unreadable noReading(byte[] bytes, int at, int end) {
		String shown = new String(bytes, at, Math.min(end - at, 30), StandardCharsets.UTF_8);
		return new Unreadable(
				Words.bind(Messages.AccessPointBytes_aReadingIsAccessPoint, shown.replaceAll("\\p{Cntrl}", "?")));
	}

	private int index(byte[] bytes, int from, int to) throws Unreadable {
		int hash = 0;
		for (int i = from; i < to; i++) {
			hash = hash * 31 + bytes[i];
		}
		int slot = spread(hash) & slots.length - 1;
		while (slots[slot] >= 0) {
			byte[] name = names[slots[slot]];
			if (Arrays.equals(name, 0, name.length, bytes, from, to)) {
				return slots[slot];
			}
			slot = slot + 1 & slots.length - 1;
		}
		return add(slot, Arrays.copyOfRange(bytes, from, to));
	}

	private static int spread(int hash) {
		int mixed = hash * 0x9e3779b9;
		return mixed ^ mixed >>> 15;
	}

	private int add(int slot, byte[] name) throws Unreadable {
		String text = LineReader.text(name, 0, name.length);
		if (text == null) {
			throw new Unreadable(Messages.AccessPointBytes_notInUtf8);
		}
		int index = builder.accessPoint(text);
		if (index != size) {
			throw new IllegalStateException("the builder had access points before");
		}
		if (size == names.length) {
			names = Arrays.copyOf(names, 2 * size);
		}
		names[size] = name;
		slots[slot] = size++;
		if (2 * size > slots.length) {
			rehash();
		}
		return index;
	}

	private void rehash() {
		slots = new int[2 * slots.length];
		Arrays.fill(slots, -1);
		for (int i = 0; i < size; i++) {
			int hash = 0;
			for (byte b : names[i]) {
				hash = hash * 31 + b;
			}
			int slot = spread(hash) & slots.length - 1;
			while (slots[slot] >= 0) {
				slot = slot + 1 & slots.length - 1;
			}
			slots[slot] = i;
		}
	}
}
