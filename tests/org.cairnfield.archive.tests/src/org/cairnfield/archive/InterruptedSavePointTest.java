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
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.archive.internal.disk.Disk;
import org.cairnfield.archive.internal.text.Migrations;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A save point whose program is killed, and what the next person finds. */
class InterruptedSavePointTest {

	private static final Person STEWARD = new Person("D.S.", "ds@example.org");
	private static final Person LEAD = Person.named("T.L.");
	private static final Instant MONDAY = Instant.parse("2031-05-05T10:00:00Z");
	private static final Instant TUESDAY = Instant.parse("2031-05-06T10:00:00Z");

	/** Ends the program. */
	private static final class KilledError extends Error {
		private static final long serialVersionUID = 1;
	}

	/** Ends the program at the first step of a kind on a file of a name. */
	private record Deadly(BiPredicate<String, String> when) implements Disk {

		private void step(String what, Path file) {
			if (when.test(what, file.getFileName().toString())) {
				throw new KilledError();
			}
		}

		@Override
		public Sink write(Path file) throws IOException {
			step("write", file);
			return Disk.super.write(file);
		}

		@Override
		public void delete(Path file) throws IOException {
			step("delete", file);
			Disk.super.delete(file);
		}
	}

	private final ArchiveStore tuesday = new ArchiveStore(Clock.fixed(TUESDAY, ZoneOffset.UTC));

	@TempDir
	Path folder;
	private Path root;
	private SavePoint first;
	private String digest;

	@BeforeEach
	void makeArchive() throws IOException {
		root = folder.resolve("archive");
		try (OpenArchive open = tuesday.create(root, "n")) {
			SampleArchives.fill(open.archive(), 1, 2, 5);
			first = open.savePoint(LEAD, null).orElseThrow();
		}
	}

	private interface Work {
		void on(OpenArchive open) throws IOException;
	}

	/** The steward works on Monday, until the program is killed. */
	private void killedAt(String what, String file, Work work) throws IOException {
		ArchiveStore monday = new ArchiveStore(new Deadly((step, name) -> step.equals(what) && name.equals(file)),
				Clock.fixed(MONDAY, ZoneOffset.UTC), Migrations.NONE);
		try (OpenArchive open = monday.open(root, Mode.EDIT)) {
			assertThrows(KilledError.class, () -> work.on(open));
			digest = open.digest();
		}
	}

	private void change(OpenArchive open) {
		var survey = SampleArchives.survey(open.archive(), "survey-0");
		survey.getSamples().setTable(survey.table().edit().reason(0, "by the steward").done());
		open.archive().setName("by the steward");
	}

	private void changeAndRecord(OpenArchive open) throws IOException {
		change(open);
		open.savePoint(STEWARD, "After the walk.");
	}

	private List<SavePoint> points() throws IOException {
		try (History history = History.of(root)) {
			return history.list(10);
		}
	}

	private void assertIsTheStewards(SavePoint point) throws IOException {
		assertEquals("D.S.", point.person());
		assertEquals(MONDAY, point.time());
		assertTrue(point.message().contains("After the walk.") && point.message().contains("By: D.S."), point::message);
		try (History history = History.of(root)) {
			assertEquals(digest, history.open(point).digest(), "all of the steward's work, and nothing else");
		}
	}

