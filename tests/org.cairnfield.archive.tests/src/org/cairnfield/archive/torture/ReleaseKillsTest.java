package org.cairnfield.archive.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few kills; {@code tests/torture-releases} does more. */
class ReleaseKillsTest {

	@TempDir
	Path folder;

	@Test
	void leavesAReleaseThatIsSoundOrNoneWhenKilled() throws Exception {
		ReleaseKills.Report report = ReleaseKills.run(folder, 5, 1);
		assertEquals(5, report.there() + report.absent());
		assertTrue(report.releases() >= 5, report::toString);
	}
}
