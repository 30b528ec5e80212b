package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** On the plan: a sample is dragged to where it belongs, others are rounded up with the lasso and set aside. */
@ExtendWith(PictureOnFailure.class)
@Order(2)
class PlanStoryTest {

	private ArchiveSession session;
	private PlanGeometry plan;

	@BeforeEach
	void showAFloor() {
		session = Stage.session();
		plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Floor floor = Ui
				.ask(() -> session.archive().getSites().stream().filter(site -> site.getName().equals("Lantern Store"))
						.findFirst().get().getFloors().get(0));
		Ui.run(() -> session.select(session.selection().withScope(floor).withSamples(List.of())));
		Stage.command("org.cairnfield.ui.plan.fit");
		Stage.mode("SELECT");
		waitForThePlan();
		Hand.activate(Stage.window());
	}

	private void waitForThePlan() {
		Ui.waitUntilIdle();
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
	}

	/** Where a sample is on the display; on the user interface thread. */
	private Point at(SampleRef sample) {
		return plan.toDisplay(sample).orElseThrow();
	}

	private SampleRef sample(String id) {
		return Ui.ask(() -> {
			for (Site site : session.archive().getSites()) {
				for (Survey survey : site.getSurveys()) {
					int row = survey.table().row(id);
					if (row >= 0) {
						return new SampleRef(survey, row);
					}
				}
			}
			throw new AssertionError("no sample " + id);
		});
	}

	@Test
	void movesASampleByDraggingAndUndoesIt() {
		SampleRef sample = sample("LS-SPRING-0010");
		double x = Ui.ask(() -> sample.sample().xMetres());
		double y = Ui.ask(() -> sample.sample().yMetres());
		Hand.click(() -> at(sample));
		Ui.waitUntil("the sample is selected", () -> session.selection().samples().equals(List.of(sample)));
		waitForThePlan();
		Point from = Ui.ask(() -> at(sample));
		Hand.drag(() -> at(sample), 30, -20);
		Ui.waitUntil("the sample has moved", () -> sample.sample().xMetres() > x && sample.sample().yMetres() > y);
		waitForThePlan();
		Point now = Ui.ask(() -> at(sample));
		assertTrue(Math.abs(now.x - from.x - 30) <= 2 && Math.abs(now.y - from.y + 20) <= 2, now + " after " + from);
		Hand.press("ctrl+z");
		Ui.waitUntil("it is back", () -> sample.sample().xMetres() == x && sample.sample().yMetres() == y);
	}

	@Test
	void setsAsideWhatTheLassoGoesRound() {
		List<SampleRef> inside = new ArrayList<>();
		for (int i = 10; i <= 12; i++) {
			inside.add(sample("LS-SPRING-00" + i));
		}
		Stage.mode("LASSO");
		Hand.drag(() -> round(at(inside.get(0)), at(inside.get(2))));
		Ui.waitUntil("the lasso has them", () -> session.selection().samples().containsAll(inside));
		List<SampleRef> selected = Ui.ask(() -> session.selection().samples());
		Hand.press("ctrl+d");
		Combo reason = (Combo) Widgets.byId(Control.class, "samples.bar.field");
		Hand.fill(reason, "painted wall");
		Hand.press("Return");
		Ui.waitUntil("they are set aside", () -> selected.stream().allMatch(s -> "painted wall".equals(reasonOf(s))));
		Hand.press("ctrl+z");
		Ui.waitUntil("and back", () -> inside.stream().allMatch(s -> reasonOf(s) == null));
		assertEquals("Floor 0", Ui.ask(() -> session.selection().floor().getName()));
	}

	/** A way round a rectangle with two points in its corners. */
	private static List<Point> round(Point one, Point other) {
		int left = Math.min(one.x, other.x) - 4;
		int right = Math.max(one.x, other.x) + 4;
		int top = Math.min(one.y, other.y) - 4;
		int bottom = Math.max(one.y, other.y) + 4;
		return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom),
				new Point(left, top));
	}

	private static String reasonOf(SampleRef sample) {
		SampleTable table = sample.survey().table();
		return table.reason(sample.row());
	}

	@Test
	void drawsWhatChangedWhileItWasHidden() {
		Stage.show("org.cairnfield.ui.start"); // lies over it
		Floor other = Ui.ask(() -> session.archive().getSites().get(0).getFloors().get(1));
		Ui.run(() -> session.select(session.selection().withScope(other)));
		Ui.waitUntilIdle();
		Stage.show("org.cairnfield.ui.plan.view");
		waitForThePlan();
		Ui.run(() -> {
			var page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
			page.hideView(page.findView("org.cairnfield.ui.start"));
		});
	}

	@Test
	void coloursAsBeforeWhenTheViewIsOpenedAgain() throws Exception {
		Hand.choose(Widgets.byId(Combo.class, "plan.colourBy"), "Survey");
		Ui.run(() -> {
			var page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
			page.hideView(page.findView("org.cairnfield.ui.plan.view"));
		});
		plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		waitForThePlan();
		Combo by = Widgets.byId(Combo.class, "plan.colourBy");
		assertEquals("Survey", Ui.ask(by::getText));
		Path kept = Platform.getStateLocation(Platform.getBundle("org.eclipse.core.runtime")).toPath()
				.resolve(".settings/org.cairnfield.ui.prefs");
		assertTrue(Files.readAllLines(kept).contains("plan.colourBy=Survey"), "the next start finds it");
		Hand.choose(by, "Number heard");
	}

	@Test
	void coloursByTheAccessPointChosen() {
		Combo by = Widgets.byId(Combo.class, "plan.colourBy");
		Button places = Widgets.byId(Button.class, "plan.accessPoints");
		assertTrue(Ui.ask(() -> by.getItemCount() >= 5 && places.getSelection()));
		Canvas legend = Widgets.byId(Canvas.class, "plan.legend");
		Ui.run(() -> session.select(session.selection().withAccessPoint(session.archive().getAccessPoints().get(0))));
		int level = Ui.ask(() -> List.of(by.getItems()).indexOf("RSSI of the access point"));
		assertTrue(level >= 0, () -> Ui.ask(() -> List.of(by.getItems()).toString()));
		Ui.run(() -> {
			by.select(level);
			by.notifyListeners(SWT.Selection, new Event());
		});
		waitForThePlan();
		assertTrue(Ui.ask(legend::isVisible));
	}
}
