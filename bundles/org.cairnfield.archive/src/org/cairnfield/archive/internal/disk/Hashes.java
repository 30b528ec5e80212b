package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) of what is written or read. */
public final class Hashes {

	private Hashes() {
	}

	/** A fresh SHA-256. */
	public static MessageDigest sha256() {
		try {
			return MessageDigest.getInstance("SHA-256");
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	/** 64 hexadecimal digits, lower case. */
	public static String hex(MessageDigest digest) {
		return HexFormat.of().formatHex(digest.digest());
	}

	/** Of a file, in hexadecimal digits. */
	static String ofFile(Path file) throws IOException {
		MessageDigest digest = sha256();
		try (InputStream in = Files.newInputStream(file)) {
			byte[] buffer = new byte[1 << 16];
			for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
				digest.update(buffer, 0, n);
			}
		}
		return hex(digest);
	}

	/** Counts and digests what passes through. Closing it leaves the other end open. */
	static final class Counted extends OutputStream {

		final MessageDigest digest = sha256();
		long size;
		private final OutputStream out;

		Counted(OutputStream out) {
			this.out = out;
		}

		@Override
		public void write(int b) throws IOException {
			write(new byte[] {(byte) b}, 0, 1);
		}

		@Override
		public void write(byte[] bytes, int from, int length) throws IOException {
			out.write(bytes, from, length);
			digest.update(bytes, from, length);
			size += length;
		}
	}
}
