package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.TurnWatch;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * All three at work on 10,000 samples, or as many as are asked for, while somebody notes how long the window does not answer. Tells the longest turns of
 * the event loop ({@code tests/window-latency} shows them); fails only where one took so much of the processor that a person would think the program had stopped.
 */
@ExtendWith(PictureOnFailure.class)
@Order(20)
class LargeMapStoryTest {

	private static final int MOST_MILLIS = 1000;
	private static final int KEYS = 5;

	@TempDir
	Path folder;
	private ArchiveSession session;
	private PlanGeometry plan;
	private TurnWatch watch;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo(); // the archive of the story goes with its folder
	}

	@Test
	void answersAllTheTime() throws Exception {
		Path archive = LargeArchive.make(folder, Integer.getInteger("cairnfield.samples", 10_000), 225);
		StringBuilder figures = new StringBuilder("The three perspectives, shown for the first time, on the demo: ");
		try (TurnWatch first = new TurnWatch()) {
			watch = first;
			showAll();
			figures.append(first.summary());
		}
		try (TurnWatch story = new TurnWatch()) {
			watch = story;
			watch.during("opening");
			Stage.open(archive);
			session = Stage.session();
			Stage.waitUntilChecked();
			curate();
			review();
			split();
			release();
			figures.append("\nThe story: ").append(story.summary());
			tell(figures.toString());
			assertTrue(story.busiest().get(0).cpuMillis() < MOST_MILLIS, figures::toString);
		}
	}

	/** So that the story does not wait for classes to be loaded. */
	private void showAll() {
		for (String perspective : List.of("org.cairnfield.ui.review.perspective",
				"org.cairnfield.ui.release.perspective", "org.cairnfield.ui.curate")) {
			watch.during("showing " + perspective);
			Stage.perspective(perspective);
		}
	}

	private static void tell(String figures) throws Exception {
		String file = System.getProperty("cairnfield.figures");
		if (file == null) {
			System.out.println(figures);
		} else {
			Files.writeString(Path.of(file + ".turns"), figures);
		}
	}

	private void curate() {
		watch.during("showing the plan");
		plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Floor floor = Ui.ask(() -> session.archive().getSites().get(0).getFloors().get(0));
		Ui.run(() -> session.select(session.selection().withScope(floor).withSamples(List.of())));
		Stage.command("org.cairnfield.ui.plan.fit");
		Stage.mode("SELECT");
		waitForThePlan();
		Hand.activate(Stage.window());
		watch.during("dragging a sample");
		SampleRef sample = Ui
				.ask(() -> new SampleRef(session.archive().getSites().get(0).getSurveys().get(0), firstOn(floor)));
		double x = Ui.ask(() -> sample.sample().xMetres());
		Hand.click(() -> plan.toDisplay(sample).orElseThrow());
		Ui.waitUntil("a sample is selected", () -> session.selection().samples().size() == 1);
		SampleRef taken = Ui.ask(() -> session.selection().samples().get(0)); // another may lie over it
		waitForThePlan();
		Hand.drag(() -> plan.toDisplay(taken).orElseThrow(), 30, -20);
		Ui.waitUntil("it has moved", () -> session.isModified());
		waitForThePlan();
		waitForTheDraft();
		watch.during("setting samples aside");
		Stage.mode("LASSO");
		Hand.drag(() -> round(plan.toDisplay(sample).orElseThrow()));
		Ui.waitUntil("the lasso has some", () -> session.selection().samples().size() > 1);
		Hand.press("ctrl+d");
		Hand.fill(Widgets.byId(Control.class, "samples.bar.field"), "painted wall");
		Hand.press("Return");
		Stage.waitUntilChecked();
		waitForTheDraft();
		watch.during("undoing");
		Hand.press("ctrl+z");
		Stage.waitUntilChecked();
		watch.during("showing the tables of the steward");
		Stage.show("org.cairnfield.ui.samples");
		Stage.show("org.cairnfield.ui.findings");
		Stage.show("org.cairnfield.ui.fingerprint");
		Stage.show("org.cairnfield.ui.history");
		watch.during("showing the whole archive");
		Ui.run(() -> session.select(session.selection().withScope(session.archive())));
		Ui.waitUntilIdle();
		watch.during("saving");
		Stage.save();
		Ui.waitUntilIdle();
		assertTrue(Ui.ask(() -> taken.sample().xMetres()) != x);
	}

	private int firstOn(Floor floor) {
		var table = session.archive().getSites().get(0).getSurveys().get(0).table();
		for (int row = 0; row < table.size(); row++) {
			if (table.floorLevel(row) == floor.getLevel()) {
				return row;
			}
		}
		throw new AssertionError("none on " + floor.getLevel());
	}

	private void waitForThePlan() {
		Ui.waitUntilIdle();
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
	}

	private void waitForTheDraft() {
		Ui.waitUntil("a draft is kept", () -> Stage.draftsOf(session.folder()) == 1);
		Ui.waitUntilIdle();
	}

	private static List<Point> round(Point at) {
		return List.of(new Point(at.x - 40, at.y - 40), new Point(at.x + 40, at.y - 40),
				new Point(at.x + 40, at.y + 40),
				new Point(at.x - 40, at.y + 40), new Point(at.x - 40, at.y - 40));
	}

	private void review() {
		watch.during("opening the review");
		Stage.perspective("org.cairnfield.ui.review.perspective");
		Stage.show("org.cairnfield.ui.plan.view");
		Stage.show("org.cairnfield.ui.review.queue");
		Hand.activate(Stage.window());
		Table queue = Widgets.byId(Table.class, "review.queue");
		Split split = Ui.ask(() -> session.archive().getSplits().get(0));
		Ui.waitUntil("the evidence is there", () -> queue.getItemCount() >= split.getProposals().all().size()
				&& Widgets.isThere("review.approve", Button.class, Button::isEnabled));
		Hand.click(queue, 0);
		watch.during("reviewing");
		for (int i = 0; i < KEYS; i++) {
			Ui.waitUntilIdle();
			Hand.press("p");
		}
		Ui.waitUntil("each key was a verdict",
				() -> session.archive().getLedgers().get(0).getVerdicts().size() >= KEYS);
		waitForTheDraft();
	}

	private void split() {
		watch.during("trying a split");
		Stage.show("org.cairnfield.ui.review.split");
		Hand.click(Widgets.byId(CTabFolder.class, "split.tabs"), "Try a split");
		Text epsilon = Widgets.byId(Text.class, "split.epsilon");
		Text facts = Widgets.byId(Text.class, "split.facts");
		Ui.waitUntil("a start is made", () -> facts.getText().contains("noise"));
		String before = Ui.ask(facts::getText);
		Hand.fill(epsilon, "215");
		Hand.press("Return");
		Ui.waitUntil("it is tried",
				() -> facts.isEnabled() && !facts.getText().equals(before) && facts.getText().contains("noise"));
		watch.during("keeping a split");
		Hand.fill(Widgets.byId(Text.class, "split.name"), "narrower");
		Hand.click(Widgets.byId(Button.class, "split.keep"));
		Ui.waitUntil("the split is kept, with proposals",
				() -> session.archive().getSplits().size() == 2
						&& session.archive().getSplits().get(1).getProposals() != null);
		waitForTheDraft();
		watch.during("undoing the split");
		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		Ui.waitUntilIdle();
		watch.during("saving the verdicts");
		Stage.save();
		Ui.waitUntilIdle();
	}

	private void release() {
		watch.during("opening the releases");
		Stage.perspective("org.cairnfield.ui.release.perspective");
		Hand.activate(Stage.window());
		watch.during("checking the gates");
		Hand.click(Widgets.byId(Button.class, "gates.ask"));
		Table gates = Widgets.byId(Table.class, "gates.table");
		Ui.waitUntil("the gates have answered", () -> gates.getItemCount() >= 7);
		Ui.waitUntilIdle();
	}
}
