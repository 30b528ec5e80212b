package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.model.Split;
import org.cairnfield.ui.charts.DotChart;
import org.cairnfield.ui.charts.LineChart;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Interruptions;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A lead asks which way two archives should be split, is interrupted, goes on, and reads the answer. */
@ExtendWith(PictureOnFailure.class)
@Order(15)
class StudyStoryTest {

	private static final int METHODS = 12;

	@TempDir
	Path folder;

	@AfterEach
	void goBack() {
		Stage.beginWithTheDemo();
	}

	@Test
	void studiesTwoArchivesAndGoesOnAfterAnInterruption() throws Exception {
		Batch.run("simulate", "--clean", "-q", "--out", folder.resolve("quay"));
		Path store = archive("store", "ls");
		Path house = archive("house", "th");
		Stage.open(store);
		Stage.perspective("org.cairnfield.ui.release.study.perspective");
		Label says = Widgets.byId(Label.class, "study.message");
		assertTrue(Ui.ask(says::getText).startsWith("Sets all ways of splitting side by side"));
		Hand.activate(Stage.window());
		Hand.fill(Widgets.byId(Text.class, "study.others"), house.toString());
		Button start = Widgets.byId(Button.class, "study.start");
		Table methods = Widgets.byId(Table.class, "study.methods");
		Hand.clickWhileBusy(start);
		Ui.waitUntil("something is found, and it says how far it is",
				() -> methods.getItemCount() >= 3 && says.getText().matches("(store|house), .* of 24.*"));
		Hand.clickWhileBusy(Widgets.byId(Button.class, "study.cancel"));
		Ui.waitUntil("it is cancelled", () -> says.getText().startsWith("Cancelled."));
		Hand.click(start);
		Ui.waitUntil("it is done", () -> says.getText().startsWith("Of the methods that split"));
		Combo map = Widgets.byId(Combo.class, "study.map");
		assertEquals(List.of("all maps, means", "store", "house"), Ui.ask(() -> Arrays.asList(map.getItems())));
		assertEquals(METHODS, Ui.ask(methods::getItemCount));
		assertEquals("1.00", text(methods, "plain", 1), "plain matching beside itself");
		assertFalse(text(methods, "affinity", 8).isEmpty(), "a mean rank");
		DotChart dots = Widgets.byId(DotChart.class, "study.dots");
		assertEquals(METHODS, Ui.ask(dots::itemCount));
		PictureOnFailure.take("study");
		Hand.choose(map, "house");
		Ui.waitUntil("the map's own figures are shown", () -> !text(methods, "dbscan", 9).startsWith("DBSCAN"));
		LineChart sizes = Widgets.byId(LineChart.class, "study.sizes");
		assertTrue(Ui.ask(sizes::summary).contains("Samples"), "sizes of its clusters");
		PictureOnFailure.take("study-of-one-map");
		Button save = Widgets.byId(Button.class, "study.save");
		assertTrue(Ui.ask(save::isEnabled));
		Interruptions.escape(Stage.window(), () -> save.notifyListeners(SWT.Selection, new Event())); // the chooser of folders is the desktop's
		Button keep = Widgets.byId(Button.class, "study.keep");
		Hand.click(methods, 7);
		assertFalse(Ui.ask(keep::isEnabled), "zones overlap, so a split cannot hold them");
		Hand.click(methods, 9);
		assertEquals("Set the others &aside", Ui.ask(keep::getText));
		Hand.click(keep);
		Ui.waitUntil("it is measured",
				() -> says.getText().matches("(Set \\d+ access points aside\\. Before: |Measured: no gain, ).*"));
		Hand.click(methods, 6);
		Hand.click(keep);
		Ui.waitUntil("it is kept", () -> says.getText().startsWith("Kept k-means. "));
		Split kept = Ui.ask(() -> Stage.session().archive().getSplits().get(0));
		assertTrue(kept.getMethod().startsWith("k-means, k = "), kept.getMethod());
		Hand.press("ctrl+z");
		Ui.waitUntil("it is undone", () -> Stage.session().archive().getSplits().isEmpty());
	}

	private Path archive(String name, String site) {
		Path files = folder.resolve("quay");
		Path made = folder.resolve(name);
		Batch.run("intake", "-q", "--archive", made, "--map", files.resolve("surveys/" + site + "-autumn.csv"));
		Batch.run("intake", "-q", "--archive", made, "--map", files.resolve("test/" + site + "-test.csv"),
				"--test-survey");
		return made;
	}

	private static String text(Table methods, String method, int column) {
		return Ui.ask(() -> {
			for (TableItem item : methods.getItems()) {
				if (item.getText(0).equals(method)) {
					return item.getText(column);
				}
			}
			throw new AssertionError("no line of " + method);
		});
	}
}
