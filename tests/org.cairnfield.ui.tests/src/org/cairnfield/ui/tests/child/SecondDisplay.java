package org.cairnfield.ui.tests.child;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A display beside that of the test and of its size, with a window manager, so that another program can have mouse, keys and focus of its own. */
final class SecondDisplay implements AutoCloseable {

	private final Process server;
	private final Process manager;
	private final String name;

	SecondDisplay() throws IOException {
		server = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", size() + "x24", "-nolisten", "tcp")
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		@SuppressWarnings("resource") // goes with the process
		String number = new BufferedReader(new InputStreamReader(server.getInputStream())).readLine(); // once it can be used
		if (number == null) {
			throw new IOException("Xvfb does not start");
		}
		name = ":" + number.strip();
		ProcessBuilder starter = new ProcessBuilder("openbox").redirectErrorStream(true)
				.redirectOutput(ProcessBuilder.Redirect.DISCARD);
		starter.environment().putAll(environment());
		manager = starter.start();
	}

	/** Of the display of the test in pixels, such as 1600x1000. */
	private static String size() throws IOException {
		Process asked = new ProcessBuilder("xdotool", "getdisplaygeometry").start();
		return new String(asked.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip().replace(' ', 'x');
	}

	/** For programs that are to show themselves on it. */
	Map<String, String> environment() {
		return Map.of("DISPLAY", name);
	}

	@Override
	public void close() {
		manager.destroy();
		server.destroy();
	}
}
