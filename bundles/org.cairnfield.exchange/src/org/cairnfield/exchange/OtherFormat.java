package org.cairnfield.exchange;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Formats that surveys are kept in and that are no text, by what their files begin with. None has agreed names for levels and places. */
enum OtherFormat {
	WORKBOOK(Messages.OtherFormat_aWorkbookOrAnArchive, Messages.OtherFormat_saveTheSheetAsCsv, "PK\3\4"),
	OLD_WORKBOOK(Messages.OtherFormat_aWorkbookOrAnArchive, Messages.OtherFormat_saveTheSheetAsCsv,
			"\u00d0\u00cf\u0011\u00e0"),
	HDF5(Messages.OtherFormat_anHdf5File, Messages.OtherFormat_writeLevelsAndPlacesA, "\u0089HDF\r\n\u001a\n"),
	MAT(Messages.OtherFormat_aMatFile, Messages.OtherFormat_writeLevelsAndPlacesA, "MATLAB "),
	PARQUET(Messages.OtherFormat_aParquetFile, Messages.OtherFormat_writeLevelsAndPlacesA, "PAR1"),
	SQLITE(Messages.OtherFormat_aDatabaseOfSqliteSuch, Messages.OtherFormat_writeLevelsAndPlacesA, "SQLite format 3\0");

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
