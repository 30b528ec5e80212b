package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.torture.ChildJvm;
import org.cairnfield.archive.torture.SavingChild;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReaderDuringSavesTest {

	private static final int READS = 60;

	@TempDir
	Path folder;

	@Test
	void seesWholeStatesOnlyWhileAnotherProcessSaves() throws IOException {
		Path root = folder.resolve("archive");
		try (OpenArchive open = new ArchiveStore().create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 3, 40);
			open.save();
		}
		Set<String> seen = new HashSet<>();
		Set<String> told = new HashSet<>();
		try (ChildJvm child = ChildJvm.start(SavingChild.class, root.toString(), "1")) {
			told.add(digest(child.line()));
			assertEquals("saved 1", child.line());
			for (int i = 0; i < READS; i++) {
				try (OpenArchive reader = new ArchiveStore().open(root, Mode.READ)) {
					assertEquals(List.of(), reader.damages());
					seen.add(reader.digest());
				} catch (ArchiveException e) {
					assertTrue(e.getMessage().contains("saved again and again"), e::getMessage);
				}
			}
			child.kill();
			for (String line = child.line(); line != null; line = child.line()) {
				told.add(digest(line));
			}
		}
		assertTrue(told.containsAll(seen), "states that nobody saved");
		assertTrue(seen.size() > 2, seen.size() + " states seen");
	}

	private static String digest(String line) {
		return line.substring(line.lastIndexOf(' ') + 1);
	}
}
