package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

import org.cairnfield.core.text.Words;

/** Looks at the first bytes of a file: is it text, in which character set, with which separator. */
final class Sniffer {

	private static final int PREFIX_BYTES = 1 << 20;

	private final Path file;
	private final IntakeOptions options;
	private boolean gzip;
	private int markBytes;
	private Charset charset;
	private Guess charsetGuess;

	Sniffer(Path file, IntakeOptions options) {
		this.file = file;
		this.options = options;
	}

	/** Fills the plan's dialect, but for header and decimal mark, and its guesses about them. */
	void sniff(FilePlan plan) throws IntakeException {
		byte[] prefix;
		try (ByteSource source = ByteSource.open(file, options.limits())) {
			gzip = source.gzip();
			prefix = source.in().readNBytes(PREFIX_BYTES);
		} catch (IOException e) {
			throw Failures.of(file, 0, e);
		}
		if (prefix.length == 0) {
			throw new IntakeException(file, 0, Messages.Sniffer_theFileIsEmpty, Messages.Sniffer_leaveItOutOrExport);
		}
		decideCharset(prefix);
		String text = decode(prefix);
		refuseBinary(prefix, text);
		if (text.isBlank()) {
			throw new IntakeException(file, 0, Messages.Sniffer_theFileHasOnlyBlank, Messages.Sniffer_leaveItOut);
		}
		SeparatorGuess separator = SeparatorGuess.of(text, options.separator().orElse(null));
		plan.dialect = new Dialect(charset, markBytes, separator.separator(), false, true);
		plan.guesses.add(charsetGuess);
		if (gzip) {
			plan.guesses.add(new Guess("compression", "gzip", Messages.Sniffer_theFirstTwoBytesSay));
		}
		plan.guesses.add(new Guess("separator", CellWords.separator(separator.separator()), separator.evidence()));
	}

	private void decideCharset(byte[] b) {
		if (starts(b, 0xEF, 0xBB, 0xBF)) {
			set(StandardCharsets.UTF_8, 3, Messages.Sniffer_byteOrderMark);
		} else if (starts(b, 0xFF, 0xFE)) {
			set(StandardCharsets.UTF_16LE, 2, Messages.Sniffer_byteOrderMark);
		} else if (starts(b, 0xFE, 0xFF)) {
			set(StandardCharsets.UTF_16BE, 2, Messages.Sniffer_byteOrderMark);
		} else if (options.charset().isPresent()) {
			set(options.charset().get(), 0, Messages.Sniffer_asTold);
		} else if (isUtf8(b)) {
			boolean plain = true;
			for (byte each : b) {
				plain &= each >= 0;
			}
			set(StandardCharsets.UTF_8, 0,
					plain ? Messages.Sniffer_theBeginningIsPlainAscii : Messages.Sniffer_theBeginningIsValidUtf);
		} else {
			set(StandardCharsets.ISO_8859_1, 0, Messages.Sniffer_theBeginningIsNotValid);
		}
	}

	private void set(Charset value, int mark, String evidence) {
		charset = value;
		markBytes = mark;
		charsetGuess = new Guess(Messages.Sniffer_characterSet, value.name(), evidence);
	}

	private static boolean starts(byte[] b, int... with) {
		for (int i = 0; i < with.length; i++) {
			if (b.length <= i || (b[i] & 0xff) != with[i]) {
				return false;
			}
		}
		return true;
	}

	private static boolean isUtf8(byte[] b) {
		CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
		// a character cut off at the end of the prefix is underflow, not malformed input
		CoderResult result = decoder.decode(ByteBuffer.wrap(b), CharBuffer.allocate(b.length + 1),
				b.length < PREFIX_BYTES);
		return !result.isError();
	}

	private String decode(byte[] b) {
		String text = new String(b, markBytes, b.length - markBytes, charset);
		if (b.length == PREFIX_BYTES) {
			// the last line may be cut off, unless there is only one
			int end = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r'));
			return end > 0 ? text.substring(0, end + 1) : text;
		}
		return text;
	}

	private void refuseBinary(byte[] b, String text) throws IntakeException {
		Optional<OtherFormat> other = OtherFormat.of(b);
		if (other.isPresent()) {
			throw new IntakeException(file, 0, Words.bind(Messages.Sniffer_thisIsNotATable, other.get().title),
					other.get().remedy);
		}
		int odd = 0;
		int looked = Math.min(text.length(), 1 << 16);
		for (int i = 0; i < looked; i++) {
			char c = text.charAt(i);
			if (c == 0) {
				odd = looked;
				break;
			}
			odd += c < ' ' && c != '\n' && c != '\r' && c != '\t' ? 1 : 0;
		}
		if (odd * 20L > looked) {
			throw new IntakeException(file, 0, Messages.Sniffer_thisIsNotText, Messages.Sniffer_exportTheSurveyAsA);
		}
	}
}
