package org.cairnfield.ui.tests.child;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The workbench of a colleague: a process with a display, a home and a workspace of its own, in which {@link StewardAtWork}
 * acts. Both sides tell each other by files how far they are.
 */
public final class SecondWorkbench implements AutoCloseable {

	/** Longer than she waits for anything herself, so that she can report what it was. */
	private static final int PATIENCE_SECONDS = 180;

	private final Path folder;
	private final SecondDisplay display = new SecondDisplay();
	private final Process process;

	/**
	 * @param folder  new, for all that is hers
	 * @param archive that she works on
	 * @param survey  file that she takes in
	 */
	public SecondWorkbench(Path folder, Path archive, String person, Path survey) throws IOException {
		this.folder = folder;
		Path home = Files.createDirectories(folder.resolve("home"));
		Map<String, String> environment = new HashMap<>(display.environment());
		environment.put("HOME", home.toString());
		environment.put("CAIRNFIELD_PERSON", person);
		process = ChildWorkbench.start(home, archive,
				List.of("-D" + StewardAtWork.FOLDER + '=' + folder, "-D" + StewardAtWork.SURVEY + '=' + survey),
				environment, folder.resolve("output"));
	}

	/** Waits until she is done with something. */
	public void await(String done) throws InterruptedException {
		Path file = folder.resolve(done);
		long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
		while (process.isAlive() && !Files.exists(file) && System.nanoTime() < end) {
			process.waitFor(50, TimeUnit.MILLISECONDS);
		}
		assertTrue(Files.exists(file), () -> "she is not done: " + done + '\n' + problem());
	}

	/** Tells her to go on with something. */
	public void goOn(String with) throws IOException {
		Files.createFile(folder.resolve(with));
	}

	/** Waits until she has left her workbench. */
	public void awaitLeft() throws Exception {
		assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "she leaves");
		assertEquals(0, process.exitValue(), this::problem);
	}

	private String problem() {
		try {
			Path problem = folder.resolve(StewardAtWork.PROBLEM);
			return Files.readString(Files.exists(problem) ? problem : folder.resolve("output"));
		} catch (IOException e) {
			return e.toString();
		}
	}

	@Override
	public void close() throws Exception {
		process.destroyForcibly().waitFor();
		display.close();
	}
}
