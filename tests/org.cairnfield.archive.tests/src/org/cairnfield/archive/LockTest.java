package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

import org.cairnfield.archive.fault.LockOwner;
import org.cairnfield.archive.fault.LockedException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.torture.ChildJvm;
import org.junit.jupiter.api.BeforeEach;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockTest {

	private final ArchiveStore store = new ArchiveStore();

	@TempDir
	Path folder;
	private Path root;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = store.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 1, 5);
			open.save();
		}
	}

	private void leaveLock(String host, long pid, String since) throws IOException {
		Files.writeString(root.resolve(".cairnfield/lock"), "This archive is open for writing.\nuser: mq\nhost: " + host
				+ "\nprocess: " + pid + "\nstarted: 1\nsince: " + since + "\ntoken: t\n");
	}

	private String ownHost() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			return store.lockOwner(root).host();
		}
	}

	/** A number that no process has, since it had one that has ended. */
	private static long pidOfNobody() throws IOException {
		Process process = new ProcessBuilder("true").start();
		process.onExit().join();
		return process.pid();
	}

	@Test
	void keepsASecondWriterOutAndNamesTheFirst() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			LockedException refused = assertThrows(LockedException.class, () -> store.open(root, Mode.EDIT));
			assertEquals(System.getProperty("user.name"), refused.owner().user());
			assertEquals(ProcessHandle.current().pid(), refused.owner().pid());
			assertTrue(refused.getMessage().contains("process " + refused.owner().pid()), refused::getMessage);
			assertFalse(open.save().iterator().hasNext(), "the first goes on");
		}
		store.open(root, Mode.EDIT).close();
		assertEquals(null, store.lockOwner(root));
	}

	@Test
	void letsReadersInMeanwhile() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT); OpenArchive reader = store.open(root, Mode.READ)) {
			assertEquals(open.digest(), reader.digest());
			assertTrue(reader.readOnlyReason().isPresent());
		}
	}

	@Test
	void tellsAReaderThatSomebodyHasSavedMeanwhile() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT); OpenArchive reader = store.open(root, Mode.READ)) {
			assertFalse(reader.isOutdated());
			open.archive().setName("another name");
			open.save();
			assertTrue(reader.isOutdated());
			assertFalse(open.isOutdated(), "its own save");
			reader.reload();
			assertFalse(reader.isOutdated());
		}
	}

	/** Opens an archive and holds it until it is told to go. */
	public static final class Holder {
		private Holder() {
		}

		public static void main(String[] arguments) throws IOException {
			try (OpenArchive open = new ArchiveStore().open(Path.of(arguments[0]), Mode.EDIT)) {
				System.out.println("holding");
				System.out.flush();
				System.in.read();
			}
			System.out.println("gone");
		}
	}

	@Test
	void keepsASecondProcessOut() throws IOException {
		try (ChildJvm child = ChildJvm.start(Holder.class, root.toString())) {
			assertEquals("holding", child.line());
			LockedException refused = assertThrows(LockedException.class, () -> store.open(root, Mode.EDIT));
			assertEquals(child.pid(), refused.owner().pid());
			assertThrows(LockedException.class, () -> store.releaseLock(root), "it lives");
			child.send("go");
			assertEquals("gone", child.line());
		}
		store.open(root, Mode.EDIT).close();
	}

	@Test
	void takesOverFromAProcessThatWasKilled() throws IOException {
		long pid;
		try (ChildJvm child = ChildJvm.start(Holder.class, root.toString())) {
			assertEquals("holding", child.line());
			pid = child.pid();
			child.kill();
		}
		assertEquals(pid, store.lockOwner(root).pid());
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertEquals(pid, open.tookOverFrom().orElseThrow().pid());
			assertEquals(Optional.empty(), open.readOnlyReason());
		}
	}

	@Test
	void takesOverAStaleLockWhateverItsTime() throws IOException {
		String host = ownHost();
		for (String since : new String[] { "1999-01-01T00:00:00Z", "2999-01-01T00:00:00Z" }) {
			leaveLock(host, pidOfNobody(), since);
			try (OpenArchive open = store.open(root, Mode.EDIT)) {
				assertEquals("mq", open.tookOverFrom().map(LockOwner::user).orElseThrow());
			}
		}
	}

	@Test
	void takesOverFromAProcessWhoseNumberAnotherOneGot() throws IOException {
		leaveLock(ownHost(), ProcessHandle.current().parent().orElseThrow().pid(), "2031-01-01T00:00:00Z");
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			assertTrue(open.tookOverFrom().isPresent(), "that process began at another time than the lock says");
		}
	}

	@Test
	void respectsTheLockOfAnotherMachineUntilItIsReleased() throws IOException {
		leaveLock("lantern-store", pidOfNobody(), "2031-05-01T10:00:00Z");
		LockedException refused = assertThrows(LockedException.class, () -> store.open(root, Mode.EDIT));
		assertEquals(new LockOwner("mq", "lantern-store", refused.owner().pid(), Instant.parse("2031-05-01T10:00:00Z")),
				refused.owner());
		assertTrue(refused.getMessage().contains("mq on lantern-store"), refused::getMessage);
		store.open(root, Mode.READ).close();
		store.releaseLock(root);
		store.open(root, Mode.EDIT).close();
	}

	@Test
	void takesALockThatCannotBeReadForNobodys() throws IOException {
		Files.write(root.resolve(".cairnfield/lock"), new byte[] { 0, 1, 2, (byte) 0xff });
		store.open(root, Mode.EDIT).close();
	}

	@Test
	void savesNothingOnceItsLockWasTakenAway() throws IOException {
		try (OpenArchive open = store.open(root, Mode.EDIT)) {
			leaveLock("lantern-store", 7, "2031-05-01T10:00:00Z");
			open.archive().setName("mine");
			LockedException refused = assertThrows(LockedException.class, open::save);
			assertTrue(refused.getMessage().contains("lantern-store"), refused::getMessage);
			assertTrue(open.isModified());
		}
		assertTrue(Files.exists(root.resolve(".cairnfield/lock")), "the lock of the other stays");
	}

	@Test
	void doesNotMindAClockThatGoesBackwards() throws IOException {
		Person person = Person.named("M.Q.");
		for (String time : new String[] { "2031-05-02T10:00:00Z", "2031-05-01T10:00:00Z", "1980-01-01T00:00:00Z" }) {
			ArchiveStore then = new ArchiveStore(Clock.fixed(Instant.parse(time), ZoneOffset.UTC));
			try (OpenArchive open = then.open(root, Mode.EDIT)) {
				open.archive().setName(time);
				assertTrue(open.savePoint(person, null).isPresent());
			}
		}
		try (var history = History.of(root)) {
			var points = history.list(10);
			assertEquals(3, points.size());
			assertEquals("1980-01-01T00:00:00Z", history.open(points.get(0)).archive().getName(),
					"the latest comes first");
			assertEquals(Instant.parse("1980-01-01T00:00:00Z"), points.get(0).time());
			assertEquals("2031-05-02T10:00:00Z", history.open(points.get(2)).archive().getName());
		}
	}

	@Test
	void makesTheFoldersAboveANewArchive() throws IOException {
		Path deep = folder.resolve("museums/2031/quay");
		store.create(deep, "quay").close();
		try (OpenArchive open = store.open(deep, Mode.READ)) {
			assertEquals("quay", open.archive().getName());
			assertEquals(open.digest(), OpenArchive.digest(EcoreUtil.copy(open.archive())),
					"a copy has the same content");
		}
	}

	@Test
	void tellsWhereThereIsNoArchive() throws IOException {
		Path empty = Files.createDirectory(folder.resolve("empty"));
		assertTrue(assertThrows(IOException.class, () -> store.open(empty, Mode.EDIT)).getMessage()
				.contains("holds no archive"));
		assertFalse(Files.exists(empty.resolve(".cairnfield")), "and nothing was left there");
		assertTrue(assertThrows(IOException.class, () -> store.open(folder.resolve("none"), Mode.READ)).getMessage()
				.contains("no folder"));
		assertTrue(assertThrows(IOException.class, () -> store.create(root, "n")).getMessage().contains("not empty"));
	}
}
