package org.cairnfield.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Text in any character set as bytes of UTF-8. */
final class Utf8 extends InputStream {

	private static final int CHARS = 1 << 14;

	private final Reader in;
	private final char[] chars = new char[CHARS];
	/** The first half of a pair whose second half is still to be read, or 0. */
	private char half;
	private byte[] ready = {};
	private int at;

	private Utf8(Reader in) {
		this.in = in;
	}

	/** Fails where bytes are no characters; text in UTF-8 passes as it is, see {@link #malformed}. */
	static InputStream of(InputStream in, Charset charset) {
		return charset.equals(StandardCharsets.UTF_8) ? in
				: new Utf8(new InputStreamReader(in, charset.newDecoder()
						.onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT)));
	}

	/** Where the first bytes stand that are no UTF-8, or the number of bytes where all are. */
	static int malformed(byte[] bytes) {
		int signs = 0;
		for (byte b : bytes) {
			signs |= b;
		}
		if (signs >= 0) {
			return bytes.length;
		}
		CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
		ByteBuffer left = ByteBuffer.wrap(bytes);
		CharBuffer text = CharBuffer.allocate(CHARS);
		CoderResult result;
		do {
			text.clear();
			result = decoder.decode(left, text, true);
		} while (result.isOverflow());
		return left.position();
	}

	@Override
	public int read() throws IOException {
		byte[] one = new byte[1];
		return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
	}

	@Override
	public int read(byte[] into, int from, int length) throws IOException {
		if (length == 0) {
			return 0;
		}
		while (at == ready.length) {
			if (!decode()) {
				return -1;
			}
		}
		int n = Math.min(length, ready.length - at);
		System.arraycopy(ready, at, into, from, n);
		at += n;
		return n;
	}

	private boolean decode() throws IOException {
		int kept = half == 0 ? 0 : 1;
		chars[0] = half;
		half = 0;
		int n = in.read(chars, kept, chars.length - kept);
		if (n < 0) {
			return false;
		}
		n += kept;
		if (Character.isHighSurrogate(chars[n - 1])) {
			half = chars[--n];
		}
		ready = new String(chars, 0, n).getBytes(StandardCharsets.UTF_8);
		at = 0;
		return true;
	}

	@Override
	public void close() throws IOException {
		in.close();
	}
}
