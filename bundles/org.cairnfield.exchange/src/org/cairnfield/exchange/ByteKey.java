package org.cairnfield.exchange;

import java.util.Arrays;

/** Bytes of one or several fields to look something up by, without making texts of them. */
final class ByteKey {

	private byte[] bytes = new byte[128];
	private int length;

	/** Begins anew. */
	ByteKey clear() {
		length = 0;
		return this;
	}

	/** Appends a field, so that fields in a row stay apart. */
	ByteKey append(byte[] from, int begin, int end) {
		int n = end - begin;
		if (bytes.length < length + n + Integer.BYTES) {
			bytes = Arrays.copyOf(bytes, 2 * (length + n + Integer.BYTES));
		}
		for (int shift = 0; shift < Integer.SIZE; shift += Byte.SIZE) {
			bytes[length++] = (byte) (n >> shift);
		}
		System.arraycopy(from, begin, bytes, length, n);
		length += n;
		return this;
	}

	/** A key of its own that stays as it is. */
	ByteKey copy() {
		ByteKey copy = new ByteKey();
		copy.bytes = Arrays.copyOf(bytes, length);
		copy.length = length;
		return copy;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof ByteKey key && Arrays.equals(bytes, 0, length, key.bytes, 0, key.length);
	}

	@Override
	public int hashCode() {
		int hash = 1;
		for (int i = 0; i < length; i++) {
			hash = 31 * hash + bytes[i];
		}
		return hash;
	}
}
