package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.fault.UnreachableException;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.task.Progress;
import org.cairnfield.model.Archive;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** What can go wrong with a remote and with what others send: nothing is lost, and a sentence says what to do. */
@Isolated
class ExchangeFaultsTest {

	private static final String ANN = "A. Steward";
	private static final String BEN = "B. Reviewer";

	@TempDir
	Path folder;

	private Clones clones(Path place) throws IOException {
		return new Clones(place, archive -> SampleArchives.fill(archive, 7, 2, 12), ANN, BEN);
	}

	/** Samples that no packing makes small. */
	private static void addMuch(Archive archive) {
		Random random = new Random(3);
		SampleTableBuilder table = SampleTable.builder();
		for (int n = 0; n < 4000; n++) {
			table.sample("S-" + Long.toHexString(random.nextLong()), 0, random.nextDouble() * 40,
					random.nextDouble() * 40);
		}
		SampleArchives.survey(archive, "survey-0").getSamples().setTable(table.build());
	}

	private static String tip(Clones clones) throws IOException {
		return new PlainGit(clones.remote()).run("rev-parse", "main");
	}

	@Test
	void aRemoteWhoseDiskIsFullKeepsWhatItHadAndTakesTheRestLater() throws IOException {
		try (MountedDisk disk = new MountedDisk(folder.resolve("disk"), "1m");
				Clones clones = new Clones(folder, disk.place().resolve("meeting.git"),
						archive -> SampleArchives.fill(archive, 7, 2, 12), ANN, BEN)) {
			Path filler = disk.place().resolve("filler");
			Files.write(filler,
					new byte[(int) Math.max(0, Files.getFileStore(disk.place()).getUsableSpace() - 20_000)]);
			clones.edit(ANN, ExchangeFaultsTest::addMuch);
			String before = tip(clones);
			String mine = clones.of(ANN).digest();
			assertThrows(UnreachableException.class, () -> clones.exchange(ANN));
			assertEquals(before, tip(clones));
			assertEquals(mine, clones.of(ANN).digest());
			assertEquals(0, clones.exchange(BEN).received().size(), "the other goes on");
			Files.delete(filler);
			assertEquals(1, clones.exchange(ANN).sent().size());
			assertEquals(1, clones.exchange(BEN).received().size());
		}
	}

	@Test
	void aRemoteThatIsReadOnlyStillGivesWhatOthersHaveSent() throws IOException {
		try (MountedDisk disk = new MountedDisk(folder.resolve("disk"), "4m");
				Clones clones = new Clones(folder, disk.place().resolve("meeting.git"),
						archive -> SampleArchives.fill(archive, 7, 2, 12), ANN, BEN)) {
			clones.edit(ANN, archive -> archive.setName("by Ann"));
			clones.exchange(ANN);
			clones.edit(BEN, archive -> archive.getSites().get(0).setName("by Ben"));
			disk.makeReadOnly();
			PrintStream terminal = System.err;
			ByteArrayOutputStream printed = new ByteArrayOutputStream();
			System.setErr(new PrintStream(printed, true));
			try {
				UnreachableException refused = assertThrows(UnreachableException.class, () -> clones.exchange(BEN));
				assertTrue(refused.getMessage().contains(clones.url().text()), refused::getMessage);
			} finally {
				System.setErr(terminal);
			}
			assertEquals("", printed.toString());
			assertEquals("by Ann", clones.archive(BEN).getName());
			assertEquals("by Ben", clones.archive(BEN).getSites().get(0).getName());
			assertEquals(List.of(), clones.of(BEN).damages());
			disk.makeWritable();
			assertEquals(2, clones.exchange(BEN).sent().size());
		}
	}

