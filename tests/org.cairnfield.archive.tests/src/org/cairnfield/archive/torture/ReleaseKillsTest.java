package org.cairnfield.archive.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few kills; {@code tests/torture-releases} does more. */
class ReleaseKillsTest {

	private static final int KILLS = 3;

	@TempDir
	Path folder;

	@Test
	void leavesAReleaseThatIsSoundOrNoneWhenKilled() throws Exception {
		ReleaseKills.Report report = ReleaseKills.run(folder, KILLS, 1);
		assertEquals(KILLS, report.there() + report.absent());
		assertTrue(report.releases() >= KILLS, report::toString);
	}
}
