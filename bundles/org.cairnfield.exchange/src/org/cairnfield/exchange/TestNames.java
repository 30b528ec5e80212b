package org.cairnfield.exchange;

import org.cairnfield.exchange.internal.text.SiteNames;

/** Names of files by which people tell test data from training data. */
public final class TestNames {

	private TestNames() {
	}

	/** Whether a file's name, such as "tower_tst01.csv.gz", says that it holds test data, and nothing else. */
	public static boolean sayTest(String fileName) {
		return SiteNames.saysTest(SiteNames.stem(fileName));
	}
}
