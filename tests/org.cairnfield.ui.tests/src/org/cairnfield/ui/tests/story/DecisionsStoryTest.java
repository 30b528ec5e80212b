package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * One archive from remedy to verdict: a steward reads what a remedy does, applies it and takes it back; a reviewer sends
 * samples to other clusters and to the pool; another disagrees, a third settles it; an audit fails and stays failed.
 */
@ExtendWith(PictureOnFailure.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Order(13)
class DecisionsStoryTest {

	private static final String WRONG_FLOOR = "Floor contradicted by what was heard";
	private static final String FIRST = "M.Q.";
	private static final String SECOND = "J.T.";
	private static final String THIRD = "R.S.";

	@TempDir
	static Path folder;

	private static ArchiveSession session;
	private static ReviewStage review;

	@AfterEach
	void showAll() {
		if (review != null) {
			ReviewStage.showAll();
		}
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	@Order(1)
	void readsTheEffectOfARemedyAppliesItAndTakesItBack() throws Exception {
		ReviewStage.person(FIRST);
		session = ReviewStage.open(folder, "decided");
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Text explanation = Widgets.byId(Text.class, "findings.explanation");
		Button apply = Widgets.byId(Button.class, "findings.remedy");
		Hand.click(findings, () -> heading(findings, WRONG_FLOOR));
		Hand.press("Down");
		Ui.waitUntil("the effect is read",
				() -> explanation.getText().contains("Effect: Touches 11 samples. Makes positions better.")
						&& explanation.getText().contains("% of what this rule names here is expected to be faulty")
						&& apply.isEnabled());
		Hand.click(apply);
		Ui.waitUntil("the floors are mended", () -> wrongFloors() == 0 && !session.findings().isChecking());
		Hand.press("ctrl+z");
		Ui.waitUntil("the floors are as they were", () -> wrongFloors() == 1 && !session.findings().isChecking());
		assertEquals(List.of(), session.archive().getWaivers());
	}

	private static TreeItem heading(Tree findings, String title) {
		for (TreeItem item : findings.getItems()) {
			if (item.getText().startsWith(title)) {
				return item;
			}
		}
		throw new AssertionError("no heading " + title);
	}

	private static long wrongFloors() {
		return session.findings().open().stream().map(Finding::rule).filter("wrong-floor"::equals).count();
	}

	@Test
	@Order(2)
	void sendsSamplesToTheNearestClusterAnotherOneAndThePoolByKeys() throws Exception {
		review = ReviewStage.of(session, 188);
		review.focusQueue("whose nearest cluster is another one",
				p -> p.nearestCluster() >= 0 && p.nearestCluster() != p.cluster());
		Text home = Widgets.byId(Text.class, "review.home");
		String offered = Ui.ask(home::getMessage);
		assertTrue(offered.matches("C\\d+"), "another cluster is offered: " + offered);
		Verdict nearest = review.decide("m", Decision.MOVE);
		assertEquals(offered, "C" + nearest.getCluster());
		review.waitForState(nearest.getSample().sample(), "→ " + offered);
		int other = proposed(review.inHand()) == 0 ? 1 : 0;
		Hand.click(home);
		Hand.type(Integer.toString(other));
		Hand.press("Return");
		Ui.waitUntil("the keys decide again", () -> !home.isFocusControl());
		Verdict named = review.decide("m", Decision.MOVE);
		assertEquals(other, named.getCluster());
		assertEquals("", Ui.ask(home::getText), "the next one is offered its own");
		Verdict pooled = review.decide("p", Decision.POOL);
		review.waitForState(pooled.getSample().sample(), "○ pool");
		Outcome outcome = Ui.ask(() -> Outcome.of(SplitOnMap.of(ArchiveCopy.of(session.archive()), review.split),
				Standings.of(session.archive(), review.split, ReviewPolicy.USUAL)));
		assertEquals(2, outcome.joined());
		assertEquals(1, outcome.pool().length);
		Hand.press("ctrl+z");
		review.waitForState(pooled.getSample().sample(), "");
		assertEquals(2, review.verdicts().size());
	}

	private static int proposed(String sample) {
		return Ui.ask(() -> review.split.getProposals().all().stream().filter(p -> p.sample().sample().equals(sample))
				.findFirst().orElseThrow()
				.cluster());
	}

	@Test
	@Order(3)
	void letsAThirdPersonSettleWhatTwoDisagreeAbout() throws Exception {
		ReviewStage.second("close");
		Verdict first = review.verdicts().get(0);
		String sample = first.getSample().sample();
		ReviewStage.person(SECOND);
		assertEquals("2nd review", review.state(sample));
		review.focusQueue("that waits for a second verdict", p -> p.sample().equals(first.getSample()));
		assertEquals(Round.SECOND, review.decide("p", Decision.POOL).getRound());
		review.waitForState(sample, "≠ disagreement");
		ReviewStage.person(THIRD);
		review.focusQueue("on which two disagree", p -> p.sample().equals(first.getSample()));
		review.because("pool: too far from the cluster", "I was there with both");
		Verdict last = review.decide("p", Decision.POOL);
		assertEquals(Round.RESOLUTION, last.getRound());
		assertEquals(THIRD, last.getPerson());
		review.waitForState(sample, "○ pool");
	}

	@Test
	@Order(4)
	void keepsAFailedAuditFailedWhateverIsUndoneAndDrawsAnotherSample() {
		int all = Ui.ask(review.queue::getItemCount);
		int verdicts = review.verdicts().size();
		Button look = Widgets.byId(Button.class, "review.audit.look");
		Hand.click(look);
		Ui.waitUntil("those drawn are listed", () -> review.queue.getItemCount() < all);
		review.focusQueue();
		String audit = review.decide("p", Decision.POOL).getBatch();
		ReviewStage.waitForText("review.audit.plan", "The audit has failed");
		Hand.press("ctrl+z");
		Ui.waitUntil("the verdict is taken back by a line of its own", () -> review.ledger().size() == verdicts + 2);
		Hand.click(look);
		Ui.waitUntil("the whole queue is listed, and another sample can be drawn",
				() -> review.queue.getItemCount() == all
						&& look.getText().replace("&", "").equals("Draw another sample"));
		assertTrue(ReviewStage.text("review.audit.plan").contains("The audit has failed"),
				ReviewStage.text("review.audit.plan"));
		assertFalse(Ui.ask(Widgets.byId(Button.class, "review.audit.approve")::isEnabled));
		Hand.click(look);
		ReviewStage.waitForText("review.audit.plan", "Failed before: " + audit + '.');
	}
}
