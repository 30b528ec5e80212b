package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import org.cairnfield.curation.edit.Editable;
import org.cairnfield.model.Floor;
import org.cairnfield.model.values.Outline;
import org.cairnfield.ui.plan.PlanGeometry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward draws the outline of a floor on the plan, and changes it, by mouse and by keys. */
@ExtendWith(PictureOnFailure.class)
@Order(14)
class OutlineStoryTest {

	@TempDir
	static Path folder;
	private static ArchiveSession session;
	private PlanGeometry plan;
	private Floor floor;
	private Outline before;

	@BeforeAll
	static void openADemo() throws Exception {
		Stage.open(Demo.copy(folder.resolve("outline")));
		session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@BeforeEach
	void showAFloor() {
		Stage.takeBackChanges();
		plan = (PlanGeometry) Stage.view("org.cairnfield.ui.plan.view");
		floor = Ui.ask(() -> session.archive().getSites().get(0).getFloors().get(1));
		Ui.run(() -> session.select(session.selection().withScope(floor).withSamples(List.of())));
		Stage.command("org.cairnfield.ui.plan.fit");
		Stage.mode("SELECT");
		waitForThePlan();
		Hand.activate(Stage.window());
		before = Ui.ask(floor::getOutline);
	}

	private void waitForThePlan() {
		Ui.waitUntilIdle();
		Ui.waitUntil("the plan is drawn", plan::isDrawn);
	}

	private void begin() {
		Hand.press("ctrl+shift+o");
		Ui.waitUntil("the outline is drawn", OutlineStoryTest::isDrawing);
		waitForThePlan();
	}

	private static boolean isDrawing() {
		return Widgets.isThere("plan.outline.keep", Button.class, Button::isVisible);
	}

	private static String reading() {
		return Ui.ask(() -> Widgets.byId(Label.class, "plan.reading").getText());
	}

	private static void waitForReading(String part) {
		Ui.waitUntil("below the plan it says " + part,
				() -> Widgets.isThere("plan.reading", Label.class, label -> label.getText().contains(part)));
	}

	/** Where a place of the floor is on the display; on the user interface thread. */
	private Point at(double xMetres, double yMetres) {
		return plan.toDisplay(xMetres, yMetres);
	}

	private Point corner(int i) {
		return at(before.xMetres(i), before.yMetres(i));
	}

	private void waitForTheOutline(String what, Outline expected) {
		Ui.waitUntil(what, () -> !isDrawing() && Objects.equals(expected, floor.getOutline()));
	}

	@Test
	void changesAnOutlineByTheMouse() throws Exception {
		int corners = before.size();
		begin();
		Hand.drag(() -> corner(1), 40, 25);
		waitForReading("corner 2:");
		PictureOnFailure.take("outline-dragged");
		Hand.drag(() -> at((before.xMetres(2) + before.xMetres(3)) / 2, (before.yMetres(2) + before.yMetres(3)) / 2),
				10, -30);
		waitForReading(corners + 1 + " corners");
		PictureOnFailure.take("outline-corner-more");
		Hand.press("Return");
		Ui.waitUntil("it is kept", () -> floor.getOutline().size() == corners + 1);
		Outline changed = Ui.ask(floor::getOutline);
		assertTrue(changed.xMetres(1) > before.xMetres(1) && changed.yMetres(1) < before.yMetres(1), changed::toString);
		assertFalse(Ui.ask(OutlineStoryTest::isDrawing));
		Hand.press("ctrl+z");
		waitForTheOutline("one undo takes all of it back", before);
		begin();
		Hand.click(() -> corner(2));
		waitForReading("corner 3:");
		Hand.press("Delete");
		waitForReading(corners - 1 + " corners");
		Hand.press("ctrl+z");
		waitForReading(corners + " corners");
		assertTrue(Ui.ask(OutlineStoryTest::isDrawing), "a step is taken back, and the archive is left alone");
		Hand.press("Delete");
		Hand.press("Escape");
		waitForTheOutline("it was given up", before);
		assertFalse(Ui.ask(session::isModified));
	}

	@Test
	void drawsAnOutlineCornerAfterCorner() throws Exception {
		Ui.run(() -> session.run(Editable.of(floor).stream().filter(field -> field.name().equals("outline")).findFirst()
				.orElseThrow().change("")));
		begin();
		assertEquals("Outline: 0 corners", reading());
		Hand.click(() -> at(2, 2));
		Hand.click(() -> at(20, 2));
		Hand.click(() -> at(20, 10));
		waitForReading("3 corners");
		PictureOnFailure.take("outline-being-drawn");
		Hand.click(() -> at(2, 10));
		Hand.click(() -> at(2, 10));
		waitForReading("round");
		PictureOnFailure.take("outline-closed");
		Stage.mode("LASSO");
		Ui.waitUntil("leaving the tool keeps it", () -> !isDrawing() && floor.getOutline() != null);
		Outline drawn = Ui.ask(floor::getOutline);
		assertEquals(4, drawn.size());
		assertEquals(18 * 8, drawn.areaSquareMetres(), 3);
		waitForThePlan();
		PictureOnFailure.take("outline-kept");
		Hand.press("ctrl+z");
		Ui.waitUntil("it has none again", () -> floor.getOutline() == null);
		begin();
		Hand.press("Escape");
		Ui.waitUntil("it was given up", () -> !isDrawing());
		assertNull(Ui.ask(floor::getOutline));
	}

	@Test
	void refusesARingThatCrossesItself() throws Exception {
		begin();
		Point beyond = Ui.ask(() -> new Point(corner(0).x + (corner(2).x - corner(0).x) * 3 / 2,
				corner(0).y + (corner(2).y - corner(0).y) / 3));
		Hand.drag(() -> List.of(corner(0), beyond));
		Hand.press("Return");
		Label hint = Widgets.byId(Label.class, "plan.outline.hint");
		Ui.waitUntil("it says why", () -> hint.getText().contains("crosses or touches itself"));
		assertTrue(Ui.ask(OutlineStoryTest::isDrawing));
		assertEquals(before, Ui.ask(floor::getOutline));
		PictureOnFailure.take("outline-crossing");
		Hand.press("ctrl+z");
		Hand.press("Return");
		waitForTheOutline("unchanged it can be kept, which changes nothing", before);
		assertFalse(Ui.ask(session::isModified));
	}

	@Test
	void changesAnOutlineByKeysAlone() {
		begin();
		Hand.press("Tab");
		Hand.press("Tab");
		waitForReading("corner 2:");
		Hand.press("Right");
		Hand.press("shift+Up");
		Hand.press("Insert");
		waitForReading(before.size() + 1 + " corners");
		Hand.press("Return");
		Ui.waitUntil("it is kept", () -> floor.getOutline().size() == before.size() + 1);
		Outline changed = Ui.ask(floor::getOutline);
		assertEquals(before.xMetres(1) + 0.1, changed.xMetres(1), 1e-9);
		assertEquals(before.yMetres(1) + 1, changed.yMetres(1), 1e-9);
		Hand.press("ctrl+z");
		waitForTheOutline("and taken back", before);
	}

	@Test
	void drawsItAroundTheSamples() throws Exception {
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.plan.outlineFromSamples"));
		Widgets.shell("Outline from the samples");
		Text margin = Widgets.find(Text.class, "the margin", text -> text.getText().equals("1"));
		Hand.fill(margin, "2.5");
		Hand.press("Return");
		Ui.waitUntil("it has another outline", () -> !before.equals(floor.getOutline()));
		Outline around = Ui.ask(floor::getOutline);
		assertFalse(Ui.ask(() -> around.polygon().crossesItself()));
		waitForThePlan();
		PictureOnFailure.take("outline-from-samples");
		Hand.press("ctrl+z");
		Ui.waitUntil("one undo takes it back", () -> before.equals(floor.getOutline()));
	}
}
