package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;

import org.cairnfield.core.match.Search;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.model.Split;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A lead sets by hand how a kept split is searched, part by part and as code; what is measured follows. */
@ExtendWith(PictureOnFailure.class)
@Order(7)
class SearchByHandStoryTest {

	private static final double EPSILON_DB = 188;
	private static final int HOW = 8;
	private static final int COMPARED = 7;
	private static final String TITLE = "Set the search";

	@TempDir
	static Path folder;
	private Split split;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void setsTheSearchAndMeasuresWithIt() throws Exception {
		split = ReviewStage.of(ReviewStage.open(folder, "by-hand"), EPSILON_DB).split;
		Search usual = Ui.ask(split::getSearch);
		String comparedBefore = measured(usual)[COMPARED];
		showKept();
		Hand.click(Widgets.byId(Button.class, "split.search"));
		Shell dialog = Widgets.shell(TITLE);
		Button ok = Widgets.byId(Button.class, "search.ok");
		Text code = Widgets.byId(Text.class, "search.code");
		assertEquals(usual.code(), Ui.ask(code::getText));
		assertFalse(Ui.ask(ok::isEnabled), "nothing is changed yet");

		Hand.click(Widgets.byId(Button.class, "search.cut"));
		Hand.click(Widgets.byId(Button.class, "search.twoLevels"));
		fill("search.groups", 2);
		fill("search.cells", 4);
		Hand.click(Widgets.byId(Button.class, "search.plain"));
		fill("search.k", 5);
		Hand.click(Widgets.byId(Button.class, "search.weighted"));
		Ui.waitUntil("the code follows the parts", () -> code.getText().equals("cut groups 2 cells 4 plain k 5"));
		Hand.fill(code, "cells 0 plain k 1");
		Ui.waitUntil("no cell is no search", () -> !ok.isEnabled());
		Hand.fill(code, "cut cells 6 relative k 3 weighted");
		Ui.waitUntil("the parts follow the code",
				() -> Widgets.isThere("search.cells", Spinner.class, cells -> cells.getSelection() == 6)
						&& Widgets.isThere("search.relative", Button.class, Button::getSelection)
						&& Widgets.isThere("search.groups", Spinner.class, groups -> !groups.isEnabled())
						&& ok.isEnabled());
		Hand.press("Return");
		Ui.waitUntil("the dialog is gone", dialog::isDisposed);
		Search byHand = Search.parse("cut cells 6 relative k 3 weighted");
		Text facts = Widgets.byId(Text.class, "split.kept.facts");
		waitForSearch(byHand);
		Ui.waitUntil("it is marked", () -> facts.getText().contains(byHand + "; set by hand"));

		Hand.activate(Stage.window());
		Hand.press("ctrl+z");
		waitForSearch(usual);
		Ui.waitUntil("and why", () -> facts.getText().contains(usual + "; as usual"));
		Hand.press("ctrl+shift+z");
		waitForSearch(byHand);
		Ui.waitUntilIdle();
		String[] after = measured(byHand);
		assertNotEquals(comparedBefore, after[COMPARED], "another search compares other samples");
	}

	@Test
	void setsThePublishedSearchByKeysAlone() throws Exception {
		split = ReviewStage.of(ReviewStage.open(folder, "by-keys"), EPSILON_DB).split;
		Hand.activate(Stage.window());
		Hand.pressInMenu("alt+r");
		Hand.pressInMenu("s");
		Shell dialog = Widgets.shell(TITLE);
		Ui.waitUntil("the dialog has the keys", () -> dialog.getDisplay().getActiveShell() == dialog);
		Hand.press("alt+m");
		Ui.waitUntil("the published search is shown", () -> Widgets.isThere("search.code", Text.class,
				text -> text.getText().equals(Search.PUBLISHED.code())));
		Hand.press("alt+s");
		Ui.waitUntil("the dialog is gone", dialog::isDisposed);
		waitForSearch(Search.PUBLISHED);
		assertEquals("set by hand", Ui.ask(split::getSearchReason));
	}

	private void waitForSearch(Search search) {
		Ui.waitUntil("the split is searched by " + search.code(), () -> search.equals(split.getSearch()));
	}

	private static void fill(String id, int number) {
		Hand.fill(Widgets.byId(Spinner.class, id), Integer.toString(number));
		Hand.press("Tab");
	}

	private static void showKept() {
		Stage.show("org.cairnfield.ui.review.split");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(CTabFolder.class, "split.tabs"), "Kept splits");
		Ui.waitUntilIdle();
	}

	/** Measures anew, and reads what a device gets: the cells of its line. */
	private static String[] measured(Search search) {
		Stage.show("org.cairnfield.ui.review.measure");
		Hand.activate(Stage.window());
		Hand.click(Widgets.byId(Button.class, "measure.start"));
		Table ways = Widgets.byId(Table.class, "measure.table");
		Ui.waitUntil("what a device gets is measured by " + search,
				() -> released(ways) != null && released(ways).getText(HOW).contains(search.toString()));
		Ui.waitUntilIdle();
		return Ui.ask(() -> {
			String[] cells = new String[ways.getColumnCount()];
			for (int c = 0; c < cells.length; c++) {
				cells[c] = released(ways).getText(c);
			}
			return cells;
		});
	}

	private static TableItem released(Table ways) {
		for (TableItem way : ways.getItems()) {
			if (way.getText(0).equals(Measures.RELEASED)) {
				return way;
			}
		}
		return null;
	}
}