	@Test
	void whatAKilledFetchHasLeftIsNotInTheWayOfTheNext() throws IOException {
		try (Clones clones = clones(folder)) {
			clones.edit(ANN, archive -> archive.setName("by Ann"));
			clones.exchange(ANN);
			clones.close(BEN);
			Path objects = clones.folder(BEN).resolve(".git/objects");
			Path lock = objects.resolve("pack").resolve(nextPack(clones) + ".keep.lock");
			Files.createFile(lock);
			clones.open(BEN);
			assertThrows(UnreachableException.class, () -> clones.exchange(BEN)); // it may be somebody else's
			clones.close(BEN);
			List<Path> ours = List.of(lock, Path.of(lock.toString().replace(".keep.lock", ".pack")),
					objects.resolve("incoming_7.pack"),
					objects.resolve("pack/pack-1.keep"));
			Files.writeString(ours.get(1), "PACK");
			Files.writeString(ours.get(2), "PACK");
			Files.writeString(ours.get(3), "jgit fetch there\n");
			Path others = Files.writeString(objects.resolve("pack/pack-2.keep"), "");
			Files.writeString(clones.folder(BEN).resolve(".cairnfield/committing"), "A save point is being made.\n");
			clones.open(BEN);
			assertEquals(List.of(), ours.stream().filter(Files::exists).toList());
			assertTrue(Files.exists(others));
			assertEquals(1, clones.exchange(BEN).received().size());
			assertEquals("by Ann", clones.archive(BEN).getName());
		}
	}

	@Test
	void whatAKilledExchangeHasLeftInASharedFolderIsClearedAfterAMinute() throws IOException {
		try (Clones clones = clones(folder)) {
			clones.edit(ANN, archive -> archive.setName("by Ann"));
			clones.close(ANN);
			Path copy = copy(clones.remote(), "copy.git");
			Path trial = copy(clones.folder(ANN), "trial");
			new PlainGit(trial).run("config", "remote.origin.url", copy.toString());
			Set<String> before = packs(copy);
			try (OpenArchive open = new ArchiveStore().open(trial, Mode.EDIT)) {
				assertEquals(1, open.exchange().run(Person.named(ANN), null, true, Progress.NONE).sent().size());
			}
			String pack = packs(copy).stream().filter(name -> !before.contains(name)).findFirst().orElseThrow();
			clones.open(ANN);
			Path left = clones.remote().resolve("objects/pack").resolve(pack + ".pack");
			Files.writeString(left, "PACK");
			String tip = tip(clones);
			UnreachableException refused = assertThrows(UnreachableException.class, () -> clones.exchange(ANN));
			assertTrue(refused.getMessage().contains(left + " exists"), refused::getMessage);
			assertEquals(tip, tip(clones));
			Files.setLastModifiedTime(left, FileTime.from(Instant.now().minusSeconds(90)));
			assertEquals(1, clones.exchange(ANN).sent().size());
			new PlainGit(clones.remote()).run("fsck", "--strict");
		}
	}

	/** Name of the pack that a fetch of Ben's will bring, as a copy of his folder finds out. */
	private String nextPack(Clones clones) throws IOException {
		Path copy = copy(clones.folder(BEN), "copy");
		Set<String> before = packs(copy.resolve(".git"));
		try (OpenArchive open = new ArchiveStore().open(copy, Mode.EDIT)) {
			open.exchange().look(Progress.NONE);
		}
		return packs(copy.resolve(".git")).stream().filter(name -> !before.contains(name)).findFirst().orElseThrow();
	}

	private Path copy(Path from, String name) throws IOException {
		Path copy = folder.resolve(name);
		try (Stream<Path> files = Files.walk(from)) {
			for (Path file : (Iterable<Path>) files::iterator) {
				Files.copy(file, copy.resolve(from.relativize(file).toString()));
			}
		}
		return copy;
	}

