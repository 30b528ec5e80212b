package org.cairnfield.archive.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few kills in the middle of an exchange; tests/torture-exchange does many. */
class ExchangeTortureTest {

	private static final int KILLS = 4;

	@TempDir
	Path folder;

	@Test
	void nothingIsLostWhereAnExchangeIsKilled() throws Exception {
		assertEquals(KILLS, ExchangeKills.run(folder.resolve("people"), KILLS, 14).kills());
	}
}
