package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftTest {

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

	private Map<String, String> files() throws IOException {
		try (Stream<Path> all = Files.walk(root)) {
			Map<String, String> files = new TreeMap<>();
			for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)
					.filter(f -> !f.startsWith(root.resolve(".cairnfield")))::iterator) {
				files.put(file.toString(), new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
			}
			return files;
		}
	}

	@Test
	void bringsBackEveryKindOfChangeAsUnsavedChanges() throws IOException {
		Map<String, String> before = files();
		String changed = fixture.drafted();
		assertEquals(before, files());
		String saved;
		try (OpenArchive open = open()) {
			assertNotEquals(changed, ModelText.of(open.archive()));
			open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
			assertEquals(changed, ModelText.of(open.archive()));
			assertTrue(open.isModified());
			open.save();
			saved = open.digest();
			assertEquals(Optional.empty(), open.drafts().newest(drafts));
		}
		try (OpenArchive open = open()) {
			assertEquals(List.of(), open.damages());
			assertEquals(changed, ModelText.of(open.archive()));
			assertEquals(saved, open.digest());
		}
	}

	@Test
	void tellsWhenAndByWhomItWasWrittenAndWhatItChanges() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			Draft draft = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.FITS, draft.fit());
			assertEquals("", draft.reason());
			assertEquals(DraftFixture.NOON, draft.written());
			assertEquals(ProcessHandle.current().pid(), draft.by().orElseThrow().pid());
			assertEquals(System.getProperty("user.name"), draft.by().orElseThrow().user());
			assertTrue(
					draft.paths().contains("archive.xmi")
							&& draft.paths().stream().anyMatch(p -> p.endsWith("survey-0.samples")),
					draft::toString);
		}
	}

	@Test
	void holdsOnlyWhatWasChanged() throws IOException {
		try (OpenArchive open = open()) {
			Survey survey = SampleArchives.survey(open.archive(), "survey-0");
			survey.getSamples().setTable(survey.table().edit().position(0, 3, 4).done());
			open.drafts().write(drafts);
			assertEquals(1, open.drafts().newest(drafts).orElseThrow().paths().size());
		}
	}

	@Test
	void isOneChangeThatCanBeUndoneAndKeepsObjects() throws IOException {
		String changed = fixture.drafted();
		try (OpenArchive open = open()) {
			String before = ModelText.of(open.archive());
			Survey kept = SampleArchives.survey(open.archive(), "survey-0");
			SampleTable untouched = SampleArchives.survey(open.archive(), "survey-3").table();
			DraftChange change = open.drafts().change(open.drafts().newest(drafts).orElseThrow());
			assertFalse(open.isModified());
			change.apply();
			assertSame(kept, SampleArchives.survey(open.archive(), "survey-0"));
			assertSame(untouched, SampleArchives.survey(open.archive(), "survey-3").table());
			assertTrue(change.affected().contains(kept.getSamples()));
			change.undo();
			assertEquals(before, ModelText.of(open.archive()));
			change.apply();
			assertEquals(changed, ModelText.of(open.archive()));
			change.undo();
			assertEquals(Set.of(), open.save());
		}
	}

	@Test
	void doesNothingWhereNothingIsUnsaved() throws IOException {
		try (OpenArchive open = open()) {
			assertFalse(open.drafts().write(drafts));
			assertFalse(Files.exists(drafts));
			assertEquals(Optional.empty(), open.drafts().newest(drafts));
		}
	}

	@Test
	void aLaterDraftReplacesTheOneBeforeOfItsSession() throws IOException {
		try (OpenArchive open = open()) {
			DraftFixture.change(open);
			open.drafts().write(drafts);
			open.archive().setName("second");
			open.drafts().write(drafts);
			assertEquals(1, fixture.draftFiles());
		}
		try (OpenArchive open = open()) {
			open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
			assertEquals("second", open.archive().getName());
		}
	}

	@Test
	void leavesAnEarlierSessionsDraftAloneUntilItIsDecidedUpon() throws IOException {
		String changed = fixture.drafted();
		try (OpenArchive open = open()) {
			open.archive().setName("something else");
			open.drafts().write(drafts);
			assertEquals(2, open.drafts().all(drafts).size());
			open.save();
			Draft left = open.drafts().newest(drafts).orElseThrow();
			assertEquals(Draft.Fit.OTHER_STATE, left.fit());
		}
		try (OpenArchive open = open(); History history = open.history()) {
			open.restore(history.last(), Person.named("M.Q."), null); // the state that it was based on
			open.drafts().apply(open.drafts().newest(drafts).orElseThrow());
			assertEquals(changed, ModelText.of(open.archive()));
			open.drafts().write(drafts);
			assertEquals(1, open.drafts().all(drafts).size());
		}
	}

	@Test
	void namesThePersonAndCountsWhatWasChanged() throws IOException {
		try (OpenArchive open = open()) {
			Survey survey = SampleArchives.survey(open.archive(), "survey-0");
			survey.getSamples().setTable(survey.table().edit().reason(0, "spoilt").reason(1, "spoilt").done());
			open.drafts().write(drafts, "A. Steward");
		}
		try (OpenArchive open = open()) {
			Draft draft = open.drafts().pending(drafts).get(0);
			assertEquals("A. Steward", draft.person());
			assertEquals(List.of("2 samples set aside"), open.drafts().difference(draft).summary());
		}
	}

	@Test
	void whatIsAgainAsSavedIsNoDraft() throws IOException {
		try (OpenArchive open = open()) {
			String name = open.archive().getName();
			open.archive().setName("changed");
			open.drafts().write(drafts);
			open.archive().setName(name);
			open.drafts().write(drafts);
			assertEquals(Draft.Fit.SAVED, open.drafts().newest(drafts).orElseThrow().fit());
			open.drafts().discardOwn();
			assertEquals(0, fixture.draftFiles());
		}
	}

	@Test
	void aDraftThatWasBroughtBackStaysUntilItsChangesAreSavedOrThrownAway() throws IOException {
		fixture.drafted();
		try (OpenArchive open = open()) {
			DraftChange change = open.drafts().change(open.drafts().pending(drafts).get(0));
			change.apply();
			open.drafts().write(drafts);
			assertEquals(List.of(), open.drafts().pending(drafts));
			assertEquals(1, open.drafts().all(drafts).size(), "a start after a crash would offer one, with all of it");
			change.undo();
			open.drafts().discardOwn();
			assertEquals(1, open.drafts().pending(drafts).size(), "undone, it is offered again");
		}
		try (OpenArchive open = open()) {
			open.drafts().change(open.drafts().pending(drafts).get(0)).apply();
			open.drafts().write(drafts);
			open.drafts().discardUnsaved();
			assertEquals(0, fixture.draftFiles());
		}
	}

	@Test
	void anUnchangedDraftIsNotWrittenAgain() throws IOException {
		try (OpenArchive open = open()) {
			DraftFixture.change(open);
			open.drafts().write(drafts);
			Path file = open.drafts().newest(drafts).orElseThrow().file();
			Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
			open.drafts().write(drafts);
			assertEquals(key, Files.readAttributes(file, BasicFileAttributes.class).fileKey());
			assertEquals(1, fixture.draftFiles());
		}
	}

	@Test
	void staysOutOfTheArchiveAndOfOtherArchives() throws IOException {
		Path other = folder.resolve("elsewhere").resolve("marrow-quay");
		Files.createDirectories(other.getParent());
		fixture.store.create(other, "another").close();
		fixture.drafted();
		try (OpenArchive open = fixture.store.open(other, Mode.EDIT)) {
			assertEquals(List.of(), open.drafts().all(drafts));
			open.archive().setName("changed");
			assertThrows(ArchiveException.class, () -> open.drafts().write(other.resolve("drafts")));
		}
	}
}
