package org.cairnfield.archive.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.FolderText;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that are killed while they pack a history, at instants spread over the time that it takes. */
class RepackKillsTest {

	private static final Person PERSON = Person.named("M.Q.");
	private static final int KILLS = Integer.getInteger("cairnfield.kills", 3);

	private final TreeMap<String, String> digests = new TreeMap<>();

	@TempDir
	Path folder;

	@Test
	void leavesTheWholeHistoryWhenKilled() throws Exception {
		Path grown = folder.resolve("grown");
		makeGrown(grown);
		int inTheMiddle = 0;
		long millis = 0;
		for (int n = 0; n <= KILLS; n++) {
			Path root = folder.resolve("run");
			FolderText.copy(grown, root);
			try (ChildJvm child = ChildJvm.start(RepackingChild.class, root.toString())) {
				assertTrue(child.line().startsWith("closing "));
				while (!isPacking(root) && child.livesAfter(1)) {
					// it loads Git
				}
				long start = System.nanoTime();
				if (n == 0) {
					assertEquals("closed", child.line());
					millis = (System.nanoTime() - start) / 1_000_000;
				} else if (child.livesAfter((n - 1) * millis / KILLS)) {
					child.kill();
				}
			}
			inTheMiddle += isPacking(root) ? 1 : 0;
			inspect(root);
			FolderText.delete(root);
		}
		assertTrue(inTheMiddle > 0, "none was killed in the middle of it");
		System.out
				.println(KILLS + " kills, " + inTheMiddle + " in the middle of packing, which took " + millis + " ms");
	}

	private static boolean isPacking(Path root) {
		return Files.exists(root.resolve(".cairnfield/committing"));
	}

	private void makeGrown(Path grown) throws IOException {
		OpenArchive open = new ArchiveStore().create(grown, "n");
		SampleArchives.fill(open.archive(), 1, 1, 2_000);
		for (int n = 0; n < 15; n++) {
			Survey survey = SampleArchives.survey(open.archive(), "survey-0");
			survey.getSamples().setTable(survey.table().edit().position(n * 70, n, -1).done());
			digests.put(open.savePoint(PERSON, null).orElseThrow().id(), open.digest());
		}
		FolderText.copy(grown, grown.resolveSibling("copy")); // as a process leaves it that ends here
		open.close();
		FolderText.delete(grown);
		Files.move(grown.resolveSibling("copy"), grown);
		new ArchiveStore().releaseLock(grown);
	}

	private void inspect(Path root) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(root, Mode.EDIT); History history = open.history()) {
			assertEquals(List.of(), open.damages());
			assertEquals(List.of(), history.check().problems());
			assertEquals(digests.size(), history.list(1_000).size());
			for (SavePoint point : history.list(1_000)) {
				assertEquals(digests.get(point.id()), history.open(point).digest());
			}
			open.archive().setName("work goes on");
			assertTrue(open.savePoint(PERSON, null).isPresent());
		}
		assertTrue(Files.exists(root.resolve(".git/packed-refs")), "packed at last");
	}
}
