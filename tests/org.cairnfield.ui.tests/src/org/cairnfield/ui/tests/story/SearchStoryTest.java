package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.curation.split.SplitsInRelease;
import org.cairnfield.model.Split;
import org.cairnfield.ui.charts.DotChart;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward sees cost against error of what was tried, takes another dot, keeps two splits, and says which one is released. */
@ExtendWith(PictureOnFailure.class)
@Order(7)
class SearchStoryTest {

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	/** Keeps what is tried under a name. */
	static Split keep(ArchiveSession session, String name) {
		int before = Ui.ask(() -> session.archive().getSplits().size());
		Hand.fill(Widgets.byId(Text.class, "split.name"), name);
		Hand.click(Widgets.byId(Button.class, "split.keep"));
		Ui.waitUntil(name + " is kept", () -> session.archive().getSplits().size() == before + 1);
		Ui.waitUntilIdle();
		return Ui.ask(() -> session.archive().getSplits().get(before));
	}

	private static Point place(DotChart dots, int dot) {
		for (int y = 0; y < dots.getSize().y; y++) {
			for (int x = 0; x < dots.getSize().x; x++) {
				if (dots.itemAt(x, y) == dot) {
					return dots.toDisplay(x, y);
				}
			}
		}
		throw new AssertionError("dot " + dot + " is not to be seen");
	}

	/** The first after the chosen one that another does not cover. */
	private static int another(DotChart dots) {
		for (int dot = 1; dot < dots.itemCount(); dot++) {
			int wanted = dot;
			for (int y = 0; y < dots.getSize().y; y++) {
				for (int x = 0; x < dots.getSize().x; x++) {
					if (dots.itemAt(x, y) == wanted) {
						return dot;
					}
				}
			}
		}
		throw new AssertionError("only one dot");
	}

	@Test
	void keepsTwoSplitsAndChoosesWhichOneIsReleased() throws Exception {
		ArchiveSession session = ReviewStage.open(folder, "search");
		ReviewStage.showSplitting();
		CTabFolder pages = Widgets.byId(CTabFolder.class, "split.pictures");
		Hand.click(pages, "Cost");
		Hand.click(Widgets.byId(Button.class, "split.suggest"));
		DotChart dots = Widgets.byId(DotChart.class, "split.tried");
		Ui.waitUntil("what was tried is shown", () -> dots.itemCount() > 10 && dots.getChosen() == 0);
		Ui.waitUntilIdle();
		assertTrue(Ui.ask(() -> dots.itemText(0)).contains("chosen"), () -> Ui.ask(() -> dots.itemText(0)));
		Split best = keep(session, "best");
		assertTrue(Ui.ask(best::getSearchReason).startsWith("best of"), () -> Ui.ask(best::getSearchReason));
		int other = Ui.ask(() -> another(dots));
		Hand.click(() -> place(dots, other));
		Ui.waitUntil("another dot is taken", () -> dots.getChosen() == other);
		Ui.waitUntilIdle();
		Split picked = keep(session, "picked");
		assertTrue(Ui.ask(picked::getSearchReason).startsWith("picked by hand of"),
				() -> Ui.ask(picked::getSearchReason));
		assertTrue(!best.getSearch().equals(picked.getSearch()) || best.getEpsilon() != picked.getEpsilon());
		assertEquals(List.of(best), Ui.ask(() -> SplitsInRelease.of(session.archive())),
				"a later split changes nothing by itself");

		Hand.click(Widgets.byId(CTabFolder.class, "split.tabs"), "Kept splits");
		Table kept = Widgets.byId(Table.class, "split.kept");
		Ui.waitUntil("both are listed", () -> kept.getItemCount() == 2);
		Hand.click(kept, 1);
		Hand.click(Widgets.byId(Button.class, "split.release"));
		Ui.waitUntil("the other one is taken", () -> SplitsInRelease.of(session.archive()).equals(List.of(picked)));
		assertTrue(Ui.ask(() -> Widgets.byId(Label.class, "split.kept.message").getText()).contains("picked"));
		Hand.press("ctrl+z");
		Ui.waitUntil("the first one is back", () -> SplitsInRelease.of(session.archive()).equals(List.of(best)));
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("the other one again", () -> SplitsInRelease.of(session.archive()).equals(List.of(picked)));
		assertNotEquals(Ui.ask(() -> kept.getItem(0).getText(1)), Ui.ask(() -> kept.getItem(1).getText(1)),
				"the table says which one");
	}
}
