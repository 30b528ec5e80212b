package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;

import org.cairnfield.archive.torture.ExchangeLaws;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few runs of the laws on real archives; tests/exchange-laws does many. */
class ExchangeLawTest {

	private static final int RUNS = 3;

	@TempDir
	Path folder;

	@Test
	void endsWithOneStateInWhateverOrderThreePeopleExchange() throws IOException {
		assertTrue(ExchangeLaws.run(folder, RUNS, 0) > 0, "nobody ever met");
	}
}
