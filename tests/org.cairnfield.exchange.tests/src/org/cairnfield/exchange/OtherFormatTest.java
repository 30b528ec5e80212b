package org.cairnfield.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/**
 * Signatures as their owners have them: HDF5 File Format Specification 3.0, II.A (superblock); Apache Parquet, file format;
 * SQLite, database file format, 1.3; PKWARE APPNOTE 4.3.7.
 */
class OtherFormatTest {

	@Test
	void knowsAFormatByHowItsFilesBegin() {
		assertEquals(Optional.of(OtherFormat.HDF5), of("894844460d0a1a0a00"));
		assertEquals(Optional.of(OtherFormat.PARQUET), of("50415231"));
		assertEquals(Optional.of(OtherFormat.SQLITE), of("53514c69746520666f726d6174203300"));
		assertEquals(Optional.of(OtherFormat.WORKBOOK), of("504b0304"));
	}

	@Test
	void takesTextForWhatItIs() {
		assertEquals(Optional.empty(), OtherFormat.of("PAR,x,y\n".getBytes()));
		assertEquals(Optional.empty(), OtherFormat.of(new byte[0]));
		byte[] cut = Arrays.copyOf(HexFormat.of().parseHex("894844460d0a1a0a"), 7);
		assertEquals(Optional.empty(), OtherFormat.of(cut));
	}

	private static Optional<OtherFormat> of(String hex) {
		return OtherFormat.of(HexFormat.of().parseHex(hex));
	}
}
