package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.Decision;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Combo;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What a reviewer does touches the sample in hand and nothing beside it, and the keys decide wherever the reason is chosen. */
@ExtendWith(PictureOnFailure.class)
@Order(10)
class InHandStoryTest {

	private static final double EPSILON_DB = 188;

	@TempDir
	static Path folder;

	@BeforeAll
	static void sitDown() {
		ReviewStage.person("M.Q.");
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void dragsTheSampleInHandWithoutItsCarrier() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "carrier"), EPSILON_DB);
		review.focusQueue();
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Stage.mode("SELECT");
		SampleRef inHand = Ui.ask(() -> samples(review.session).stream()
				.filter(sample -> review.queue.getSelection()[0].getText(0).equals(sample.key().sample())).findFirst()
				.orElseThrow());
		Ui.waitUntil("the plan shows it with its carrier", () -> plan.isDrawn() && plan.toDisplay(inHand).isPresent()
				&& review.session.selection().samples().contains(inHand));
		PictureOnFailure.take("in-hand-with-carrier");
		List<String> before = places(review.session);
		double x = Ui.ask(() -> inHand.sample().xMetres());
		Hand.drag(() -> plan.toDisplay(inHand).orElseThrow(), 40, 0);
		Ui.waitUntil("it has moved", () -> inHand.sample().xMetres() != x);
		List<String> after = places(review.session);
		List<String> moved = new ArrayList<>(after);
		moved.removeAll(before);
		assertEquals(1, moved.size(), moved::toString);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is back", () -> inHand.sample().xMetres() == x);
	}

	private static List<SampleRef> samples(ArchiveSession session) {
		List<SampleRef> all = new ArrayList<>();
		for (Site site : session.archive().getSites()) {
			for (Survey survey : site.getSurveys()) {
				for (int row = 0; row < survey.table().size(); row++) {
					all.add(new SampleRef(survey, row));
				}
			}
		}
		return all;
	}

	private static List<String> places(ArchiveSession session) {
		return Ui.ask(() -> samples(session).stream()
				.map(sample -> sample.key() + " " + sample.sample().xMetres() + " " + sample.sample().yMetres())
				.toList());
	}

	@Test
	void decidesByKeyRightAfterAReasonWasChosenByKey() throws Exception {
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "reason"), EPSILON_DB);
		review.focusQueue();
		Hand.press("t");
		Combo reasons = Widgets.byId(Combo.class, "review.reason");
		Ui.waitUntil("the reason has the focus", reasons::isFocusControl);
		Hand.choose(reasons, "pool: too far from the cluster");
		Verdict given = review.decide("p", Decision.POOL);
		assertEquals("far", given.getReasonCode());
		assertFalse(Ui.ask(() -> review.inHand().equals(given.getSample().sample())));
		review.decide("a", Decision.APPROVE);
	}
}
