package org.cairnfield.curation.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What tells whether two files have the same content. */
public final class FileDigest {

	private FileDigest() {
	}

	/** SHA-256 of a file's bytes, hexadecimal. */
	public static String sha256(Path file) throws IOException {
		try (InputStream in = Files.newInputStream(file);
				DigestInputStream digest = new DigestInputStream(in, MessageDigest.getInstance("SHA-256"))) {
			digest.transferTo(OutputStream.nullOutputStream());
			return HexFormat.of().formatHex(digest.getMessageDigest().digest());
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java platform has SHA-256", e);
		}
	}
}
