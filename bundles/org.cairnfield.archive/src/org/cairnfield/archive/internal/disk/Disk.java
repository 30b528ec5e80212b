package org.cairnfield.archive.internal.disk;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

/** The steps on a disk that saving is made of. A seam: tests put a disk in its place that fails or forgets. */
public interface Disk {

	/** The disk of this machine. */
	Disk REAL = new Disk() {
	};

	/** A file being written; after {@link #sync} its content survives a loss of power. */
	abstract class Sink extends OutputStream {
		/** @throws IOException where the disk cannot promise it */
		public abstract void sync() throws IOException;
	}

	/** A new file. One of that name goes first, so that nothing is written to what else may be linked to it. */
	default Sink write(Path file) throws IOException {
		Files.deleteIfExists(file);
		FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
		return new Sink() {
			@Override
			public void write(int b) throws IOException {
				write(new byte[] { (byte) b }, 0, 1);
			}

			@Override
			public void write(byte[] bytes, int from, int length) throws IOException {
				ByteBuffer buffer = ByteBuffer.wrap(bytes, from, length);
				while (buffer.hasRemaining()) {
					channel.write(buffer);
				}
			}

			@Override
			public void sync() throws IOException {
				channel.force(true);
			}

			@Override
			public void close() throws IOException {
				channel.close();
			}
		};
	}

	/** Puts a file in the place of another, in one step: whoever looks sees the one or the other. */
	default void move(Path from, Path to) throws IOException {
		Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
	}

	/** Nothing happens where there is no such file. */
	default void delete(Path file) throws IOException {
		Files.deleteIfExists(file);
	}

	/** Nothing happens where the folder is there already; its parent must be. */
	default void createFolder(Path folder) throws IOException {
		if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
			Files.createDirectory(folder);
		}
	}

	/** Makes moves and deletions in a folder survive a loss of power. */
	default void syncFolder(Path folder) throws IOException {
		// Windows opens no folders, and orders the changes of its folders by itself
		if (System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")) {
			return;
		}
		try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
			channel.force(true);
		}
	}
}
