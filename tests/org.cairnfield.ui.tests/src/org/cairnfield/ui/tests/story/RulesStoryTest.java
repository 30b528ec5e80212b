package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.PastState;
import org.cairnfield.curation.check.RuleSettings;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A steward sets what a rule goes by, from a finding and by the keyboard, once for everybody who opens the archive. */
@ExtendWith(PictureOnFailure.class)
@Order(13)
class RulesStoryTest {

	private static final String RULE = "level-out-of-range";
	private static final String HIGHEST = "rules.highest-dbm";
	private static final int MOST_TABS = 8;

	@TempDir
	static Path folder;

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	private static long found(ArchiveSession session) {
		return session.findings().open().stream().filter(finding -> finding.rule().equals(RULE)).count();
	}

	private static String kept(ArchiveSession session) {
		return Ui.ask(() -> RuleSettings.of(session.archive()).toString());
	}

	/** By the menu of the finding, opened and gone through by keys. */
	private static Shell openAt(String finding) throws Exception {
		Hand.activate(Stage.window());
		Tree findings = Widgets.byId(Tree.class, "findings.tree");
		Hand.click(findings, finding);
		Hand.press("shift+F10");
		Hand.pressInMenu("g");
		return Widgets.shell("Preferences");
	}

	private static void tabTo(Control control) {
		for (int i = 0; i < MOST_TABS && !Ui.ask(control::isFocusControl); i++) {
			Hand.press("Tab");
		}
		assertTrue(Ui.ask(control::isFocusControl),
				() -> "the focus is on " + Ui.ask(() -> Display.getCurrent().getFocusControl()));
	}

	private static void overwrite(String text) {
		Hand.press("ctrl+a");
		Hand.type(text);
	}

	@Test
	void setsANumberFromAFindingForAllWhoOpenTheArchive() throws Exception {
		ArchiveSession session = ReviewStage.open(folder, "told");
		Stage.perspective("org.cairnfield.ui.curate");
		Stage.show("org.cairnfield.ui.findings");
		Stage.waitUntilChecked();
		assertEquals(1, Ui.ask(() -> found(session)));

		Shell preferences = openAt("1 reading of ls-spring above");
		Text highest = Widgets.byId(Text.class, HIGHEST);
		assertEquals("-25", Ui.ask(highest::getText));
		tabTo(highest);
		overwrite("many");
		Ui.waitUntil("what is wrong is said", () -> !Widgets.button("Apply and Close").isEnabled());
		PictureOnFailure.take("rules-wrong");
		overwrite("-10");
		Ui.waitUntil("it can be applied", () -> Widgets.button("Apply and Close").isEnabled());
		tabTo(Widgets.byId(Text.class, "rules.why"));
		Hand.type("phones were held to the masts");
		PictureOnFailure.take("rules");
		Hand.press("Return");
		Ui.waitUntil("the dialog is gone", preferences::isDisposed);
		assertEquals(RULE + ".highest-dbm = -10: phones were held to the masts", kept(session));
		Ui.waitUntil("nothing is found", () -> !session.findings().isChecking() && found(session) == 0);

		Hand.press("ctrl+z");
		Ui.waitUntil("it is found again", () -> !session.findings().isChecking() && found(session) == 1);
		assertEquals("", kept(session));
		Hand.press("ctrl+shift+z");
		Ui.waitUntil("nothing is found", () -> !session.findings().isChecking() && found(session) == 0);
		Stage.save();
		Stage.open(session.folder());
		ArchiveSession again = Stage.session();
		Stage.waitUntilChecked();
		assertEquals(RULE + ".highest-dbm = -10: phones were held to the masts", kept(again));
		assertEquals(0, Ui.ask(() -> found(again)));

		doesNotAskARule(again);
		saysWhyNothingCanBeChanged(again);
	}

	private static void doesNotAskARule(ArchiveSession session) throws Exception {
		Shell preferences = openAt("Wrist guide B reads");
		Hand.press("alt+u");
		Ui.waitUntil("a reason is wanted", () -> !Widgets.button("Apply and Close").isEnabled());
		tabTo(Widgets.byId(Text.class, "rules.why"));
		Hand.type("calibrated elsewhere");
		Hand.press("Return");
		Ui.waitUntil("the dialog is gone", preferences::isDisposed);
		assertTrue(kept(session).contains("device-offset = off: calibrated elsewhere"), () -> kept(session));
		Ui.waitUntil("the counts say so",
				() -> Widgets.byId(Label.class, "findings.counts").getText().endsWith(", 1 rule switched off"));
	}

	private static void saysWhyNothingCanBeChanged(ArchiveSession session) throws Exception {
		Stage.save();
		try (History history = session.open().history()) {
			PastState last = history.open(history.last());
			Ui.run(() -> Sessions.workbench().showPast(last));
		}
		Ui.later(() -> Stage.commandHere("org.cairnfield.ui.ruleSettings"));
		Shell preferences = Widgets.shell("Preferences");
		String kept = Ui.ask(() -> Widgets.byId(Label.class, "rules.kept").getText());
		assertTrue(kept.startsWith("Read-only: this is the state of save point"), kept);
		assertFalse(Ui.ask(() -> Widgets.byId(Button.class, "rules.ask").isEnabled()));
		PictureOnFailure.take("rules-read-only");
		Hand.press("Escape");
		Ui.waitUntil("the dialog is gone", preferences::isDisposed);
	}
}
