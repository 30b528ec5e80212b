package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Decision;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** People comment on a proposal, a finding and a release; a comment can be undone until it is saved. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class CommentStoryTest {

	private static final String FIRST = "M.Q.";
	private static final String SECOND = "J.T.";
	private static final String OPINION = "behind the goods lift";

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static List<String> said(ArchiveSession session) {
		return Ui.ask(() -> session.archive().getComments().stream().map(Comment::getText).sorted().toList());
	}

	private static void say(ArchiveSession session, String view, String text, boolean byKey) {
		int before = said(session).size();
		Hand.fill(Widgets.byId(Text.class, view + ".comment.text"), text);
		if (byKey) {
			Hand.press("Return");
		} else {
			Hand.click(Widgets.byId(Button.class, view + ".comment.add"));
		}
		Ui.waitUntil("it is said", () -> session.archive().getComments().size() == before + 1);
		waitForComments(view, text);
	}

	private static String comments(String view) {
		Text list = Widgets.byId(Text.class, view + ".comments");
		return Ui.ask(list::getText);
	}

	private static void waitForComments(String view, String part) {
		Text list = Widgets.byId(Text.class, view + ".comments");
		Ui.waitUntil("the comments have " + part, () -> list.getText().contains(part));
	}

	@Test
	void saysSomethingAboutAProposalThatASecondReviewerReadsAfterwards() throws Exception {
		ReviewStage.person(FIRST);
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "proposal"), 188);
		ReviewStage.second("close");
		int close = (int) Ui.ask(() -> review.split.getProposals().all().stream()
				.filter(p -> Bands.USUAL.of(p.strengthR()).get().name().equals("close")).count()).longValue();
		review.filter("band = close", close);
		String sample = review.inHand();
		say(review.session, "review", "drop it", true);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is taken back", () -> review.session.archive().getComments().isEmpty());
		assertEquals(sample, review.inHand());
		say(review.session, "review", OPINION, true);
		assertEquals(List.of(), review.verdicts(), "letters are letters in the field");
		assertTrue(Ui.ask(() -> review.session.archive().getComments().get(0).getSubject())
				.matches("proposal third-floor .+/" + sample));
		review.decide("p", Decision.POOL); // letters are keys again

		ReviewStage.person(SECOND);
		review.focusQueue();
		assertEquals(sample, review.inHand());
		waitForComments("review", "1 comment of others can be read after your second review.");
		assertFalse(comments("review").contains(OPINION), comments("review"));
		review.decide("p", Decision.POOL);
		review.focusQueue();
		waitForComments("review", FIRST + ", ");
		assertTrue(comments("review").endsWith(": " + OPINION), comments("review"));
		ReviewStage.showAll();
	}

	@Test
	void saysSomethingAboutAFindingAndAReleaseThatStaysOnceItIsSaved() throws Exception {
		ReviewStage.person(FIRST);
		Path archive = Demo.copy(folder.resolve("finding"));
		Batch.run("release", "-q", "--archive", archive, "--person", "L. Lead",
				Arrays.stream(Gate.values()).flatMap(gate -> Stream.of("--override", gate.key() + "=for a trial only"))
						.toList());
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.click(Ui.ask(() -> findings.getItem(0).getItem(0)));
		say(session, "findings", "The surveyor agrees.", false);
		assertTrue(Ui.ask(() -> session.archive().getComments().get(0).getSubject()).startsWith("finding "));
		Hand.click(Ui.ask(() -> findings.getItem(1).getItem(0)));
		Ui.waitUntil("another finding has none", () -> !Widgets.isThere("findings.comments", Text.class, list -> true));

		Stage.perspective("org.cairnfield.ui.release.perspective");
		Stage.show("org.cairnfield.ui.release.releases");
		Table releases = Widgets.byId(Table.class, "releases.table");
		Ui.waitUntil("the release is listed", () -> releases.getItemCount() == 1);
		Hand.click(releases, 0);
		say(session, "releases", "Ships on Monday.", true);
		assertEquals("release 1.0.0", Ui.ask(() -> session.comments().all().get(1).getSubject()));
		Stage.save();
		Hand.press("ctrl+z");
		Hand.press("ctrl+z");
		assertEquals(List.of("Ships on Monday.", "The surveyor agrees."), said(session));
		assertTrue(comments("releases").endsWith("Ships on Monday."));
	}
}
