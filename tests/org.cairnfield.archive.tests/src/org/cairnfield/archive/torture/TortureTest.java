package org.cairnfield.archive.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A little of what {@code tests/torture} does a lot of. */
class TortureTest {

	private static final int KILLS = 8;

	@TempDir
	Path folder;

	@Test
	void survivesBeingKilled() throws Exception {
		Kills.Report report = Kills.run(folder.resolve("archive"), KILLS, 1);
		assertEquals(KILLS, report.old() + report.fresh());
		assertTrue(report.duringSave() > 0, report::toString);
		assertEquals(KILLS, report.locksTakenOver(), "each killed process left its lock");
	}

	@Test
	void tellsOfEveryCut() throws Exception {
		Map<String, Integer> cuts = Truncations.run(folder.resolve("archive"), 60);
		assertEquals(Set.of("xmi", "samples", "split", "ledger"), cuts.keySet());
		cuts.values().forEach(count -> assertTrue(count > 40, cuts::toString));
	}

	@Test
	void bearsDamageOfAnyKind() throws Exception {
		Mutations.Report report = Mutations.run(folder.resolve("archive"), 400, 1, 10_000);
		assertEquals(400, report.reported() + report.unchanged() + report.accepted());
		assertTrue(report.reported() > 200, report::toString);
		assertTrue(report.accepted() > 10, report::toString);
	}
}
