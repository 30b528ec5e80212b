package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Draft;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.ui.tests.child.ChildWorkbench;
import org.cairnfield.ui.tests.child.DoomedWork;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.eclipse.equinox.app.IApplication;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A program that is ended keeps what is unsaved or asks, and a second one does not write in the workspace of the first. */
@ExtendWith(PictureOnFailure.class)
@Order(24)
class EndingStoryTest {

	private static final int PATIENCE_SECONDS = 180;

	@TempDir
	Path folder;

	private Path archive;
	private Path home;
	private Process first;

	@BeforeEach
	void makeAnArchive() throws Exception {
		archive = Demo.copy(folder.resolve("museums"));
		home = folder.resolve("home");
	}

	private void startOneThatWorks() throws Exception {
		Path done = folder.resolve("done");
		first = ChildWorkbench.start(home, archive, "before the second", done);
		await(first, () -> Files.exists(done));
		assertTrue(first.isAlive(), "the child ended by itself");
	}

	@AfterEach
	void end() throws Exception {
		if (first != null) {
			first.destroyForcibly().waitFor();
		}
	}

	private interface Question {
		boolean isSo();
	}

	/** Looks at another process, which this display knows nothing of. */
	private static void await(Process process, Question test) throws InterruptedException {
		long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
		while (process.isAlive() && !test.isSo() && System.nanoTime() < end) {
			process.waitFor(20, TimeUnit.MILLISECONDS);
		}
	}

	private List<Path> drafts() {
		try (Stream<Path> all = Files.walk(home)) {
			return all.filter(file -> file.toString().endsWith(".draft")).toList();
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	@Test
	void aSignalKeepsWhatIsUnsavedAtOnce() throws Exception {
		endsBy(DoomedWork.Ending.SIGNAL);
		assertEquals(List.of("1 sample set aside"), keptInADraft());
	}

	@Test
	void theEndOfTheDesktopsSessionAsksNobodyAndKeepsWhatIsUnsaved() throws Exception {
		assertEquals(0, endsBy(DoomedWork.Ending.SESSION));
		assertEquals(List.of("1 sample set aside"), keptInADraft());
	}

	@Test
	void aRestartAsksAndSaves() throws Exception {
		assertEquals(IApplication.EXIT_RESTART, endsBy(DoomedWork.Ending.RESTART));
		assertEquals(List.of(), drafts());
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.READ)) {
			assertEquals("before the end", open.archive().getSites().get(0).getSurveys().get(0).table().reason(0));
		}
	}

	/** @return exit code */
	private int endsBy(DoomedWork.Ending ending) throws Exception {
		first = ChildWorkbench.start(home, archive, "before the end", ending);
		assertTrue(first.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "it ends");
		return first.exitValue();
	}

	private List<String> keptInADraft() throws IOException {
		List<Path> drafts = drafts();
		assertEquals(1, drafts.size());
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			List<Draft> pending = open.drafts().pending(drafts.get(0).getParent());
			return open.drafts().difference(pending.get(0)).summary();
		}
	}

	@Test
	void aSecondProgramOnTheSameWorkspaceAsksAndEndsOrTakesAWorkspaceOfItsOwn() throws Exception {
		startOneThatWorks();
		Process second = ChildWorkbench.start(home, archive, "by the second program");
		try {
			Ui.waitUntil("it asks", () -> windows("Cairnfield is running already") == 0);
			PictureOnFailure.take("second-program");
			key("Escape");
			assertTrue(second.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "it ends");
			assertEquals(0, second.exitValue());
			assertTrue(first.isAlive());
		} finally {
			second.destroyForcibly().waitFor();
		}
		assertWorks("by the third program", () -> {
			Ui.waitUntil("it asks", () -> windows("Cairnfield is running already") == 0);
			key("Return");
		});
		assertTrue(first.isAlive());
		assertTrue(Files.isDirectory(home.resolve(".cairnfield/workbench/.metadata"))
				&& Files.isDirectory(home.resolve(".cairnfield/workbench-2/.metadata")));
		first.destroyForcibly().waitFor();
		assertWorks("by the fourth program", () -> {
		}); // the lock fell with the program that had it
	}

	/** Starts one on an archive of its own, which must get to work. */
	private void assertWorks(String reason, Runnable meanwhile) throws Exception {
		Path done = folder.resolve("done " + reason);
		Process program = ChildWorkbench.start(home, Demo.copy(folder.resolve(reason)), reason, done);
		try {
			meanwhile.run();
			await(program, () -> Files.exists(done));
			assertTrue(Files.exists(done) && program.isAlive(), reason);
		} finally {
			program.destroyForcibly().waitFor();
		}
	}

	/** Exit code of the program that looks for windows of other processes: 0 where there is one. */
	private static int windows(String title) {
		return run("search", "--onlyvisible", "--name", title, "windowactivate", "--sync");
	}

	private static void key(String key) {
		assertEquals(0, run("key", key));
	}

	private static int run(String... words) {
		try {
			Process process = new ProcessBuilder(Stream.concat(Stream.of("xdotool"), Stream.of(words)).toList())
					.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
			return process.waitFor();
		} catch (IOException e) {
			throw new AssertionError(e);
		} catch (InterruptedException e) {
			throw new AssertionError(e);
		}
	}
}
