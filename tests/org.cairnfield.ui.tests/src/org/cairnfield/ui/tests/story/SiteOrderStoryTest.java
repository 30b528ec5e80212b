package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward puts the sites in the order in which people think of them. */
@ExtendWith(PictureOnFailure.class)
@Order(14)
class SiteOrderStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static void waitForOrder(Tree tree, String... names) {
		Ui.waitUntil("the sites stand as " + List.of(names), () -> {
			List<String> shown = Arrays.stream(tree.getItem(0).getItems()).map(item -> item.getText()).toList();
			return IntStream.range(0, names.length).allMatch(i -> shown.get(i).startsWith(names[i]));
		});
	}

	@Test
	void movesSitesByKeysAndFindsThemSoAfterSaving() throws Exception {
		Path archive = Demo.copy(folder.resolve("order"));
		Stage.open(archive);
		ArchiveSession session = Stage.session();
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.explorer");
		Tree tree = Widgets.byId(Tree.class, "explorer.tree");
		Hand.activate(Stage.window());
		waitForOrder(tree, "Lantern Store", "Sailmakers' Hall", "Tide House");
		Hand.click(tree, "Tide House");
		Ui.waitUntil("the site is selected", () -> session.selection().scope() == session.archive().getSites().get(2));
		Hand.press("alt+Up");
		waitForOrder(tree, "Lantern Store", "Tide House", "Sailmakers' Hall");
		Hand.press("alt+Up");
		waitForOrder(tree, "Tide House", "Lantern Store", "Sailmakers' Hall");
		Hand.press("alt+Up");
		assertEquals("tide-house lantern-store sailmakers-hall", Ui.ask(() -> session.archive().getSiteOrder()),
				"the first stays the first");
		PictureOnFailure.take("site-order");
		Hand.press("ctrl+z");
		waitForOrder(tree, "Lantern Store", "Tide House", "Sailmakers' Hall");
		Combo floors = Widgets.byId(Combo.class, "plan.floor");
		Ui.waitUntil("the plan lists them so", () -> floors.getItem(4).startsWith("Tide House"));
		Stage.save();
		Stage.close();
		Stage.open(archive);
		Tree again = Widgets.byId(Tree.class, "explorer.tree");
		waitForOrder(again, "Lantern Store", "Tide House", "Sailmakers' Hall");
		Hand.activate(Stage.window());
		Hand.click(again, "Tide House");
		Stage.show("org.cairnfield.ui.explorer");
		Hand.press("alt+Down");
		waitForOrder(again, "Lantern Store", "Sailmakers' Hall", "Tide House");
		assertNull(Ui.ask(() -> Stage.session().archive().getSiteOrder()), "the usual order needs no word");
		Stage.takeBackChanges();
	}
}
