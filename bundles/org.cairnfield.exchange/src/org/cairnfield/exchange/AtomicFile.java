package org.cairnfield.exchange;

import java.io.IOException;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file that appears whole or not at all: written beside, synced, then moved into place. */
public final class AtomicFile {

	/** What a text file is to hold. */
	public interface Content {
		/** Writes it. */
		void write(Writer out) throws IOException;
	}

	/** What another program's library writes to a file of its own. */
	public interface Filling {
		/** Fills an empty file. */
		void fill(Path file) throws IOException;
	}

	private AtomicFile() {
	}

	/** UTF-8, over an older file; a failed write leaves the older file and nothing else. */
	public static void write(Path file, Content content) throws IOException {
		fill(file, beside -> {
			try (FileChannel open = FileChannel.open(beside, StandardOpenOption.WRITE)) {
				Writer out = Channels.newWriter(open, StandardCharsets.UTF_8.newEncoder(), 1 << 16);
				content.write(out);
				out.flush();
			}
		});
	}

	/** Bytes, over an older file; likewise whole or not at all. */
	public static void write(Path file, byte[] bytes) throws IOException {
		fill(file, beside -> Files.write(beside, bytes));
	}

	/** Whatever {@code filling} writes, over an older file; likewise whole or not at all. */
	public static void fill(Path file, Filling filling) throws IOException {
		Path target = file.toAbsolutePath();
		Path beside = null;
		FileChannel channel = null;
		for (int n = 0; channel == null; n++) {
			beside = target.resolveSibling(target.getFileName() + "." + n + ".part");
			try {
				channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
			} catch (FileAlreadyExistsException e) {
				if (n > 100) {
					throw e;
				}
			}
		}
		boolean done = false;
		try {
			channel.close();
			filling.fill(beside);
			try (FileChannel open = FileChannel.open(beside, StandardOpenOption.WRITE)) {
				open.force(true);
			}
			try {
				Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
			} catch (AtomicMoveNotSupportedException e) {
				Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
			}
			done = true;
		} finally {
			if (!done) {
				Files.deleteIfExists(beside);
			}
		}
	}
}
