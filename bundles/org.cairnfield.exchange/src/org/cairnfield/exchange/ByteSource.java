package org.cairnfield.exchange;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;

import org.cairnfield.core.text.Words;

/** The bytes of a file, expanded where its first bytes say gzip, whatever its name. */
final class ByteSource implements AutoCloseable {

	private static final long FREE_EXPANSION = 64L << 20;

	private final Counted raw;
	private final InputStream in;
	private final boolean gzip;

	private ByteSource(Counted raw, InputStream in, boolean gzip) {
		this.raw = raw;
		this.in = in;
		this.gzip = gzip;
	}

	static ByteSource open(Path file, Limits limits) throws IOException {
		if (Files.isDirectory(file)) {
			throw new Failures.Refused(Messages.ByteSource_thisIsAFolder, Messages.ByteSource_nameTheFilesInIt);
		}
		Counted raw = new Counted(Files.newInputStream(file));
		try {
			BufferedInputStream buffered = new BufferedInputStream(raw, 1 << 16);
			buffered.mark(4);
			boolean gzip = buffered.read() == 0x1f && buffered.read() == 0x8b;
			buffered.reset();
			return new ByteSource(raw, gzip ? new Expanding(buffered, raw, limits) : buffered, gzip);
		} catch (IOException e) {
			raw.close();
			throw e;
		}
	}

	InputStream in() {
		return in;
	}

	boolean gzip() {
		return gzip;
	}

	/** Bytes of the file read so far. */
	long consumed() {
		return raw.count;
	}

	@Override
	public void close() throws IOException {
		in.close();
	}

	private static final class Counted extends FilterInputStream {
		private long count;

		Counted(InputStream in) {
			super(in);
		}

		@Override
		public int read() throws IOException {
			int b = in.read();
			count += b < 0 ? 0 : 1;
			return b;
		}

		@Override
		public int read(byte[] into, int from, int length) throws IOException {
			int n = in.read(into, from, length);
			count += Math.max(n, 0);
			return n;
		}
	}

	/** Stops a small file from growing without end. */
	private static final class Expanding extends FilterInputStream {
		private final Counted raw;
		private final Limits limits;
		private long expanded;

		Expanding(InputStream in, Counted raw, Limits limits) throws IOException {
			super(new GZIPInputStream(in, 1 << 16));
			this.raw = raw;
			this.limits = limits;
		}

		@Override
		public int read() throws IOException {
			byte[] one = new byte[1];
			return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
		}

		@Override
		public int read(byte[] into, int from, int length) throws IOException {
			int n = in.read(into, from, length);
			expanded += Math.max(n, 0);
			if (expanded > FREE_EXPANSION && expanded / limits.expansionFold() > raw.count) {
				throw new Failures.Refused(
						Words.bind(Messages.ByteSource_theCompressedFileGrowsTo, limits.expansionFold()),
						Messages.ByteSource_expandItYourselfAndLook);
			}
			return n;
		}
	}
}
