package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Assignment;
import org.cairnfield.model.Decision;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A lead shares the proposals of a split out; a reviewer works through theirs, and the lead sees how far they have come. */
@ExtendWith(PictureOnFailure.class)
@Order(8)
class AssignStoryTest {

	private static final String REVIEWER = "M.Q.";

	@TempDir
	static Path folder;

	@AfterEach
	void showAll() {
		ReviewStage.showAll();
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	/** By the menu, with its keys. */
	private static Shell dialog(ReviewStage review) {
		review.focusQueue();
		Hand.pressInMenu("alt+r");
		Hand.pressInMenu("g");
		Shell dialog = Widgets.shell("Assignments");
		Hand.activate(dialog);
		return dialog;
	}

	private static void close(Shell dialog) {
		Hand.press("Escape");
		Ui.waitUntil("the dialog is closed", dialog::isDisposed);
		Hand.activate(Stage.window());
	}

	private static Table table(int lines) {
		Table table = Widgets.byId(Table.class, "assign.table");
		Ui.waitUntil(lines + " lines are listed", () -> table.getItemCount() == lines);
		return table;
	}

	private static List<String> line(Table table, int row) {
		return Ui.ask(() -> Arrays.asList(table.getItem(row).getText(0), table.getItem(row).getText(1),
				table.getItem(row).getText(2),
				table.getItem(row).getText(3), table.getItem(row).getText(5)));
	}

	private static List<String> kept(ReviewStage review) {
		return Ui.ask(() -> review.session.archive().getAssignments().stream().map(AssignStoryTest::words).toList());
	}

	private static String words(Assignment assignment) {
		return assignment.getReviewer() + ": " + assignment.getShare() + " by " + assignment.getPerson();
	}

	@Test
	void sharesProposalsOutAndFollowsTheWork() throws Exception {
		ReviewStage.person("L. Lead");
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "assigned"), 188);
		Shell dialog = dialog(review);
		Hand.fill(Widgets.byId(Text.class, "assign.reviewers"), REVIEWER + ", J.T.");
		Hand.click(Widgets.byId(Button.class, "assign.assign"));
		Table table = table(2);
		assertEquals(List.of(REVIEWER + ": part 1/2 by L. Lead", "J.T.: part 2/2 by L. Lead"), kept(review));
		int mine = Integer.parseInt(line(table, 0).get(2));
		int theirs = Integer.parseInt(line(table, 1).get(2));
		assertTrue(mine > 1 && theirs > 1);
		assertEquals(List.of(REVIEWER, "part 1/2", String.valueOf(mine), "0", String.valueOf(mine)), line(table, 0));

		Hand.fill(Widgets.byId(Text.class, "assign.reviewers"), "J.T.");
		Combo share = Widgets.byId(Combo.class, "assign.share");
		Hand.choose(share, Ui.ask(() -> Arrays.stream(share.getItems()).filter(item -> item.startsWith("band close"))
				.findFirst().orElseThrow()));
		Hand.press("Return");
		Ui.waitUntil("three are kept", () -> review.session.archive().getAssignments().size() == 3);
		assertEquals("together", line(table(4), 3).get(1));
		Hand.click(table, 2);
		Hand.click(Widgets.byId(Button.class, "assign.remove"));
		table(2);
		assertFalse(Ui.ask(() -> Widgets.byId(Button.class, "assign.remove").isEnabled()), "nothing is selected");
		close(dialog);

		ReviewStage.person(REVIEWER);
		Hand.choose(Widgets.byId(Combo.class, "review.shown"), "assigned to me");
		Ui.waitUntil("theirs are listed", () -> review.queue.getItemCount() == mine);
		assertEquals(mine + " of " + mine + " left", review.count());
		review.focusQueue();
		review.decide("p", Decision.POOL);
		ReviewStage.waitForText("review.count", mine - 1 + " of " + mine + " left");

		dialog = dialog(review);
		assertEquals(List.of(REVIEWER, "part 1/2", String.valueOf(mine), "1", String.valueOf(mine - 1)),
				line(table(2), 0));
		close(dialog);
		review.focusQueue();
		Hand.press("ctrl+z");
		ReviewStage.waitForText("review.count", mine + " of " + mine + " left");
		Hand.press("ctrl+z"); // the removal
		Hand.press("ctrl+z");
		Hand.press("ctrl+z");
		Ui.waitUntil("nothing is assigned",
				() -> review.session.archive().getAssignments().isEmpty() && review.queue.getItemCount() == 0);
		ReviewStage.waitForText("review.queue.message", "No proposal of this split is assigned to " + REVIEWER);
	}
}