	@Test
	void bearsThePersonWhoMadeItAndNotTheOneWhoFinishesIt() throws IOException {
		killedAt("delete", "journal", this::changeAndRecord);
		assertEquals(List.of(first), points());
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertTrue(open.notices().get(0).contains("D.S.") && open.notices().get(0).contains("finished now"),
					open.notices()::toString);
			open.archive().setName("by the lead");
			SavePoint lead = open.savePoint(LEAD, null).orElseThrow();
			assertEquals("T.L.", lead.person());
			assertFalse(lead.message().contains("D.S."), lead::message);
			List<SavePoint> points = points();
			assertEquals(List.of(lead, points.get(1), first), points);
			assertIsTheStewards(points.get(1));
		}
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertEquals(3, points().size(), "once is enough");
			assertEquals(List.of(), open.notices());
		}
	}

	@Test
	void finishesOneThatOnlyTheHistoryLacked() throws IOException {
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			change(open);
			open.save();
			digest = open.digest();
		}
		// as a program leaves it that is killed while it writes the commit
		Files.writeString(root.resolve(".cairnfield/save-point"),
				"A save point is being made.\nperson\tD.S.\nemail\tds@example.org\n"
						+ "time\t" + MONDAY + "\nopening\t\nwords\tAfter the walk.\nbefore\t" + first.id()
						+ "\nstate\t\nend\t\n");
		tuesday.open(root, Mode.EDIT).close();
		assertEquals(2, points().size());
		assertIsTheStewards(points().get(0));
	}

	@Test
	void takesANoteThatWasCutShortForNone() throws IOException {
		Files.writeString(root.resolve(".cairnfield/save-point"), "A save point is being made.\nperson\tD.S.\n");
		tuesday.open(root, Mode.EDIT).close();
		assertEquals(List.of(first), points());
		assertFalse(Files.exists(root.resolve(".cairnfield/save-point")));
	}

	@Test
	void makesNoneOfWhatWasNotSaved() throws IOException {
		killedAt("write", "1", this::changeAndRecord);
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.notices());
			assertEquals(Optional.empty(), open.savePoint(LEAD, null));
		}
		assertEquals(List.of(first), points());
		assertFalse(Files.exists(root.resolve(".cairnfield/save-point")));
	}

	@Test
	void makesNoSecondOneOfWhatIsInTheHistory() throws IOException {
		killedAt("delete", "save-point", this::changeAndRecord);
		assertIsTheStewards(points().get(0));
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.notices());
		}
		assertEquals(2, points().size());
	}

	@Test
	void finishesARestoreAsSuch() throws IOException {
		killedAt("delete", "journal", this::changeAndRecord);
		tuesday.open(root, Mode.EDIT).close();
		killedAt("delete", "journal", open -> open.restore(first, STEWARD, "Too much."));
		tuesday.open(root, Mode.EDIT).close();
		SavePoint restored = points().get(0);
		assertEquals("Restore " + first.shortId() + ": " + first.summary(), restored.summary());
		assertEquals("D.S.", restored.person());
		try (History history = History.of(root)) {
			assertEquals(history.open(first).digest(), history.open(restored).digest());
		}
	}

	@Test
	void waitsForAGitThatIsAtWork() throws IOException {
		killedAt("delete", "journal", this::changeAndRecord);
		Path lock = Files.createFile(root.resolve(".git/index.lock"));
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertTrue(
					open.notices().get(0).contains("could not be finished")
							&& open.notices().get(0).contains("index.lock"),
					open.notices()::toString);
			open.archive().setName("by the lead");
			Files.delete(lock);
			assertEquals("T.L.", open.savePoint(LEAD, null).orElseThrow().person());
			assertIsTheStewards(points().get(1));
			assertEquals(3, points().size());
		}
	}

	@Test
	void saysSoWhereItCannotBeFinishedAsItWas() throws IOException {
		killedAt("delete", "journal", this::changeAndRecord);
		Path lock = Files.createFile(root.resolve(".git/index.lock"));
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			open.archive().setName("by the lead");
			open.save(LEAD);
			assertThrows(ArchiveException.class, () -> open.savePoint(LEAD, null));
		}
		Files.delete(lock);
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertTrue(open.notices().get(0).contains("others have changed the files since"), open.notices()::toString);
			open.archive().setName("by the lead alone");
			assertEquals("T.L.", open.savePoint(LEAD, "Mine.").orElseThrow().person());
			assertEquals(3, points().size());
			SavePoint both = points().get(1);
			assertEquals("D.S. and T.L.", both.person());
			assertTrue(
					both.message()
							.contains("Holds also what D.S. began to record at 2031-05-05T10:00:00Z: After the walk."),
					both::message);
		}
		try (OpenArchive open = tuesday.open(root, Mode.EDIT)) {
			assertEquals(List.of(), open.notices());
		}
	}
}
