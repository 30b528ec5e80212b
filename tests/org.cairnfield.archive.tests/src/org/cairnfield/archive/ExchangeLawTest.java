package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;

import org.cairnfield.archive.torture.ExchangeLaws;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run of the laws on real archives; tests/exchange-laws does many. */
class ExchangeLawTest {

	private static final int THREE_ROUNDS = 3;

	@TempDir
	Path folder;

	@Test
	void endsWithOneStateInWhateverOrderThreePeopleExchange() throws IOException {
		assertTrue(ExchangeLaws.run(folder, 1, THREE_ROUNDS) > 0, "nobody ever met");
	}
}
