package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;

import org.cairnfield.model.values.Sha256;

/** Counts and digests what passes through. Closing it leaves the other end open. */
final class CountedOutput extends OutputStream {

	final MessageDigest digest = Sha256.begin();
	long size;
	private final OutputStream out;

	CountedOutput(OutputStream out) {
		this.out = out;
	}

	@Override
	public void write(int b) throws IOException {
		write(new byte[] { (byte) b }, 0, 1);
	}

	@Override
	public void write(byte[] bytes, int from, int length) throws IOException {
		out.write(bytes, from, length);
		digest.update(bytes, from, length);
		size += length;
	}
}
