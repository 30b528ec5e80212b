package org.cairnfield.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.cairnfield.batch.cli.Main;

/** Runs the verbs of batch in this process, for what is to come out alike in both. */
public final class Batch {

	private Batch() {
	}

	/**
	 * Runs a command that must end well.
	 *
	 * @param args texts and paths; a collection stands for its elements
	 * @return what it wrote
	 */
	public static String run(Object... args) {
		List<String> words = new ArrayList<>();
		for (Object arg : args) {
			if (arg instanceof Collection<?> several) {
				several.forEach(each -> words.add(each.toString()));
			} else {
				words.add(arg.toString());
			}
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int code = Main.run(words.toArray(String[]::new), new PrintStream(out, false, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		assertEquals(0, code,
				() -> words + ": " + out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8));
		return out.toString(StandardCharsets.UTF_8);
	}
}
