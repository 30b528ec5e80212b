package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.text.Migrations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program ends somewhere in a save of work that was brought back and went on. */
class DraftAfterSaveTest {

	@TempDir
	Path folder;

	/** Every operation is the last one once so many were done. */
	private static final class MortalDisk implements Disk {
		private long left = Long.MAX_VALUE;

		private void step() {
			if (left-- <= 0) {
				throw new Ended();
			}
		}

		@Override
		public Sink write(Path file) throws IOException {
			step();
			return Disk.super.write(file);
		}

		@Override
		public void move(Path from, Path to) throws IOException {
			step();
			Disk.super.move(from, to);
		}

		@Override
		public void delete(Path file) throws IOException {
			step();
			Disk.super.delete(file);
		}

		@Override
		public void createFolder(Path made) throws IOException {
			step();
			Disk.super.createFolder(made);
		}

		@Override
		public void syncFolder(Path of) throws IOException {
			step();
			Disk.super.syncFolder(of);
		}
	}

	private static final class Ended extends Error {
		private static final long serialVersionUID = 1;
	}

	/** Whether the save came through. */
	private boolean saveUntil(DraftFixture fixture, long step) throws IOException {
		MortalDisk disk = new MortalDisk();
		try (OpenArchive open = new ArchiveStore(disk, DraftFixture.CLOCK, Migrations.NONE).open(fixture.root,
				Mode.EDIT)) {
			open.drafts().change(open.drafts().pending(fixture.drafts).get(0)).apply();
			open.archive().setName("brought back");
			open.drafts().write(fixture.drafts);
			open.archive().setName("gone on, in no draft yet");
			try {
				disk.left = step;
				open.save();
				return true;
			} catch (Ended e) {
				return false;
			} finally {
				disk.left = Long.MAX_VALUE;
			}
		}
	}

	@Test
	void offersWhatWasNotSavedAndNothingThatWas() throws IOException {
		boolean through = false;
		int saved = 0;
		int unsaved = 0;
		for (long step = 0; !through; step++) {
			DraftFixture fixture = new DraftFixture(folder.resolve("step-" + step));
			fixture.drafted();
			through = saveUntil(fixture, step);
			try (OpenArchive open = fixture.open()) {
				boolean holds = open.archive().getName().equals("gone on, in no draft yet");
				List<Draft> pending = open.drafts().pending(fixture.drafts);
				if (holds) {
					saved++;
					assertEquals(List.of(), pending, "step " + step);
					try (var left = Files.list(fixture.drafts)) {
						assertEquals(0, left.count(), "step " + step);
					}
				} else {
					unsaved++;
					assertEquals(List.of(Draft.Fit.FITS), pending.stream().map(Draft::fit).toList(), "step " + step);
				}
			}
		}
		assertTrue(saved > 3 && unsaved > 3, saved + " saved, " + unsaved + " not");
	}
}
