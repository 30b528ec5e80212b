package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.decide.Standings;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A person decides on proposals by keys, takes back, closes the archive for the night, and moves a sample that was decided. */
@ExtendWith(PictureOnFailure.class)
@Order(5)
class ReviewStoryTest {

	private static final String PERSON = "M.Q.";
	/** Makes some seventy proposals. */
	private static final double EPSILON_DB = 188;

	@TempDir
	static Path folder;

	@BeforeAll
	static void sitDown() {
		ReviewStage.person(PERSON);
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void decidesOnTwentyProposalsByKeysAlone() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "keys"), EPSILON_DB);
		review.focusQueue();
		List<Decision> expected = new ArrayList<>();
		decide(review, "adaa", expected);
		review.because("pool: too far from the cluster", "behind a drab bronze lift, not before it");
		Verdict far = review.decide("p", note(expected, Decision.POOL));
		assertEquals("far", far.getReasonCode());
		assertEquals("behind a drab bronze lift, not before it", far.getText(), "letters of the text are no keys");
		review.because("defer: somebody has to look on site", "");
		assertEquals("look-on-site", review.decide("d", note(expected, Decision.DEFER)).getReasonCode());
		review.because("as the evidence says", "battery low");
		Verdict faulty = review.decide("f", note(expected, Decision.FAULTY));
		assertEquals(ReasonCode.FAULTY.code(), faulty.getReasonCode());
		SampleRef sample = Ui.ask(() -> sample(review.session, faulty.getSample().sample()));
		assertEquals("faulty: battery low", Ui.ask(() -> sample.survey().table().reason(sample.row())));
		String skipped = review.inHand();
		Hand.press("n");
		Ui.waitUntil("the next is in hand", () -> !review.queue.getSelection()[0].getText(0).equals(skipped));
		Hand.press("b");
		Ui.waitUntil("the one before is in hand", () -> review.queue.getSelection()[0].getText(0).equals(skipped));
		decide(review, "aadaadaadaa", expected);
		review.because("pool: no cluster fits", "");
		review.decide("p", note(expected, Decision.POOL));
		review.decide("a", note(expected, Decision.APPROVE));
		List<Verdict> ledger = review.verdicts();
		assertEquals(20, ledger.size());
		assertEquals(expected, ledger.stream().map(Verdict::getDecision).toList());
		assertTrue(ledger.stream().allMatch(verdict -> verdict.getPerson().equals(PERSON)));
		assertEquals(20, ledger.stream().map(Verdict::getSample).distinct().count(), "each on a sample of its own");
		String last = ledger.get(19).getSample().sample();
		review.waitForState(last, "✔ approved");
		Hand.press("ctrl+z");
		Ui.waitUntil("the last is taken back and in hand again",
				() -> review.queue.getSelection()[0].getText(0).equals(last));
		assertEquals(19, review.verdicts().size(), "nothing was saved yet, so nobody has seen it");
		review.waitForState(last, "");
	}

	private static void decide(ReviewStage review, String keys, List<Decision> expected) {
		for (char key : keys.toCharArray()) {
			review.decide(String.valueOf(key), note(expected, key == 'a' ? Decision.APPROVE : Decision.DEFER));
			assertEquals("", review.state(review.inHand()), "the next one is one that nobody has decided on");
		}
	}

	private static Decision note(List<Decision> expected, Decision decision) {
		expected.add(decision);
		return decision;
	}

	private static SampleRef sample(ArchiveSession session, String id) {
		for (Site site : session.archive().getSites()) {
			for (Survey survey : site.getSurveys()) {
				if (survey.table().row(id) >= 0) {
					return new SampleRef(survey, survey.table().row(id));
				}
			}
		}
		throw new AssertionError("no sample " + id);
	}

	private static boolean isAtOnePlace(SampleRef a, SampleRef b) {
		return Math.hypot(a.sample().xMetres() - b.sample().xMetres(),
				a.sample().yMetres() - b.sample().yMetres()) < 0.5;
	}

	@Test
	void takesBackWhatWasDecidedBeforeTheArchiveWasClosed() throws Exception {
		ReviewStage before = ReviewStage.of(ReviewStage.open(folder, "closed"), EPSILON_DB);
		before.focusQueue();
		String untouched = before.count();
		String first = before.decide("a", Decision.APPROVE).getSample().sample();
		String second = before.decide("a", Decision.APPROVE).getSample().sample();
		Stage.save();
		Hand.press("ctrl+z");
		Ui.waitUntil("the second is in hand again", () -> before.queue.getSelection()[0].getText(0).equals(second));
		List<Verdict> ledger = before.verdicts();
		assertEquals(3, ledger.size(), "what was saved stays");
		assertEquals(ledger.get(1).getId(), ledger.get(2).getSupersedes());
		assertEquals(ReasonCode.TAKEN_BACK.code(), ledger.get(2).getReasonCode());
		Stage.save();
		List<String> kept = ledger.stream().map(Verdict::getId).toList();
		Path archive = before.session.folder();
		Stage.close();
		Stage.open(archive);
		ReviewStage after = ReviewStage.again(Stage.session());
		assertNotEquals(before.session, after.session);
		assertEquals(kept, after.verdicts().stream().map(Verdict::getId).toList());
		assertEquals(1, joined(after));
		after.focusQueue();
		assertEquals(first, after.inHand());
		assertEquals("✔ approved", after.state(first));
		assertNotEquals(untouched, after.count());
		Hand.press("Delete");
		after.waitForState(first, "");
		assertEquals(untouched, after.count(), "it is to be decided again");
		assertEquals(0, joined(after), "and noise again");
		List<Verdict> now = after.verdicts();
		assertEquals(kept, now.stream().map(Verdict::getId).limit(3).toList(), "nothing goes from the ledger");
		assertEquals(4, now.size());
		assertEquals(kept.get(0), now.get(3).getSupersedes());
		assertEquals(PERSON, now.get(3).getPerson());
	}

	/** How many samples have left the noise. */
	private static int joined(ReviewStage review) {
		return Ui.ask(() -> Outcome.of(SplitOnMap.of(ArchiveCopy.of(review.session.archive()), review.split),
				Standings.of(review.session.archive(), review.split, ReviewPolicy.USUAL)).joined());
	}

	@Test
	void asksAnewAboutASampleThatWasMovedAfterItsVerdict() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "moved"), EPSILON_DB);
		review.focusQueue("whose carrier is at another place",
				p -> !isAtOnePlace(sample(review.session, p.sample().sample()),
						sample(review.session, p.carrier().sample())));
		String untouched = review.count();
		String sample = review.decide("a", Decision.APPROVE).getSample().sample();
		review.waitForState(sample, "✔ approved");
		String decided = review.count();
		assertNotEquals(untouched, decided);
		Hand.press("b");
		Ui.waitUntil("the sample is in hand again", () -> review.queue.getSelection()[0].getText(0).equals(sample));
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Stage.mode("SELECT");
		SampleRef ref = Ui.ask(() -> sample(review.session, sample));
		double x = Ui.ask(() -> ref.sample().xMetres());
		Ui.waitUntil("the plan is drawn, and has gone to it", () -> plan.isDrawn() && plan.toDisplay(ref).isPresent());
		Callable<Point> at = () -> plan.toDisplay(ref).orElseThrow();
		Hand.click(at);
		Ui.waitUntil("it is selected", () -> review.session.selection().samples().equals(List.of(ref)));
		Hand.drag(at, 40, 0);
		Ui.waitUntil("it has moved", () -> ref.sample().xMetres() > x);
		review.waitForState(sample, "▲ stale");
		assertEquals(untouched, review.count(), "it counts as open");
		assertEquals(1, review.verdicts().size(), "the verdict stays in the ledger");
		assertFalse(joined(review) > 0);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is where it was", () -> ref.sample().xMetres() == x);
		review.waitForState(sample, "✔ approved");
		assertEquals(decided, review.count());
		assertEquals(1, joined(review));
	}

	@Test
	void carriesVerdictsOverToANewSplit() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "carried"), EPSILON_DB);
		review.focusQueue();
		Verdict first = review.decide("a", Decision.APPROVE);
		Verdict second = review.decide("d", Decision.DEFER);
		Split again = ReviewStage.split(review.session, "third-floor-again", EPSILON_DB);
		Combo splits = Widgets.byId(Combo.class, "review.split");
		Ui.waitUntil("the new split can be chosen", () -> splits.indexOf(again.getId()) >= 0);
		Hand.choose(splits, again.getId());
		ReviewStage.waitForText("review.offer.text", "Split third-floor has verdicts on 2 samples");
		Hand.click(Widgets.byId(Button.class, "review.offer.carry"));
		ReviewStage.waitForText("carry.message", "Verdicts on 2 samples go over. None stays behind.");
		Hand.click(Widgets.byId(Button.class, "carry.ok"));
		Ui.waitUntil("they are there", () -> of(review, again).size() == 2);
		List<Verdict> carried = Ui.ask(() -> of(review, again));
		for (Verdict given : List.of(first, second)) {
			assertTrue(carried.stream().anyMatch(verdict -> verdict.getSample().equals(given.getSample())
					&& verdict.getDecision() == given.getDecision() && verdict.getTime().equals(given.getTime())),
					given::toString);
		}
		review.waitForState(first.getSample().sample(), "✔ approved");
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntil("one undo takes them back", () -> of(review, again).isEmpty());
	}

	private static List<Verdict> of(ReviewStage review, Split split) {
		return review.ledger().stream().filter(verdict -> split.getId().equals(verdict.getSplit())).toList();
	}
}
