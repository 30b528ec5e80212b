package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.torture.ChildJvm;
import org.cairnfield.archive.torture.DraftingChild;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftTroubleTest {

	@TempDir
	Path folder;
	private DraftFixture fixture;
	private Path root;
	private Path drafts;

	@BeforeEach
	void make() throws IOException {
		fixture = new DraftFixture(folder);
		root = fixture.root;
		drafts = fixture.drafts;
	}

	private OpenArchive open() throws IOException {
		return fixture.open();
	}

	private void refuses(OpenArchive open, Draft draft, String... words) {
		String before = ModelText.of(open.archive());
		String message = assertThrows(ArchiveException.class, () -> open.drafts().apply(draft)).getMessage();
		for (String word : words) {
			assertTrue(message.contains(word), message);
		}
		assertFalse(open.isModified());
		assertEquals(before, ModelText.of(open.archive()));
		assertTrue(Files.exists(draft.file()));
	}

	@Test
	void reportsADraftOfAnotherStateAndDoesNotApplyIt() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			Draft fitting = open.drafts().newest(drafts).orElseThrow();
			open.archive().setName("changed since");
			open.save();
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.OTHER_STATE, draft.fit());
			refuses(open, draft, "changed since the draft was written");
			refuses(open, fitting, "changed since the draft was written");
		}
	}

	@Test
	void reportsADraftWhereAnotherProgramChangedTheArchiveUnderneath() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			Files.writeString(root.resolve("archive.xmi"), "<!-- -->", StandardOpenOption.APPEND);
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.OTHER_STATE, draft.fit());
			refuses(open, draft, "another program");
		}
	}

	@Test
	void aDraftOfFilesThatAnotherProgramHasChangedIsKeptButFitsNothing() throws IOException {
		byte[] structure = Files.readAllBytes(root.resolve("archive.xmi"));
		try (OpenArchive open = open()) {
			DraftFixture.change(open);
			Files.write(root.resolve("archive.xmi"), new byte[10]);
			assertTrue(open.drafts().write(drafts));
		}
		Files.write(root.resolve("archive.xmi"), structure);
		try (OpenArchive open = open()) {
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.OTHER_STATE, draft.fit());
			refuses(open, draft, "before the draft was written");
		}
	}

	@Test
	void knowsADraftThatWasSavedAfterAll() throws IOException {
		try (OpenArchive open = open()) {
			DraftFixture.change(open);
			open.drafts().write(drafts);
			Path file = open.drafts().newest(drafts).orElseThrow().file();
			byte[] draft = Files.readAllBytes(file);
			open.save();
			Files.write(file, draft); // as if the program had ended between the save and the removal
		}
		try (OpenArchive open = open()) {
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.SAVED, draft.fit());
			open.drafts().discard(draft);
			assertEquals(0, fixture.draftFiles());
		}
	}

	@Test
	void noticesDamageInAnyByte() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			Path file = open.drafts().newest(drafts).orElseThrow().file();
			byte[] whole = Files.readAllBytes(file);
			for (int at = 0; at < whole.length; at += at < 64 || at > whole.length - 900 ? 1 : 97) {
				byte[] damaged = whole.clone();
				damaged[at] ^= 1 << at % 8;
				Files.write(file, damaged);
				Draft draft = open.drafts().newest(drafts).orElseThrow();
				assertEquals(Draft.Fit.DAMAGED, draft.fit(), "byte " + at);
				if (at % 50 == 0) {
					refuses(open, draft, "was not applied");
				}
			}
			for (int length = 0; length < whole.length; length += length > whole.length - 200 ? 1 : 211) {
				Files.write(file, Arrays.copyOf(whole, length));
				assertEquals(Draft.Fit.DAMAGED, open.drafts().newest(drafts).orElseThrow().fit(), "cut to " + length);
			}
			Files.write(file, Arrays.copyOf(whole, whole.length + 1));
			assertEquals(Draft.Fit.DAMAGED, open.drafts().newest(drafts).orElseThrow().fit());
			Files.write(file, whole);
			assertEquals(Draft.Fit.FITS, open.drafts().newest(drafts).orElseThrow().fit());
		}
	}

	@Test
	void survivesTheKillOfItsProcess() throws Exception {
		for (int n = 0; n < 4; n++) {
			String expected;
			try (ChildJvm child = ChildJvm.start(DraftingChild.class, root.toString(), drafts.toString())) {
				expected = child.line();
				for (int i = 0; i < n; i++) {
					expected = child.line();
				}
				child.livesAfter(13L * n); // somewhere within the next draft
				child.kill();
				for (String line = child.line(); line != null; line = child.line()) {
					expected = line;
				}
			}
			int written = Integer.parseInt(expected);
			try (OpenArchive open = open()) {
				Draft draft = open.drafts().newest(drafts).orElseThrow();
				assertEquals(Draft.Fit.FITS, draft.fit());
				open.drafts().apply(draft);
				int found = Integer.parseInt(open.archive().getName());
				assertTrue(found == written || found == written + 1, found + " in place of " + written);
				assertEquals(found, SampleArchives.survey(open.archive(), "survey-1").table().xMetres(0));
				assertTrue(open.tookOverFrom().isPresent());
				open.drafts().discard(draft);
			}
		}
	}

	@Test
	void refusesToApplyOverUnsavedChangesAndWithoutTheLock() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			open.archive().setName("mine");
			assertTrue(assertThrows(ArchiveException.class, () -> open.drafts().apply(draft)).getMessage()
					.contains("not saved"));
			assertEquals("mine", open.archive().getName());
		}
		try (OpenArchive reader = fixture.store.open(root, Mode.READ)) {
			Draft draft = reader.drafts().newest(drafts).orElseThrow();
			refuses(reader, draft, "read-only");
			reader.archive().setName("mine");
			assertThrows(ArchiveException.class, () -> reader.drafts().write(drafts));
		}
	}

	@Test
	void aDiskThatFailsLeavesTheDraftBefore() throws IOException {
		String changed = fixture.drafted();
		FailingDisk disk = new FailingDisk();
		for (int step = 1; step < 30; step++) {
			try (OpenArchive open = new ArchiveStore(disk, DraftFixture.CLOCK, Migrations.NONE)
					.open(root, Mode.EDIT)) {
				open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
				open.archive().setName("later");
				disk.failAt(step);
				boolean failed = false;
				try {
					open.drafts().write(drafts);
				} catch (ArchiveException e) {
					failed = true;
				}
				disk.failAt(0);
				Draft draft = open.drafts().newest(drafts).orElseThrow();
				assertEquals(Draft.Fit.FITS, draft.fit());
				if (!failed) {
					assertTrue(step > 4, "step " + step);
					return;
				}
			}
			try (OpenArchive open = open()) {
				open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
				String found = ModelText.of(open.archive());
				assertTrue(found.equals(changed) || open.archive().getName().equals("later"));
			}
		}
		throw new AssertionError("it never came through");
	}

	private static final class FailingDisk implements Disk {

		private int left;

		void failAt(int step) {
			left = step;
		}

		private void step() throws IOException {
			if (left > 0 && --left == 0) {
				throw new IOException("the disk fails");
			}
		}

		@Override
		public Sink write(Path file) throws IOException {
			step();
			Sink sink = Disk.super.write(file);
			return new Sink() {
				@Override
				public void write(int b) throws IOException {
					step();
					sink.write(b);
				}

				@Override
				public void write(byte[] bytes, int from, int length) throws IOException {
					step();
					sink.write(bytes, from, length);
				}

				@Override
				public void sync() throws IOException {
					step();
					sink.sync();
				}

				@Override
				public void close() throws IOException {
					sink.close();
				}
			};
		}

		@Override
		public void move(Path from, Path to) throws IOException {
			step();
			Disk.super.move(from, to);
		}

		@Override
		public void syncFolder(Path of) throws IOException {
			step();
			Disk.super.syncFolder(of);
		}
	}
}
