package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The history names everybody for their own work, also where one saves and another makes the save point. */
class SavedByTest {

	private static final Person STEWARD = Person.named("A. Steward");
	private static final Person LEAD = Person.named("T. Lead");

	@TempDir
	Path folder;

	private DraftFixture fixture;

	@BeforeEach
	void makeAnArchive() throws IOException {
		fixture = new DraftFixture(folder);
	}

	private static List<String> whoDidWhat(OpenArchive open) throws IOException {
		try (History history = open.history()) {
			return history.list(10).stream().map(SavePoint::person).toList();
		}
	}

	@Test
	void whatSomebodySavedIsRecordedUnderThatNameByTheNextSavePoint() throws IOException {
		try (OpenArchive open = fixture.open()) {
			open.archive().setName("by the steward");
			open.save(STEWARD);
			assertEquals(Optional.of("A. Steward"), open.savedBy());
		}
		try (OpenArchive open = fixture.open()) {
			open.savePoint(LEAD, "prepared");
			assertEquals(List.of("A. Steward", "M.Q."), whoDidWhat(open), "the lead changed nothing");
			assertEquals(Optional.empty(), open.savedBy());
		}
	}

	@Test
	void twoPersonsWhoSaveOneAfterTheOtherGetASavePointEach() throws IOException {
		try (OpenArchive open = fixture.open()) {
			open.archive().setName("by the steward");
			open.save(STEWARD);
			open.archive().getSites().get(0).setName("by the lead");
			open.save(LEAD);
			assertEquals(List.of("A. Steward", "M.Q."), whoDidWhat(open));
			open.archive().getSites().get(1).setName("by the lead too");
			open.savePoint(LEAD, null);
			assertEquals(List.of("T. Lead", "A. Steward", "M.Q."), whoDidWhat(open));
			try (History history = open.history()) {
				assertEquals("by the steward", history.open(history.list(2).get(1)).archive().getName());
			}
		}
	}

	@Test
	void thePresentStateIsRecordedUnderItsNameBeforeAnotherRestores() throws IOException {
		try (OpenArchive open = fixture.open(); History history = open.history()) {
			SavePoint first = history.last();
			open.archive().setName("by the steward");
			open.save(STEWARD);
			open.restore(first, LEAD, null);
			assertEquals(List.of("T. Lead", "A. Steward", "M.Q."), whoDidWhat(open));
		}
	}

	@Test
	void theSamePersonGetsOneSavePoint() throws IOException {
		try (OpenArchive open = fixture.open()) {
			open.archive().setName("once");
			open.save(STEWARD);
			open.archive().setName("twice");
			open.savePoint(STEWARD, null);
			assertEquals(List.of("A. Steward", "M.Q."), whoDidWhat(open));
		}
	}

	@Test
	void aNoteThatNobodyCanHaveWrittenNamesNobody() throws IOException {
		Files.writeString(fixture.root.resolve(".cairnfield/saved-by"), "<nobody\u001b[31m>\n");
		try (OpenArchive open = fixture.open()) {
			assertEquals(Optional.empty(), open.savedBy());
			open.archive().setName("changed");
			open.savePoint(LEAD, null);
			assertEquals(List.of("T. Lead", "M.Q."), whoDidWhat(open));
		}
	}
}
