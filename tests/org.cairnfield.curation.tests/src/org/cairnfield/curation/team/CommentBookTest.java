package org.cairnfield.curation.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Comment;
import org.cairnfield.model.ModelFactory;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommentBookTest {

	private static final CommentSubject RELEASE = CommentSubject.parse("release 1.2.0");
	private static final CommentSubject PROPOSAL = CommentSubject.parse("proposal all th-spring/TH-0412");

	private final Archive archive = ModelFactory.eINSTANCE.createArchive();
	private final Clock clock = Clock.fixed(Instant.parse("2031-05-01T10:00:00Z"), ZoneOffset.UTC);
	private final CommentBook book = new CommentBook(archive, clock);
	private final BasicCommandStack stack = new BasicCommandStack();

	private void say(CommentSubject subject, String text, String person) {
		stack.execute(book.add(subject, text, person).command());
	}

	private List<String> texts() {
		return archive.getComments().stream().map(Comment::getText).toList();
	}

	@ParameterizedTest
	@ValueSource(strings = { "proposal all th-spring/TH-0412", "proposal all th-spring/TH 0412 b",
			"finding wrong-floor 00ab12cd34ef5678", "release 1.2.0",
			"release 1.2.0-rc.1" })
	void writesASubjectAsItReadsIt(String text) {
		assertEquals(text, CommentSubject.parse(text).toString());
		assertEquals(CommentSubject.parse(text), CommentSubject.parse(' ' + text.replaceFirst(" ", "  ") + ' '));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "proposal", "proposal all", "proposal all TH-0412", "proposal a/b th/T",
			"finding wrong-floor", "finding wrong-floor 12",
			"finding wrong floor 00ab12cd34ef5678", "release", "release one", "release 1.2.0 now", "survey th-spring" })
	void refusesWhatIsNoSubject(String text) {
		assertFalse(
				assertThrows(IllegalArgumentException.class, () -> CommentSubject.parse(text)).getMessage().isBlank());
	}

	@Test
	void keepsWhatWasSaidByWhomAndWhenApartByItsSubject() {
		say(RELEASE, "Ship it.", "L. Lead");
		say(PROPOSAL, " Behind the\nlift \u0000", "Ada");
		say(PROPOSAL, " Behind the\nlift \u0000", "Ada");
		Comment said = book.on(PROPOSAL).get(0);
		assertEquals(List.of("proposal all th-spring/TH-0412", "Behind the lift", "Ada", clock.instant()),
				List.of(said.getSubject(), said.getText(), said.getPerson(), said.getTime()));
		assertEquals(2, book.on(PROPOSAL).size());
		assertEquals(3, book.all().stream().map(Comment::getId).distinct().count(),
				"the same said twice is two comments");
		assertEquals(List.of("Ship it."), book.on(RELEASE).stream().map(Comment::getText).toList());
	}

	@Test
	void listsTheOldestFirst() {
		say(RELEASE, "second", "Ada");
		archive.getComments().get(0).setTime(clock.instant().plusSeconds(1));
		say(RELEASE, "first", "Ben");
		assertEquals(List.of("first", "second"), book.on(RELEASE).stream().map(Comment::getText).toList());
		assertEquals(List.of("first", "second"), book.all().stream().map(Comment::getText).toList());
	}

	@Test
	void takesACommentBackUntilItIsSaved() {
		say(RELEASE, "one", "Ada");
		stack.undo();
		assertEquals(List.of(), texts());
		stack.redo();
		assertEquals(List.of("one"), texts());
		say(RELEASE, "two", "Ada");
		assertEquals("Comment on release 1.2.0", stack.getUndoCommand().getLabel());
		book.saved();
		assertEquals("Comment on release 1.2.0, which is saved and stays", stack.getUndoCommand().getLabel());
		stack.undo();
		assertEquals(List.of("one", "two"), texts());
		stack.redo();
		assertEquals(List.of("one", "two"), texts(), "it is not there twice");
		say(RELEASE, "three", "Ada");
		stack.undo();
		assertEquals(List.of("one", "two"), texts());
	}

	@Test
	void refusesACommentWithoutTextOrNameAndTooLongOnes() {
		assertThrows(ReviewRefused.class, () -> book.add(RELEASE, " \n ", "Ada"));
		assertThrows(ReviewRefused.class, () -> book.add(RELEASE, "text", " "));
		assertTrue(
				assertThrows(ReviewRefused.class, () -> book.add(RELEASE, "x".repeat(CommentBook.LONGEST + 1), "Ada"))
						.getMessage().contains("at most 2000"));
		book.add(RELEASE, "x".repeat(CommentBook.LONGEST), "Ada").apply();
		assertEquals(1, archive.getComments().size());
	}
}
