package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.wander.Wander;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Somebody wanders through the workbench and does whatever can be done, in all three roles; now and then the program dies.
 * No error comes to the log, what is saved is what is shown, and what was unsaved comes back. Options:
 * {@code cairnfield.wander.minutes} and {@code cairnfield.wander.start}, the seed.
 */
@ExtendWith(PictureOnFailure.class)
@Order(99)
class WanderStoryTest {

	@Test
	void wandersWithoutAnErrorAndLosesNothing() throws Exception {
		Path folder = Files.createDirectories(
				Path.of(System.getProperty("cairnfield.screenshots", "target/screenshots")).resolveSibling("wander")
						.toAbsolutePath());
		Path archive = folder.resolve("museums");
		Demo.copy(archive);
		Ui.run(() -> Stage.window().setMinimized(true)); // out of the way of the other's mouse
		try {
			Wander wander = new Wander(folder, archive, Long.getLong("cairnfield.wander.start", 20261129),
					(long) (60_000 * Double.parseDouble(System.getProperty("cairnfield.wander.minutes", "2"))));
			wander.run();
			System.out.println("wandered: " + wander.summary());
			assertTrue(wander.steps() > 10, wander::summary);
		} finally {
			Ui.run(() -> Stage.window().setMinimized(false));
		}
	}
}
