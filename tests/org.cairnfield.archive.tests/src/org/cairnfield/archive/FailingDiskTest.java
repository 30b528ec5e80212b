package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each single step of a save is refused by the disk in turn. */
class FailingDiskTest {

	/** Refuses one step, or that and all later ones. */
	private static final class FailingDisk implements Disk {

		private long failAt = Long.MAX_VALUE;
		private boolean forGood;
		private long steps;

		private void step() throws IOException {
			steps++;
			if (steps == failAt || forGood && steps > failAt) {
				throw new IOException("No space left on device");
			}
		}

		@Override
		public Sink write(Path file) throws IOException {
			step();
			Sink sink = Disk.super.write(file);
			return new Sink() {
				@Override
				public void write(int b) throws IOException {
					write(new byte[] { (byte) b }, 0, 1);
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
		public void createFolder(Path folder) throws IOException {
			step();
			Disk.super.createFolder(folder);
		}

		@Override
		public void syncFolder(Path folder) throws IOException {
			step();
			Disk.super.syncFolder(folder);
		}
	}

	@TempDir
	Path folder;

	@Test
	void leavesTheOldStateAndNothingBesideItWhereOneStepFails() throws IOException {
		failAtEveryStep(false);
	}

	@Test
	void leavesTheOldStateAndNothingBesideItWhereAllStepsFailFromOneOn() throws IOException {
		failAtEveryStep(true);
	}

	private void failAtEveryStep(boolean forGood) throws IOException {
		FailingDisk disk = new FailingDisk();
		int refused = 0;
		int unfinished = 0;
		Path root = folder.resolve("archive");
		try (OpenArchive open = new ArchiveStore(disk, Clock.systemUTC(), Migrations.NONE).create(root, "n")) {
			SampleArchives.fill(open.archive(), 3, 2, 20);
			open.save();
			SortedMap<String, String> before = FolderText.of(root);
			String old = open.digest();
			change(open.archive());
			String fresh = open.digest();
			for (long fail = 1;; fail++) {
				disk.failAt = disk.steps + fail;
				disk.forGood = forGood;
				try {
					open.save();
					assertTrue(fail > 15, "only " + fail + " steps");
					break;
				} catch (ArchiveException e) {
					assertTrue(open.isModified(), "the model still has what was not saved");
					if (e.getMessage().startsWith("nothing was saved")) {
						assertTrue(e.getMessage().matches(".*(is full|a limit for this account).*"), e::getMessage);
						assertEquals(before, FolderText.of(root));
						assertEquals(old, digestForReaders(root));
						assertEquals(List.of(), pending(root), "at step " + fail);
						refused++;
					} else {
						assertTrue(e.getMessage().startsWith("the save counts"), e::getMessage);
						assertEquals(fresh, digestForReaders(root), "at step " + fail);
						unfinished++;
						disk.failAt = Long.MAX_VALUE;
						disk.forGood = false;
						restart(open, root, before);
					}
				}
				disk.failAt = Long.MAX_VALUE;
				disk.forGood = false;
			}
			disk.failAt = Long.MAX_VALUE;
			assertEquals(fresh, digestForReaders(root));
			assertFalse(open.isModified());
		}
		assertTrue(refused > 5 && unfinished > 1, refused + " refused, " + unfinished + " unfinished");
	}

	private static String digestForReaders(Path root) throws IOException {
		try (OpenArchive reader = new ArchiveStore().open(root, Mode.READ)) {
			assertEquals(List.of(), reader.damages());
			return reader.digest();
		}
	}

	private static List<String> pending(Path root) throws IOException {
		try (Stream<Path> files = Files.list(root.resolve(".cairnfield/pending"))) {
			return files.map(Path::toString).toList();
		}
	}

	/** Finishes the save, then puts the old files back under the open archive, to be saved over again. */
	private static void restart(OpenArchive open, Path root, SortedMap<String, String> before) throws IOException {
		open.archive().setName("new name "); // so that there is something to be saved
		open.save();
		for (String path : FolderText.of(root).keySet()) {
			Files.delete(root.resolve(path));
		}
		for (var file : before.entrySet()) {
			Files.createDirectories(root.resolve(file.getKey()).getParent());
			Files.write(root.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.ISO_8859_1));
		}
		open.reload();
		change(open.archive());
	}

	private static void change(Archive archive) {
		Survey survey = SampleArchives.survey(archive, "survey-0");
		survey.getSamples().setTable(survey.table().edit().reason(1, "why").done());
		archive.getLedgers().clear();
		archive.setName("new name");
	}
}
