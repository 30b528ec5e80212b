package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A map is split, proposals come into the queue, and a person decides with one key each, and takes back. */
@ExtendWith(PictureOnFailure.class)
@Order(5)
class ReviewStoryTest {

	@AfterEach
	void goBack() {
		Stage.perspective("org.cairnfield.ui.curate");
	}

	private static List<Verdict> verdicts(ArchiveSession session) {
		return session.archive().getLedgers().stream().flatMap(ledger -> ledger.getVerdicts().stream()).toList();
	}

	@Test
	void splitsAndDecidesByKeys() {
		ArchiveSession session = Stage.session();
		Ui.run(() -> session.select(session.selection().withScope(session.archive())));
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Stage.show("org.cairnfield.ui.review.split");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "split.keep"));
		Ui.waitUntil("the split is kept, with proposals",
				() -> session.archive().getSplits().size() == 1 && session.archive().getSplits().get(0).getProposals() != null
						&& !session.archive().getSplits().get(0).getProposals().all().isEmpty());
		Split split = Ui.ask(() -> session.archive().getSplits().get(0));
		assertTrue(Ui.ask(() -> split.getLabels().noise()) > 0);
		Stage.show("org.cairnfield.ui.review.queue");
		Table queue = Widgets.byId(Table.class, "review.queue");
		Ui.waitUntil("the queue is filled", () -> queue.getItemCount() > 10);
		Label count = Widgets.byId(Label.class, "review.count");
		Hand.click(Ui.ask(() -> queue.getItem(0)));
		Ui.waitUntil("the evidence is there", () -> Widgets.isThere("review.approve", Button.class, Button::isEnabled));
		String before = Ui.ask(count::getText);
		Hand.press("a");
		Ui.waitUntil("the verdict is in the ledger", () -> verdicts(session).size() == 1);
		assertEquals(Decision.APPROVE, Ui.ask(() -> verdicts(session).get(0).getDecision()));
		Ui.waitUntil("the count goes down", () -> !count.getText().equals(before));
		Hand.press("r");
		Ui.waitUntil("the next one is rejected", () -> verdicts(session).size() == 2
				&& verdicts(session).get(1).getDecision() == Decision.REJECT
				&& !verdicts(session).get(0).getSample().equals(verdicts(session).get(1).getSample()));
		Hand.press("ctrl+z");
		Ui.waitUntil("undo takes the last verdict back", () -> verdicts(session).size() == 1);
		assertTrue(Ui.ask(() -> verdicts(session).get(0).getPerson()) != null);
	}
}
