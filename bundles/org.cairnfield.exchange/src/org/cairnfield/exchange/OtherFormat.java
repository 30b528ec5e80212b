package org.cairnfield.exchange;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Formats that surveys are kept in and that are no text, by what their files begin with. None has agreed names for levels and places. */
enum OtherFormat {
	WORKBOOK("a workbook or an archive", "Save the sheet as CSV first", "PK\3\4"),
	OLD_WORKBOOK("a workbook or an archive", "Save the sheet as CSV first", "\u00d0\u00cf\u0011\u00e0"),
	HDF5("an HDF5 file", OtherFormat.EXPORT, "\u0089HDF\r\n\u001a\n"),
	MAT("a MAT file", OtherFormat.EXPORT, "MATLAB "),
	PARQUET("a Parquet file", OtherFormat.EXPORT, "PAR1"),
	SQLITE("a database of SQLite, such as a GeoPackage", OtherFormat.EXPORT, "SQLite format 3\0");

	private static final String EXPORT = "Write levels and places, a row a scan, to one CSV file, with the program that made it";

	/** For a person. */
	final String title;
	/** What to do. */
	final String remedy;
	private final byte[] sign;

	OtherFormat(String title, String remedy, String sign) {
		this.title = title;
		this.remedy = remedy;
		this.sign = sign.getBytes(StandardCharsets.ISO_8859_1);
	}

	/** The format of a file that begins so; empty for text, and for what is not known. */
	static Optional<OtherFormat> of(byte[] start) {
		return Arrays.stream(values()).filter(format -> start.length >= format.sign.length
				&& Arrays.equals(format.sign, Arrays.copyOf(start, format.sign.length))).findFirst();
	}
}
