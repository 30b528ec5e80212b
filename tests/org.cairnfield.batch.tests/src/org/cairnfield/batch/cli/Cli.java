package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonStreamParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** One command as a script would run it, and what came of it. Never an internal error, never a stack trace. */
record Cli(String command, int code, String out, String err) {

	static {
		try { // tests leave nothing behind in the state of the person who runs them, and obey no Git of theirs
			Path state = Files.createTempDirectory("cairnfield-state");
			System.setProperty("cairnfield.state", state.toString());
			System.setProperty("cairnfield.git.config", Files.createFile(state.resolve("gitconfig")).toString());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** @param args texts, numbers and paths; a collection stands for its elements */
	static Cli run(Object... args) {
		List<String> words = new ArrayList<>();
		for (Object arg : args) {
			if (arg instanceof Collection<?> several) {
				several.forEach(a -> words.add(a.toString()));
			} else {
				words.add(arg.toString());
			}
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int code = Main.run(words.toArray(String[]::new), new PrintStream(out, false, StandardCharsets.UTF_8),
				new PrintStream(err, true, StandardCharsets.UTF_8));
		Cli done = new Cli(String.join(" ", words), code, out.toString(StandardCharsets.UTF_8),
				err.toString(StandardCharsets.UTF_8));
		assertNotEquals(ExitCode.INTERNAL, code, done::toString);
		assertFalse((done.out + done.err).contains("\tat "), done::toString);
		return done;
	}

	/** A command that must end well. */
	static Cli ok(Object... args) {
		return run(args).ended(ExitCode.OK);
	}

	Cli ended(int expected) {
		assertEquals(expected, code, this::toString);
		return this;
	}

	/** Checks that standard error says all this. */
	Cli says(Object... words) {
		for (Object word : words) {
			assertTrue(err.contains(word.toString()), "\"" + word + "\" is missing: " + this);
		}
		return this;
	}

	/** The one object that standard output consists of. */
	JsonObject json() {
		JsonStreamParser parser = new JsonStreamParser(out);
		JsonObject object = parser.next().getAsJsonObject();
		assertFalse(parser.hasNext(), "more than one object: " + out);
		return object;
	}

	@Override
	public String toString() {
		return command + "\nexit code " + code + "\n--- out\n" + out + "\n--- err\n" + err;
	}
}
