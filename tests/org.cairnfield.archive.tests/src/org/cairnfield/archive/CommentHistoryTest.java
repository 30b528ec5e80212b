package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Comment;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.junit.jupiter.api.Test;

/** Comments stay once a save point holds them; the history lists them and assignments. */
class CommentHistoryTest extends HistoryFixture {

	private Comment comment(String id, String text) {
		Comment comment = ModelFactory.eINSTANCE.createComment();
		comment.setId(id);
		comment.setSubject("release 1.0.0");
		comment.setText(text);
		comment.setPerson("L. Lead");
		comment.setTime(NOW);
		open.archive().getComments().add(comment);
		return comment;
	}

	private List<String> texts() {
		return open.archive().getComments().stream().map(Comment::getText).toList();
	}

	private Site site() {
		return survey("survey-0").getSite();
	}

	@Test
	void listsWhatWasSaidAndWhoWasAssignedWhat() throws IOException {
		comment("c-1", "Ship <it> & \"go\"");
		Assignment assignment = ModelFactory.eINSTANCE.createAssignment();
		assignment.setId("a-1");
		assignment.setSplit("all");
		assignment.setReviewer("Ada");
		assignment.setShare("part 1/2");
		open.archive().getAssignments().add(assignment);
		ArchiveDiff added = history.changesOf(savePoint());
		assertEquals(
				List.of("a-1: part 1/2 of split all to Ada", "c-1 by L. Lead on release 1.0.0: Ship <it> & \"go\""),
				added.objects().stream().map(ObjectChange::id).toList());
		assertTrue(added.summary().containsAll(List.of("1 comment added", "1 assignment added")),
				added.summary()::toString);
		open.archive().getAssignments().get(0).setReviewer("Ben");
		ArchiveDiff changed = history.changesOf(savePoint());
		assertEquals(List.of("reviewer: Ada -> Ben"),
				changed.objects().get(0).fields().stream().map(Object::toString).toList());
		open.archive().getAssignments().clear();
		assertTrue(history.changesOf(savePoint()).summary().contains("1 assignment removed"));
		open.reload();
		assertEquals(List.of("Ship <it> & \"go\""), texts());
	}

	@Test
	void makesNoSavePointWithoutACommentOfAnEarlierOne() throws IOException {
		Comment comment = comment("c-1", "first");
		SavePoint held = savePoint();
		open.archive().getComments().remove(comment);
		ArchiveException gone = assertThrows(ArchiveException.class, this::savePoint);
		assertTrue(gone.getMessage().contains(
				"comment c-1 by L. Lead on release 1.0.0: first of an earlier save point is gone or other than it was"),
				gone.getMessage());
		assertEquals(held.id(), history.last().id());
		open.restore(held, PERSON, null);
		assertEquals(List.of("first"), texts());
	}

	@Test
	void makesNoSavePointWithAnotherTextOfAComment() throws IOException {
		Comment comment = comment("c-1", "first");
		SavePoint held = savePoint();
		comment.setText("never said");
		comment("c-2", "second");
		assertThrows(ArchiveException.class, this::savePoint);
		assertEquals(held.id(), history.last().id());
		open.restore(held, PERSON, null);
		assertEquals(List.of("first", "second"), texts(), "what was said stays, as it was said");
	}

	@Test
	void keepsCommentsWhenAnEarlierStateIsRestored() throws IOException {
		String before = site().getName();
		site().setName("Elsewhere");
		comment("c-1", "first");
		savePoint();
		open.restore(first, PERSON, null);
		assertEquals(before, site().getName());
		assertEquals(List.of("first"), texts());
		assertFalse(open.isModified());
		comment("c-2", "second");
		savePoint();
		assertEquals(List.of(), history.check().ledgerLosses());
	}

	@Test
	void keepsCommentsWhenASavePointIsTakenBack() throws IOException {
		String before = site().getName();
		site().setName("Elsewhere");
		comment("c-1", "first");
		SavePoint mixed = savePoint();
		open.undo(mixed, PERSON, null);
		assertEquals(before, site().getName());
		assertEquals(List.of("first"), texts());
	}

	@Test
	void takesASavePointBackAlsoWhereSomebodyHasCommentedSince() throws IOException {
		site().setName("west wing");
		comment("c-2", "second");
		SavePoint named = savePoint();
		comment("c-1", "before it");
		comment("c-3", "after it");
		savePoint();
		open.undo(named, PERSON, null);
		assertNotEquals("west wing", site().getName());
		assertEquals(List.of("after it", "before it", "second"), texts().stream().sorted().toList());
	}
}
