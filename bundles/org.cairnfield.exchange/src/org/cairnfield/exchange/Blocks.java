package org.cairnfield.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;

import org.cairnfield.core.text.Words;

/** Cuts the text of one file into blocks of whole records, so that several threads can read them. */
final class Blocks implements AutoCloseable {

	private static final int BLOCK_BYTES = 1 << 17;

	final Path file;
	final Limits limits;
	final byte[] separator;
	private final ByteSource source;
	private final InputStream in;
	private byte[] buffer;
	private int length;
	private long line = 1;
	private boolean ended;
	/** Told once all whole records before it are delivered. */
	private IOException failure;

	Blocks(Path file, Dialect dialect, Limits limits) throws IntakeException {
		this(file, dialect, limits, BLOCK_BYTES);
	}

	/** @param blockBytes how long blocks are, unless a record is longer */
	Blocks(Path file, Dialect dialect, Limits limits, int blockBytes) throws IntakeException {
		buffer = new byte[blockBytes];
		this.file = file;
		this.limits = limits;
		this.separator = String.valueOf(dialect.separator()).getBytes(StandardCharsets.UTF_8);
		ByteSource opened = null;
		try {
			opened = ByteSource.open(file, limits);
			opened.in().skipNBytes(dialect.markBytes());
			source = opened;
			in = Utf8.of(opened.in(), dialect.charset());
		} catch (IOException e) {
			close(opened);
			throw Failures.of(file, 0, e);
		}
	}

	/** The next records, about as many as fit; null at the end. */
	Block next() throws IntakeException {
		return next(0);
	}

	/**
	 * The next rows, and blank lines before them.
	 *
	 * @param rows how many; 0 for about as many as fit. At the end of the file there may be fewer
	 * @return null at the end
	 */
	Block next(int rows) throws IntakeException {
		while (true) {
			fill();
			BlockRows whole = new BlockRows(this, buffer, length, line, ended, length);
			int found = 0;
			if (rows > 0) {
				while (found < rows && whole.advance()) {
					found += whole.isBlank() ? 0 : 1;
				}
			} else if (ended) {
				whole.skipTo(length, 0);
			} else if (!skipLines(whole)) {
				while (whole.advance()) {
					found++;
				}
			}
			boolean enough = rows == 0 ? whole.end() > 0 : found == rows || ended || failure != null && whole.end() > 0;
			if (enough) {
				return whole.end() == 0 ? null : cut(whole);
			}
			if (failure != null) {
				throw Failures.of(file, line, failure);
			}
			if (ended) {
				return null;
			}
			if (whole.end() == 0 && length > limits.recordChars()) {
				throw Failures.of(file, line,
						new Failures.Refused(
								Words.bind(Messages.Blocks_aRecordHereIsLonger,
										CellWords.count(limits.recordChars())),
								Messages.Blocks_lookForAQuotationMark));
			}
			buffer = Arrays.copyOf(buffer, buffer.length * 2);
		}
	}

	/** Moves behind the last line end where no quotation mark can hide one; false where there is a mark. */
	private boolean skipLines(BlockRows whole) {
		int end = 0;
		int lines = 0;
		for (int i = 0; i < length; i++) {
			byte b = buffer[i];
			if (b == '"') {
				return false;
			}
			// a return at the very end may be half of a line end
			if (b == '\n' || b == '\r' && i + 1 < length) {
				lines += b == '\n' && i > 0 && buffer[i - 1] == '\r' ? 0 : 1;
				end = i + 1;
			}
		}
		// the last return may belong to a line feed that was counted with it
		whole.skipTo(end, lines);
		return true;
	}

	private Block cut(BlockRows whole) {
		int end = whole.end();
		Block block = new Block(this, Arrays.copyOf(buffer, end), line, source.consumed());
		line = whole.nextLine();
		System.arraycopy(buffer, end, buffer, 0, length - end);
		length -= end;
		return block;
	}

	private void fill() {
		try {
			while (length < buffer.length && !ended && failure == null) {
				int n = in.read(buffer, length, buffer.length - length);
				ended = n < 0;
				length += Math.max(0, n);
			}
		} catch (IOException e) {
			failure = e;
		}
	}

	@Override
	public void close() {
		close(source);
	}

	private static void close(ByteSource source) {
		try {
			if (source != null) {
				source.close();
			}
		} catch (IOException e) {
			// it was only read: nothing is lost
		}
	}
}
