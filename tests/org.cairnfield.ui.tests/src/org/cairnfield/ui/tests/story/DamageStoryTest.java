package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A damaged archive is opened at the person's word only, shows its damage in every perspective, and restoring mends it. */
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
	void opensADamagedArchiveOnlyIfAskedToNamesTheDamageAndMendsIt() throws Exception {
		Path former = Stage.session().folder();
		Path archive = folder.resolve("museums");
		Demo.copy(archive);
		Path lost;
		try (Stream<Path> files = Files.walk(archive.resolve("surveys"))) {
			lost = files.filter(file -> file.toString().endsWith(".samples")).sorted().findFirst().orElseThrow();
		}
		List<String> lines = Files.readAllLines(lost, StandardCharsets.UTF_8);
		Files.write(lost, lines.subList(0, lines.size() - 3), StandardCharsets.UTF_8);
		String file = archive.relativize(lost).toString();
		Ui.later(() -> Opening.open(archive));
		asksFirst(file, "damage.cancel");
		Ui.waitUntil("the archive before is on show again", () -> isOnShow(former));
		Ui.later(() -> Opening.open(archive));
		asksFirst(file, "damage.open");
		Ui.waitUntil("what is left of it is on show", () -> isOnShow(archive));
		assertTrue(Ui.ask(() -> Stage.session().readOnlyReason()).isPresent());
		for (String perspective : List.of("org.cairnfield.ui.review.perspective",
				"org.cairnfield.ui.release.perspective")) {
			Stage.perspective(perspective);
			Link notice = Widgets.byId(Link.class, "notice.damage");
			assertTrue(Ui.ask(notice::getText).contains("damaged"), () -> Ui.ask(notice::getText));
		}
		PictureOnFailure.take("damage-notice");
		showsTheList(file);
		Table gates = Widgets.byId(Table.class, "gates.table");
		asks("gates.ask", "Gates", "Cancel");
		assertEquals(0, Ui.ask(gates::getItemCount));
		PictureOnFailure.take("damage-gates");
		Stage.show("org.cairnfield.ui.release.measures");
		Hand.click(Widgets.byId(CTabFolder.class, "measures.tabs"), "Ways of matching");
		Table measures = Widgets.byId(Table.class, "measures.table");
		asks("measures.measure", "Measure", "Go on despite the damage");
		Ui.waitUntil("what is left is measured", () -> measures.getItemCount() > 0);
		assertFalse(Ui.ask(() -> Widgets.isThere("gates.sign", Button.class, Button::isEnabled)),
				"nothing is released of it");
		Stage.show("org.cairnfield.ui.release.export");
		Button export = Widgets.byId(Button.class, "export.do");
		Hand.activate(Stage.window());
		Ui.waitUntil("the button has the focus, and is scrolled to", export::forceFocus);
		asks("export.do", "Export", "Cancel");
		mends();
	}

	private static boolean isOnShow(Path folder) {
		return Sessions.workbench().current().filter(session -> session.folder().equals(folder)).isPresent();
	}

	private static void asksFirst(String file, String button) throws Exception {
		Shell question = Widgets.shell("Damage");
		Table damages = Widgets.byId(Table.class, "damage.table");
		assertEquals(file, Ui.ask(() -> damages.getItem(0).getText(0)));
		assertTrue(Ui.ask(() -> Sessions.workbench().current().isEmpty()), "nothing is shown yet");
		PictureOnFailure.take("damage-open");
		Hand.click(Widgets.byId(Button.class, button));
		Ui.waitUntil("the question is gone", question::isDisposed);
	}

	@Test
	void callsAFolderThatIsHalfMergedByThatName() throws Exception {
		Path former = Stage.session().folder();
		Path archive = Demo.copy(folder.resolve("museums"));
		git(archive, "checkout", "-qb", "side");
		rename(archive, "west");
		git(archive, "checkout", "-q", "-");
		rename(archive, "east");
		assertTrue(git(archive, "merge", "--no-edit", "side").contains("CONFLICT"));
		Ui.later(() -> Opening.open(archive));
		Shell question = Widgets.shell("Damage");
		Table damages = Widgets.byId(Table.class, "damage.table");
		String shown = Ui.ask(() -> String.join(" | ", damages.getItem(0).getText(0), damages.getItem(0).getText(2),
				damages.getItem(0).getText(3)));
		assertTrue(shown.startsWith(
				".git/MERGE_HEAD | a merge with plain Git was begun here and is not finished | finish it with 'git merge --continue'"),
				shown);
		assertEquals("archive.xmi", Ui.ask(() -> damages.getItem(1).getText(0)));
		Text whole = Widgets.byId(Text.class, "damage.whole");
		assertTrue(Ui.ask(whole::getText).endsWith("or give it up with 'git merge --abort'."),
				() -> Ui.ask(whole::getText));
		Hand.activate(question);
		Ui.waitUntil("the list has the focus", damages::forceFocus);
		Hand.press("Down");
		Ui.waitUntil("the second line is read out in full",
				() -> whole.getText().startsWith("archive.xmi, line 3: holds conflict marks"));
		PictureOnFailure.take("damage-half-merged");
		Hand.click(Widgets.byId(Button.class, "damage.cancel"));
		Ui.waitUntil("the question is gone", question::isDisposed);
		Ui.waitUntil("the archive before is on show again", () -> isOnShow(former));
	}

	private static void rename(Path archive, String name) throws Exception {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			open.archive().getSites().get(0).setName(name);
			open.savePoint(Person.named("A. Steward"), null);
		}
	}

	private static String git(Path archive, String... arguments) throws Exception {
		List<String> command = new ArrayList<>(
				List.of("git", "-c", "user.name=RT", "-c", "user.email=rt@example.org", "-c", "safe.directory=*"));
		command.addAll(List.of(arguments));
		Process process = new ProcessBuilder(command).directory(archive.toFile()).redirectErrorStream(true).start();
		return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
	}

	@Test
	void showsWhatIsWorthKnowingOfAnArchive() throws Exception {
		Path archive = Demo.copy(folder.resolve("museums"));
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			open.archive().getSites().get(1).setName(open.archive().getSites().get(0).getName());
			open.save();
		}
		Stage.open(archive);
		Link notice = Widgets.byId(Link.class, "notice.archive");
		assertTrue(
				Ui.ask(notice::getText).contains(Ui.ask(() -> Stage.session().archive().getSites().get(0).getName())),
				() -> Ui.ask(notice::getText));
		PictureOnFailure.take("archive-notice");
		assertEquals(Optional.empty(), Ui.ask(() -> Stage.session().readOnlyReason()));
	}

	private static void showsTheList(String file) {
		Link notice = Widgets.byId(Link.class, "notice.damage");
		Hand.activate(Stage.window());
		Ui.waitUntil("the notice has the focus", notice::forceFocus);
		Hand.press("Return");
		Shell dialog = Widgets.shell("Damage");
		Table damages = Widgets.byId(Table.class, "damage.table");
		assertEquals(file, Ui.ask(() -> damages.getItem(0).getText(0)));
		assertTrue(Ui.ask(() -> damages.getItem(0).getText(3)).contains("restore"),
				() -> Ui.ask(() -> damages.getItem(0).getText(3)));
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

	private static void asks(String button, String title, String answer) {
		Hand.click(Widgets.byId(Button.class, button));
		Shell question = Widgets.shell(title);
		Hand.click(Widgets.button(answer));
		Ui.waitUntil("the question is gone", question::isDisposed);
	}

	private static void mends() {
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.history");
		Table points = Widgets.byId(Table.class, "history.points");
		Ui.waitUntil("the save points are listed", () -> points.getItemCount() > 0);
		Hand.click(points, 0);
		Hand.click(Widgets.byId(Button.class, "history.restore"));
		Hand.click(Widgets.find(Button.class, "the button of the question",
				button -> button.getText().equals("&Restore")));
		Ui.waitUntil("it is sound", () -> Stage.session().readOnlyReason().isEmpty());
		Ui.waitUntil("and nothing is said of damage", () -> !Widgets.isThere("notice.damage", Link.class, any -> true));
	}
}