	private static Set<String> packs(Path git) throws IOException {
		try (Stream<Path> files = Files.list(git.resolve("objects/pack"))) {
			return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".pack"))
					.map(name -> name.replace(".pack", ""))
					.collect(Collectors.toSet());
		}
	}

	@Test
	void whatANewerProgramHasWrittenDoesNotComeIn() throws IOException {
		try (Clones clones = clones(folder)) {
			clones.close(BEN);
			Path ledger = clones.folder(BEN).resolve("ledger/mq.ledger");
			Files.writeString(ledger, Files.readString(ledger).replace("cairnfield ledger 1", "cairnfield ledger 99"));
			PlainGit git = new PlainGit(clones.folder(BEN));
			git.run("commit", "-qam", "newer");
			git.run("push", "-q", "origin", "main");
			String before = clones.of(ANN).digest();
			DamagedException refused = assertThrows(DamagedException.class, () -> clones.exchange(ANN));
			assertTrue(refused.getMessage().contains("newer Cairnfield"), refused::getMessage);
			assertEquals(before, clones.of(ANN).digest());
			assertEquals("", new PlainGit(clones.folder(ANN)).run("status", "--porcelain"));
			clones.open(BEN);
		}
	}

	@Test
	void aMergeByPlainGitThatHasDroppedWorkDoesNotComeIn() throws IOException {
		try (Clones clones = clones(folder)) {
			clones.close(BEN);
			PlainGit git = new PlainGit(clones.folder(BEN));
			git.run("checkout", "-qb", "side");
			Path ledger = clones.folder(BEN).resolve("ledger/mq.ledger");
			clones.open(BEN);
			clones.edit(BEN, archive -> archive.getSites().get(0).getSurveys().get(0).setId("taken-in-aside"));
			clones.close(BEN);
			git.run("checkout", "-q", "main");
			Files.writeString(clones.folder(BEN).resolve("NOTES.txt"), "x");
			git.run("add", "NOTES.txt");
			git.run("commit", "-qm", "notes");
			git.run("merge", "-q", "-s", "ours", "--no-edit", "side");
			git.run("push", "-q", "origin", "main");
			DamagedException refused = assertThrows(DamagedException.class, () -> clones.exchange(ANN));
			assertTrue(refused.getMessage().contains("has dropped 1 survey (taken-in-aside)"), refused::getMessage);
			assertTrue(Files.exists(ledger));
			assertFalse(Files.exists(clones.folder(ANN).resolve("NOTES.txt")));
			clones.open(BEN);
		}
	}

	@Test
	void aClockThatIsAYearBehindLosesNothing() throws IOException {
		try (Clones clones = clones(folder)) {
			clones.close(BEN);
			ArchiveStore late = new ArchiveStore(Clock.fixed(Instant.parse("2030-05-01T10:00:00Z"), ZoneOffset.UTC));
			clones.edit(ANN, archive -> archive.setName("by Ann"));
			clones.exchange(ANN);
			try (OpenArchive ben = late.open(clones.folder(BEN), Mode.EDIT)) {
				ben.archive().getSites().get(0).setName("by Ben");
				ben.exchange().run(Person.named(BEN), null, true, Progress.NONE);
			}
			clones.open(BEN);
			assertEquals(2, clones.exchange(ANN).received().size());
			assertEquals(clones.of(BEN).digest(), clones.of(ANN).digest());
			assertEquals("by Ben", clones.archive(ANN).getSites().get(0).getName());
			assertEquals("by Ann", clones.archive(ANN).getName());
		}
	}

	@Test
	void anArchiveThatIsAtNoBranchSaysHowToGetBack() throws IOException {
		try (Clones clones = clones(folder)) {
			new PlainGit(clones.folder(ANN)).run("checkout", "-q", "--detach");
			clones.archive(ANN).setName("by Ann");
			ArchiveException refused = assertThrows(ArchiveException.class, () -> clones.exchange(ANN));
			assertTrue(refused.getMessage().contains("git switch main"), refused::getMessage);
			assertEquals("by Ann", clones.archive(ANN).getName());
			new PlainGit(clones.folder(ANN)).run("symbolic-ref", "HEAD", "refs/heads/main");
			assertEquals(1, clones.exchange(ANN).sent().size());
		}
	}
}
