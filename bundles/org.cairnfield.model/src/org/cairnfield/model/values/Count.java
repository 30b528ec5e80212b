package org.cairnfield.model.values;

import java.util.Locale;

/** Whole numbers with their nouns, the same in every locale. */
public final class Count {

	private Count() {
	}

	/** {@code 1 sample}, {@code 12 samples}, {@code 12,345 samples}. */
	public static String of(long n, String one) {
		return of(n, one, one + 's');
	}

	/** Likewise where the plural takes more than an s. */
	public static String of(long n, String one, String many) {
		return String.format(Locale.ROOT, "%,d %s", n, n == 1 ? one : many);
	}
}
