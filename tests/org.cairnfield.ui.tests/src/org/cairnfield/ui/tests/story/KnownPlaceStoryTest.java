package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Floor;
import org.cairnfield.model.values.KnownPlace;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward who knows where an access point is mounted says so on the plan, by mouse and by keys, and takes it back. */
@ExtendWith(PictureOnFailure.class)
@Order(14)
class KnownPlaceStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void saysOnThePlanWhereAnAccessPointIsMounted() throws Exception {
		Stage.open(Demo.copy(folder.resolve("mounted")));
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		PlanGeometry plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		Floor floor = Ui.ask(() -> session.archive().getSites().get(0).getFloors().get(1));
		AccessPoint accessPoint = Ui.ask(() -> session.archive().getAccessPoints().get(3));
		Ui.run(() -> session
				.select(session.selection().withScope(floor).withSamples(List.of()).withAccessPoint(accessPoint)));
		Stage.command("org.cairnfield.ui.plan.fit");
		Stage.mode("SELECT");
		Hand.activate(Stage.window());
		Stage.command("org.cairnfield.ui.plan.setPlace");
		waitForReading("Click where " + accessPoint.getAddress() + " is mounted");
		Hand.click(() -> plan.toDisplay(12, 17));
		Ui.waitUntil("its place is known", () -> accessPoint.getPlace() != null);
		KnownPlace place = Ui.ask(accessPoint::getPlace);
		assertEquals(1, place.level());
		assertTrue(Math.hypot(place.xMetres() - 12, place.yMetres() - 17) < 0.5, place::toString);
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
		PictureOnFailure.take("known-place");
		Hand.press("ctrl+z");
		Ui.waitUntil("one undo takes it back", () -> accessPoint.getPlace() == null);
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("and it is there again", () -> place.equals(accessPoint.getPlace()));
		Stage.command("org.cairnfield.ui.plan.setPlace");
		Hand.press("Right");
		Hand.press("shift+Down");
		waitForReading(String.format("y %.2f", place.yMetres() - 1));
		PictureOnFailure.take("known-place-moved");
		Hand.press("Return");
		Ui.waitUntil("it is moved by keys", () -> !place.equals(accessPoint.getPlace()));
		assertEquals(place.xMetres() + 0.1, Ui.ask(accessPoint::getPlace).xMetres(), 0.006);
		assertEquals(place.yMetres() - 1, Ui.ask(accessPoint::getPlace).yMetres(), 0.006);
		Stage.command("org.cairnfield.ui.plan.setPlace");
		Hand.press("Escape");
		assertNotNull(Ui.ask(accessPoint::getPlace), "given up, it is where it was");
		Stage.command("org.cairnfield.ui.plan.forgetPlace");
		assertNull(Ui.ask(accessPoint::getPlace));
		Stage.takeBackChanges();
	}

	private static void waitForReading(String part) {
		Ui.waitUntil("below the plan it says " + part,
				() -> Widgets.isThere("plan.reading", Label.class, label -> label.getText().contains(part)));
	}
}
