package org.cairnfield.ui.tests.robot;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * The program that moves the mouse and presses keys. It is kept running and reads its commands line by line: to start it for
 * each of some thousand commands took one fourteenth of the processor time of all stories. Ends with this program.
 */
final class Xdotool {

	private static Xdotool running;

	private final Process process;
	private final Writer commands;
	private final BufferedReader answers;

	private Xdotool() throws IOException {
		process = new ProcessBuilder("stdbuf", "-oL", "xdotool", "-").redirectErrorStream(true).start();
		commands = new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8);
		answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
	}

	/** Does what a line says; returns when it is done. @param words without blanks or quotes */
	static synchronized void run(String... words) {
		String line = String.join(" ", words);
		try {
			if (running == null || !running.process.isAlive()) {
				running = new Xdotool();
			}
			running.tell(line);
		} catch (IOException e) {
			throw new AssertionError("xdotool is needed: " + line, e);
		}
	}

	private void tell(String line) throws IOException {
		// answered only once the line before is done, and without a look at windows: the line may just have closed one
		commands.write(line + "\ngetdisplaygeometry\n");
		commands.flush();
		String answer = answers.readLine();
		if (answer == null || !answer.matches("\\d+ \\d+")) {
			process.destroy();
			throw new AssertionError(line + ": " + answer);
		}
	}
}
