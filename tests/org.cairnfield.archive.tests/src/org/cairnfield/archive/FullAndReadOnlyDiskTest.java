package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real disks that are full or read-only; they are mounted for the test, which needs the rights to do so. */
class FullAndReadOnlyDiskTest {

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private MountedDisk mounted;

	private Path mountSmallDisk(String size) throws IOException {
		mounted = new MountedDisk(folder.resolve("disk"), size);
		return mounted.place();
	}

	@AfterEach
	void unmount() {
		if (mounted != null) {
			mounted.close();
		}
	}

	/** Whichever of Git's files no longer fits. */
	@Test
	void saysOfAReleaseThatDoesNotFitThatItWasNotMade() throws IOException {
		Path disk = mountSmallDisk("2m");
		Path root = disk.resolve("archive");
		Path filler = disk.resolve("filler");
		int refused = 0;
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 30);
			open.savePoint(Person.named("M.Q."), null);
			for (int blocks = 0;; blocks++) {
				Files.deleteIfExists(filler);
				fill(filler, blocks);
				try {
					open.release("1.0.0", "{\"of\": " + blocks + "}", open.digest(), "Release", Person.named("M.Q."));
					break;
				} catch (ArchiveException full) {
					assertTrue(full.getMessage().contains("is full"), full::getMessage);
					refused++;
				}
			}
			Files.deleteIfExists(filler);
			try (var history = open.history()) {
				assertEquals(List.of("1.0.0"), history.releases().stream().map(r -> r.version()).toList());
			}
		}
		assertTrue(refused > 5, "only " + refused);
	}

	/** Leaves so many blocks free. */
	private static void fill(Path filler, int blocks) throws IOException {
		long left = Files.getFileStore(filler.getParent()).getUsableSpace() - blocks * 4096L;
		try (var out = Files.newOutputStream(filler)) {
			out.write(new byte[(int) Math.max(0, left)]);
		}
	}

	@Test
	void leavesTheOldStateOnAFullDisk() throws IOException {
		Path root = mountSmallDisk("600k").resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 30);
			open.savePoint(Person.named("M.Q."), null);
			SortedMap<String, String> before = FolderText.of(root);
			String digest = open.digest();
			var survey = SampleArchives.survey(open.archive(), "survey-0");
			var builder = SampleTable.builder();
			for (int i = 0; i < 20_000; i++) {
				builder.sample("S-" + i, 0, i, i);
			}
			survey.getSamples().setTable(builder.build());
			ArchiveException full = assertThrows(ArchiveException.class, open::save);
			assertTrue(full.getMessage().contains("nothing was saved") && full.getMessage().contains("is full"),
					full::getMessage);
			assertEquals(before, FolderText.of(root));
			try (Stream<Path> left = Files.list(root.resolve(".cairnfield/pending"))) {
				assertEquals(List.of(), left.toList(), "what was written beside is gone");
			}
			open.reload();
			assertEquals(digest, open.digest());
			var small = SampleArchives.survey(open.archive(), "survey-0");
			small.getSamples().setTable(small.table().edit().reason(0, "still works").done());
			assertFalse(open.save().isEmpty());
		}
	}

	@Test
	void keepsHistoryWholeOnAFullDisk() throws Exception {
		Path root = mountSmallDisk("900k").resolve("archive");
		int points = 0;
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 200);
			String last = null;
			for (int i = 0; i < 500 && last == null; i++) {
				var survey = SampleArchives.survey(open.archive(), "survey-0");
				survey.getSamples().setTable(survey.table().edit().position(i % 100, i, i).done());
				try {
					open.savePoint(Person.named("M.Q."), null);
					points++;
				} catch (ArchiveException e) {
					last = e.getMessage();
				}
			}
			assertTrue(last != null && last.contains("is full"), last);
			assertTrue(points > 1, points + " save points");
			try (var history = open.history()) {
				assertTrue(history.list(1000).size() >= points);
				assertEquals(List.of(), history.open(history.last()).damages());
			}
		}
		try (OpenArchive open = store.open(root, Mode.READ)) {
			assertEquals(List.of(), open.damages());
		}
	}

	@Test
	void opensReadOnlyOnAReadOnlyDiskAndTellsWhy() throws IOException {
		Path root = mountSmallDisk("4m").resolve("archive");
		String digest;
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 30);
			open.save();
			digest = open.digest();
		}
		mounted.makeReadOnly();
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(open.readOnlyReason().orElseThrow().contains("read-only"), open.readOnlyReason()::get);
			assertEquals(digest, open.digest());
			open.archive().setName("other");
			ArchiveException refused = assertThrows(ArchiveException.class, open::save);
			assertTrue(refused.getMessage().contains("read-only"), refused::getMessage);
		}
	}

	@Test
	void saysSoWhereAFolderCannotBeWrittenAnyMore() throws IOException {
		Path root = mountSmallDisk("4m").resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 30);
			open.save();
			SortedMap<String, String> before = FolderText.of(root);
			mounted.makeReadOnly();
			open.archive().setName("other");
			ArchiveException refused = assertThrows(ArchiveException.class, open::save);
			assertTrue(refused.getMessage().contains("nothing was saved") && refused.getMessage().contains("read-only"),
					refused::getMessage);
			assertEquals(before, FolderText.of(root));
			mounted.makeWritable();
			assertFalse(open.save().isEmpty());
		}
	}

	@Test
	void refusesToMakeAnArchiveWhereNothingCanBeWritten() throws IOException {
		Path disk = mountSmallDisk("4m");
		mounted.makeReadOnly();
		ArchiveException refused = assertThrows(ArchiveException.class,
				() -> store.create(disk.resolve("archive"), "n"));
		assertTrue(refused.getMessage().startsWith("no archive was made") && refused.getMessage().contains("read-only"),
				refused::getMessage);
	}
}
