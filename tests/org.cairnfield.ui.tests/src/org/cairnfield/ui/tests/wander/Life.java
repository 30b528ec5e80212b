package org.cairnfield.ui.tests.wander;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.ui.save.Saving;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;

/**
 * One life of a workbench that is wandered through, from its start until it is left or killed. Acts only where a test has
 * started it, by system properties. A problem goes to the file {@code problem}, and what the robot waited for in vain to the
 * file {@code lost}; both end the program.
 */
public final class Life implements IStartup {

	/** Folder for what comes of it. */
	static final String FOLDER = "cairnfield.wander.folder";
	/** Seed of this life. */
	static final String SEED = "cairnfield.wander.seed";
	/** How long it wanders before it leaves by itself, in milliseconds. */
	static final String MILLIS = "cairnfield.wander.millis";
	/** Digests of content one of which must be there after what was unsaved is brought back; empty at the first start. */
	static final String EXPECTED = "cairnfield.wander.expected";

	/** Exit code after a problem. */
	static final int PROBLEM = 3;
	/** Exit code where the robot waited in vain: it may have missed a button, or the program did nothing. */
	static final int LOST = 4;

	@Override
	public void earlyStartup() {
		String given = System.getProperty(FOLDER);
		if (given == null) {
			return;
		}
		Path folder = Path.of(given);
		try {
			live(folder);
		} catch (Throwable e) {
			boolean lost = String.valueOf(e.getMessage()).contains("waited in vain");
			PictureOnFailure.report(folder.resolve(lost ? "lost" : "problem"), e);
			Runtime.getRuntime().halt(lost ? LOST : PROBLEM);
		}
	}

	private static void live(Path folder) throws Exception {
		Ui.waitUntil("an archive is open", () -> Sessions.workbench().current().isPresent());
		Ui.waitUntilIdle();
		Wanderer wanderer = new Wanderer(folder, Long.getLong(SEED));
		List<String> expected = Arrays.stream(System.getProperty(EXPECTED, "").split(","))
				.filter(digest -> !digest.isEmpty()).toList();
		if (!expected.isEmpty()) {
			wanderer.note("bring back what was unsaved");
			Recovering.bringBack(expected);
		}
		Ui.run(() -> new Diary(folder.resolve("diary")));
		wanderer.note("begin");
		wanderer.until(System.currentTimeMillis() + Long.getLong(MILLIS));
		wanderer.note("leave");
		leave();
	}

	/** Saves and leaves, as at the end of a day; the program ends with code 0. */
	private static void leave() {
		Ui.run(() -> Sessions.workbench().backToPresent());
		if (Ui.ask(() -> Sessions.workbench().current().filter(session -> session.isModified()).isPresent())) {
			Hand.activate(Sight.window());
			Hand.press("ctrl+s");
			Ui.waitUntil("all is saved", () -> !Sessions.workbench().current().get().isModified());
		}
		Ui.waitUntil("nothing is going to disk, which keeps the program", () -> !Saving.isBusy());
		Ui.later(() -> PlatformUI.getWorkbench().close());
	}
}
