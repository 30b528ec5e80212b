package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.demo.DemoArchive;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A damaged archive says so in every perspective, nothing is made of it, and restoring mends it. */
@ExtendWith(PictureOnFailure.class)
@Order(23)
class DamageStoryTest {

	@TempDir
	Path folder;

	@AfterEach
	void goBackToTheDemo() {
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.openDemo();
	}

	@Test
	void saysWhatIsDamagedMakesNothingOfItAndMendsIt() throws Exception {
		Path archive = folder.resolve("museums");
		DemoArchive.create(new ArchiveStore(), archive, Workers.inline()).close();
		Path lost;
		try (Stream<Path> files = Files.walk(archive.resolve("surveys"))) {
			lost = files.filter(file -> file.toString().endsWith(".samples")).sorted().findFirst().orElseThrow();
		}
		List<String> lines = Files.readAllLines(lost, StandardCharsets.UTF_8);
		Files.write(lost, lines.subList(0, lines.size() - 3), StandardCharsets.UTF_8);
		Stage.open(archive);
		for (String perspective : List.of("org.cairnfield.ui.review.perspective", "org.cairnfield.ui.release.perspective")) {
			Stage.perspective(perspective);
			Link notice = Widgets.byId(Link.class, "notice.damage");
			assertTrue(Ui.ask(notice::getText).contains("damaged"), () -> Ui.ask(notice::getText));
		}
		PictureOnFailure.take("damage-notice");
		showsTheList(archive.relativize(lost).toString());
		refuses("gates.ask", "Gates");
		refuses("measures.measure", "Measure");
		Stage.show("org.cairnfield.ui.release.export");
		Button export = Widgets.byId(Button.class, "export.do");
		Hand.activate(Stage.window());
		Ui.waitUntil("the button has the focus, and is scrolled to", export::forceFocus);
		refuses("export.do", "Export");
		mends();
	}

	private static void showsTheList(String file) {
		Link notice = Widgets.byId(Link.class, "notice.damage");
		Hand.activate(Stage.window());
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Shell dialog = Widgets.shell("Damage");
		Table damages = Widgets.byId(Table.class, "damage.table");
		assertEquals(file, Ui.ask(() -> damages.getItem(0).getText(0)));
		assertTrue(Ui.ask(() -> damages.getItem(0).getText(3)).contains("restore"), () -> Ui.ask(() -> damages.getItem(0).getText(3)));
		Hand.click(Widgets.byId(Button.class, "damage.copy"));
		String copied = Ui.ask(() -> {
			Clipboard clipboard = new Clipboard(Display.getCurrent());
			try {
				return (String) clipboard.getContents(TextTransfer.getInstance());
			} finally {
				clipboard.dispose();
			}
		});
		assertTrue(copied.startsWith(file), copied);
		Hand.click(Widgets.button("Close"));
		Ui.waitUntil("the list is closed", dialog::isDisposed);
	}

	private static void refuses(String button, String title) {
		Hand.click(Widgets.byId(Button.class, button));
		Shell refusal = Widgets.shell(title);
		Hand.click(Widgets.button("OK"));
		Ui.waitUntil("the message is gone", refusal::isDisposed);
	}

	private static void mends() {
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.history");
		Table points = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the save points are listed", () -> points.getItemCount() > 0);
		Hand.click(Ui.ask(() -> points.getItem(0)));
		Hand.click(Widgets.byId(Button.class, "history.restore"));
		Hand.click(Widgets.find(Button.class, "the button of the question", button -> button.getText().equals("&Restore")));
		Ui.waitUntil("it is sound", () -> Stage.session().readOnlyReason().isEmpty());
		Ui.waitUntil("and nothing is said of damage", () -> !Widgets.isThere("notice.damage", Link.class, any -> true));
	}
}
