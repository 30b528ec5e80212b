package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.values.SampleTable;
import org.junit.jupiter.api.Test;

class HistoryUndoTest extends HistoryFixture {

	@Test
	void undoesOneSavePointAndKeepsLaterOnes() throws IOException {
		survey("survey-0").getSamples()
				.setTable(survey("survey-0").table().edit().reason(0, "outside").position(2, 9, 9).done());
		open.archive().getDevices().get(0).setName("wrong");
		SavePoint wrong = savePoint();
		survey("survey-0").getSamples().setTable(survey("survey-0").table().edit().reason(5, "later").done());
		open.archive().getAccessPoints().get(7).setReason("later");
		survey("survey-2").getSamples().setTable(survey("survey-2").table().edit().reason(5, "later").done());
		savePoint();

		SavePoint undone = open.undo(wrong, PERSON, null);
		ArchiveDiff rest = history.compare(first, undone);
		assertEquals(2, rest.surveys().size());
		assertEquals(1, rest.surveys().get(0).samples().size(), "the later change stays");
		assertEquals("later", rest.surveys().get(0).samples().get(0).after().reason());
		assertEquals(List.of("00005e005307"), rest.objects().stream().map(ObjectChange::id).toList());
		assertTrue(undone.summary().startsWith("Undo " + wrong.shortId()), undone::summary);
		assertFalse(open.isModified());
		assertThrows(ArchiveException.class, () -> open.undo(wrong, PERSON, null), "it is undone already");
	}

	@Test
	void undoesTheLastSavePointExactly() throws IOException {
		var files = FolderText.of(open.folder());
		open.archive().getSites().remove(0);
		open.archive().getSplits().remove(0);
		SavePoint second = savePoint();
		open.undo(second, PERSON, null);
		assertEquals(files, FolderText.of(open.folder()));
	}

	@Test
	void undoesWhatWasAdded() throws IOException {
		var builder = SampleTable.builder();
		SampleTable table = survey("survey-0").table();
		for (int row = 0; row < table.size(); row++) {
			builder.add(table.sample(row));
		}
		survey("survey-0").getSamples().setTable(builder.sample("added", 0, 1, 2).build());
		SavePoint adding = savePoint();
		survey("survey-0").getSamples().setTable(survey("survey-0").table().edit().reason(0, "later").done());
		savePoint();
		open.undo(adding, PERSON, null);
		assertEquals(-1, survey("survey-0").table().row("added"));
		assertEquals("later", survey("survey-0").table().reason(0));
	}

	@Test
	void refusesToUndoWhatWasTouchedAgain() throws IOException {
		survey("survey-0").getSamples().setTable(survey("survey-0").table().edit().reason(0, "outside").done());
		SavePoint wrong = savePoint();
		survey("survey-0").getSamples().setTable(survey("survey-0").table().edit().reason(0, "far outside").done());
		savePoint();
		var files = FolderText.of(open.folder());
		ArchiveException refused = assertThrows(ArchiveException.class, () -> open.undo(wrong, PERSON, null));
		assertTrue(
				refused.getMessage()
						.contains("survey-0.samples was changed again since, in '" + survey("survey-0").table().id(0)),
				refused::getMessage);
		assertEquals(files, FolderText.of(open.folder()));
		assertEquals(3, history.list(10).size());
	}

	@Test
	void refusesToUndoTheBeginning() {
		assertThrows(ArchiveException.class, () -> open.undo(first, PERSON, null));
	}

	@Test
	void refusesToGoBackOverChangesThatWereNotSaved() throws IOException {
		open.archive().setName("other");
		SavePoint second = savePoint();
		open.archive().setName("not saved");
		assertTrue(assertThrows(ArchiveException.class, () -> open.restore(first, PERSON, null)).getMessage()
				.contains("not saved"));
		assertThrows(ArchiveException.class, () -> open.undo(second, PERSON, null));
		assertEquals("not saved", open.archive().getName());
	}
}
