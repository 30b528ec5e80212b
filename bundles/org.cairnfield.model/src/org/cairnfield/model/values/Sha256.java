package org.cairnfield.model.values;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), in 64 hexadecimal digits, lower case. */
public final class Sha256 {

	private Sha256() {
	}

	/** A fresh digest. */
	public static MessageDigest begin() {
		try {
			return MessageDigest.getInstance("SHA-256");
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	/** Ends a digest. */
	public static String hex(MessageDigest digest) {
		return HexFormat.of().formatHex(digest.digest());
	}

	/** Of bytes. */
	public static String of(byte[] bytes) {
		return HexFormat.of().formatHex(begin().digest(bytes));
	}

	/** Of a file's bytes. */
	public static String of(Path file) throws IOException {
		try (InputStream in = Files.newInputStream(file);
				DigestInputStream digest = new DigestInputStream(in, begin())) {
			digest.transferTo(OutputStream.nullOutputStream());
			return hex(digest.getMessageDigest());
		}
	}
}
