package org.cairnfield.ui.tests.wander;

import java.util.List;

import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.story.Stage;

/** What all three roles do: look around, undo, save. */
final class EveryonesActs {

	private static final String PERSPECTIVES = "org.cairnfield.ui.curate org.cairnfield.ui.review.perspective org.cairnfield.ui.release.perspective"
			+ " org.cairnfield.ui.timeline.perspective org.cairnfield.ui.release.study.perspective";

	private EveryonesActs() {
	}

	static List<Act> all() {
		return List.of(
				new Act("show a perspective", 6, dice -> Stage.perspective(dice.oneOf(PERSPECTIVES.split(" ")))),
				new Act("click a tab", 6, Sight::clickATab),
				new Act("undo", 8, dice -> chord("ctrl+z")),
				new Act("undo several times", 2, dice -> times(dice.between(2, 6), "ctrl+z")),
				new Act("redo", 5, dice -> chord("ctrl+shift+z")),
				new Act("save", 4, dice -> chord("ctrl+s")),
				new Act("open a menu and leave it", 2, EveryonesActs::menu),
				new Act("look at the preferences", 1, EveryonesActs::preferences),
				new Act("press Escape", 1, dice -> chord("Escape")),
				new Act("close and open the archive", 1, EveryonesActs::closeAndOpen),
				new Act("rest", 1, dice -> Rest.until(System.nanoTime() + dice.between(4, 7) * 1_000_000_000L)));
	}

	static void chord(String chord) {
		Hand.activate(Sight.front());
		Hand.press(chord);
	}

	private static void times(int times, String chord) {
		for (int i = 0; i < times; i++) {
			chord(chord);
		}
	}

	private static void menu(Dice dice) {
		Hand.activate(Sight.front());
		Hand.pressInMenu(dice.oneOf("alt+a", "alt+e", "alt+c", "alt+r", "alt+l", "alt+w", "alt+h"));
		for (int i = dice.below(4); i > 0; i--) {
			Hand.pressInMenu("Down");
		}
		Hand.pressInMenu("Escape");
		Hand.pressInMenu("Escape");
	}

	private static void preferences(Dice dice) {
		Ui.later(() -> Stage.commandHere("org.eclipse.ui.window.preferences"));
		Ui.waitUntil("the preferences are open", () -> Sight.front().getText().startsWith("Preferences"));
		Hand.press("Down");
		Hand.press("Down");
		Hand.press("Escape");
	}

	/** Whatever is asked about unsaved work is answered as chance will have it. */
	private static void closeAndOpen(Dice dice) {
		ArchiveSession session = Sessions.workbench().current().orElseThrow(() -> new NotNow("no archive is open"));
		Sight.command("org.cairnfield.ui.closeArchive");
		if (Sight.front() != Sight.window()) {
			Dialogs.answer(dice);
		}
		if (Ui.ask(() -> Sessions.workbench().current().isEmpty())) {
			Stage.open(session.folder());
		}
	}
}
