package org.cairnfield.archive.internal.disk;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.archive.fault.ArchiveException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskFaultsTest {

	@TempDir
	Path folder;

	@BeforeEach
	void needsRoom() throws IOException {
		assumeTrue(Files.getFileStore(folder).getUsableSpace() > 100 << 20, "no room here");
	}

	private ArchiveException explained(String reason) {
		return DiskFaults.explain("nothing was saved", folder,
				new FileSystemException(folder.toString(), null, reason));
	}

	@Test
	void tellsAQuotaFromAFullDisk() {
		ArchiveException quota = explained("Disk quota exceeded");
		assertFalse(quota.getMessage().contains("is full"), quota::getMessage);
		assertTrue(
				quota.getMessage().contains("a quota")
						&& quota.getMessage().matches(".*the disk itself has [0-9]+ MB left.*"),
				quota::getMessage);
		assertTrue(quota.remedy().contains("ask for a higher limit"), quota::remedy);
	}

	@Test
	void doesNotCallADiskFullThatHasRoom() {
		ArchiveException files = explained("No space left on device");
		assertFalse(files.getMessage().contains("is full"), files::getMessage);
		assertTrue(files.getMessage().contains("a limit"), files::getMessage);
	}
}
