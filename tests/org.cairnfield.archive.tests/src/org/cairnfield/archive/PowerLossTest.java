package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;

import org.cairnfield.archive.ForgetfulDisk.PowerLossError;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The power goes at every single step of a save; the archive is then as before the save or as after it, never between. */
class PowerLossTest {

	private static final int RESTARTS = 4;

	@TempDir
	Path folder;
	private Path original;
	private SortedMap<String, String> before;

	@BeforeEach
	void makeArchive() throws IOException {
		original = folder.resolve("original");
		try (OpenArchive open = new ArchiveStore().create(original, "n")) {
			SampleArchives.fill(open.archive(), 3, 3, 12);
			open.save();
		}
		FolderText.delete(original.resolve(".git"));
		before = FolderText.of(original);
	}

	/** Touches several files, moves one, deletes one, makes one in a new folder. */
	private static void change(Archive archive) {
		Survey first = archive.getSites().get(0).getSurveys().get(0);
		first.getSamples().setTable(first.table().edit().reason(1, "why").position(2, 1, 2).done());
		Survey other = archive.getSites().get(1).getSurveys().get(0);
		other.getSamples().setTable(other.table().edit().reason(0, "why").done());
		archive.getSites().get(0).setId("renamed");
		archive.getLedgers().clear();
	}

	private static void changeOneFile(Archive archive) {
		Survey first = archive.getSites().get(0).getSurveys().get(0);
		first.getSamples().setTable(first.table().edit().reason(1, "why").done());
	}

	private interface Change {
		void make(Archive archive);
	}

	@Test
	void leavesTheOldOrTheNewStateOfSeveralFiles() throws IOException {
		loseThePowerAtEveryStep(PowerLossTest::change, 30);
	}

	@Test
	void leavesTheOldOrTheNewStateOfOneFile() throws IOException {
		loseThePowerAtEveryStep(PowerLossTest::changeOneFile, 8);
	}

	private void loseThePowerAtEveryStep(Change change, int leastSteps) throws IOException {
		SortedMap<String, String> after = saved(change);
		Random random = new Random(7);
		long all = Long.MAX_VALUE;
		int old = 0;
		int fresh = 0;
		for (long stop = 0; stop <= all; stop++) {
			Path work = folder.resolve("work");
			FolderText.copy(original, work);
			ForgetfulDisk disk = new ForgetfulDisk(work, stop);
			boolean returned = save(work, disk, change);
			if (returned) {
				all = stop; // went through without being stopped
			}
			for (int restart = 0; restart < RESTARTS; restart++) {
				Path woken = folder.resolve("woken");
				disk.restart(woken, random);
				boolean isNew = open(woken, after, "stopped at step " + stop);
				assertTrue(isNew || !returned, "a save that has returned lasts");
				old += isNew ? 0 : 1;
				fresh += isNew ? 1 : 0;
				FolderText.delete(woken);
			}
			FolderText.delete(work);
		}
		assertTrue(all >= leastSteps, all + " steps");
		assertTrue(old > 0 && fresh > 0, old + " old, " + fresh + " new");
	}

	/** @return whether the save came to its end */
	private static boolean save(Path work, ForgetfulDisk disk, Change change) throws IOException {
		try (OpenArchive open = new ArchiveStore(disk, Clock.systemUTC(), Migrations.NONE).open(work, Mode.EDIT)) {
			change.make(open.archive());
			open.save();
			return true;
		} catch (PowerLossError e) {
			return false;
		}
	}

	private SortedMap<String, String> saved(Change change) throws IOException {
		Path work = folder.resolve("whole");
		FolderText.copy(original, work);
		try (OpenArchive open = new ArchiveStore().open(work, Mode.EDIT)) {
			change.make(open.archive());
			open.save();
		}
		return FolderText.of(work);
	}

	/** Reads before the recovery, recovers, and looks at every file. */
	private boolean open(Path woken, SortedMap<String, String> after, String what) throws IOException {
		String digest;
		try (OpenArchive reader = new ArchiveStore().open(woken, Mode.READ)) {
			assertEquals(List.of(), reader.damages(), what);
			digest = reader.digest();
		}
		try (OpenArchive open = new ArchiveStore().open(woken, Mode.EDIT)) {
			assertEquals(List.of(), open.damages(), what);
			assertEquals(digest, open.digest(), what + ": a reader sees what the recovery makes");
		}
		SortedMap<String, String> found = FolderText.of(woken);
		boolean isNew = found.equals(after);
		assertTrue(isNew || found.equals(before), () -> what + ": neither old nor new: " + found.keySet());
		List<String> left = new ArrayList<>();
		try (var files = Files.list(woken.resolve(".cairnfield/pending"))) {
			files.forEach(file -> left.add(file.toString()));
		}
		assertEquals(List.of(), left, what);
		return isNew;
	}
}
