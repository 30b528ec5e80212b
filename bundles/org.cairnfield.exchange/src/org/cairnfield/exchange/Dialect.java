package org.cairnfield.exchange;

import java.nio.charset.Charset;

/** How a file's bytes become fields. */
record Dialect(Charset charset, int markBytes, char separator, boolean decimalComma, boolean header) {

	Dialect withCharset(Charset other) {
		return new Dialect(other, markBytes, separator, decimalComma, header);
	}
}
