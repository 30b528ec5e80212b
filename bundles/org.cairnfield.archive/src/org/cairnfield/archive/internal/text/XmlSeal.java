package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

import org.cairnfield.core.text.Words;

/**
 * The seal of an XML file: a comment as its last line, with the version and the CRC-32C of all bytes before.
 *
 * <pre>{@code <!-- cairnfield archive 1 end 8c736521 -->}</pre>
 */
public final class XmlSeal {

	private static final Pattern LINE = Pattern.compile("<!-- cairnfield archive ([0-9]{1,6}) end ([0-9a-f]{8}) -->");
	private static final int LONGEST = 80;

	private XmlSeal() {
	}

	/** The last line for a document. */
	public static byte[] of(byte[] document) {
		return ("<!-- " + FileKind.STRUCTURE.header(FileKind.VERSION) + " end " + Seal.hex(crc(document)) + " -->\n")
				.getBytes(StandardCharsets.US_ASCII);
	}

	/** The document with its last line. */
	public static byte[] sealed(byte[] document) {
		byte[] seal = of(document);
		byte[] file = Arrays.copyOf(document, document.length + seal.length);
		System.arraycopy(seal, 0, file, document.length, seal.length);
		return file;
	}

	private static long crc(byte[] bytes) {
		CRC32C crc = new CRC32C();
		crc.update(bytes);
		return crc.getValue();
	}

	/**
	 * Takes the seal off a file, and brings the document to the present version.
	 *
	 * @return null where it can not be read; the report tells why
	 */
	public static byte[] open(byte[] file, Migrations migrations, PartReport report) throws IOException {
		byte[] bytes = withoutCarriageReturns(file, report);
		int end = bytes.length - 1;
		if (end < 0 || bytes[end] != '\n') {
			report.damage(0, bytes.length == 0 ? Messages.XmlSeal_isEmpty : Messages.XmlSeal_endsBeforeItsEndThe);
			return null;
		}
		int start = end;
		while (start > 0 && bytes[start - 1] != '\n' && end - start <= LONGEST) {
			start--;
		}
		Matcher seal = LINE.matcher(new String(bytes, start, end - start, StandardCharsets.ISO_8859_1));
		if (!seal.matches()) {
			report.damage(lines(bytes),
					Messages.XmlSeal_doesNotEndWithThe);
			return null;
		}
		byte[] document = Arrays.copyOf(bytes, start);
		int version = Integer.parseInt(seal.group(1));
		if (!seal.group(2).equals(Seal.hex(crc(document)))) {
			report.brokenSeal();
		}
		if (version > FileKind.VERSION) {
			report.damage(0, Words.bind(Messages.XmlSeal_wasWrittenByANewer, version, FileKind.VERSION),
					Messages.XmlSeal_openTheArchiveWithThat);
			return null;
		}
		if (version == FileKind.VERSION) {
			return document;
		}
		byte[] brought = migrations.bring(FileKind.STRUCTURE, version, document, report);
		if (brought == null) {
			report.damage(0, Words.bind(Messages.XmlSeal_isOfFormatWhichThis, version));
		}
		return brought;
	}

	private static byte[] withoutCarriageReturns(byte[] file, PartReport report) {
		byte[] bytes = new byte[file.length];
		int size = 0;
		for (int i = 0; i < file.length; i++) {
			if (file[i] != '\r' || i + 1 == file.length || file[i + 1] != '\n') {
				bytes[size++] = file[i];
			}
		}
		if (size == file.length) {
			return file;
		}
		report.carriageReturns();
		return Arrays.copyOf(bytes, size);
	}

	private static long lines(byte[] bytes) {
		long lines = 0;
		for (byte b : bytes) {
			lines += b == '\n' ? 1 : 0;
		}
		return lines;
	}
}
