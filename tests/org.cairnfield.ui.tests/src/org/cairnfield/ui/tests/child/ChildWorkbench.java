package org.cairnfield.ui.tests.child;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Starts the same program that the test runs in once more, as a workbench of another process. */
public final class ChildWorkbench {

	private ChildWorkbench() {
	}

	/**
	 * @param home    of the person who uses it; made where it is not there
	 * @param archive to open
	 * @param reason  why it is to set a sample aside
	 */
	public static Process start(Path home, Path archive, String reason) throws IOException {
		return start(home, archive, List.of("-D" + DoomedWork.REASON + '=' + reason), Map.of(), null);
	}

	/** @param done a file that is made once the sample is set aside */
	public static Process start(Path home, Path archive, String reason, Path done) throws IOException {
		return start(home, archive,
				List.of("-D" + DoomedWork.REASON + '=' + reason, "-D" + DoomedWork.DONE + '=' + done), Map.of(), null);
	}

	/** @param ending how it ends by itself after its change */
	public static Process start(Path home, Path archive, String reason, DoomedWork.Ending ending) throws IOException {
		return start(home, archive,
				List.of("-D" + DoomedWork.REASON + '=' + reason, "-D" + DoomedWork.ENDING + '=' + ending), Map.of(),
				null);
	}

	/**
	 * @param options     of its JVM
	 * @param environment what is otherwise in its environment than in that of this program
	 * @param output      gets what it prints; null for nowhere
	 */
	public static Process start(Path home, Path archive, List<String> options, Map<String, String> environment,
			Path output)
			throws IOException {
		ProcessHandle.Info own = ProcessHandle.current().info();
		List<String> given = Arrays.asList(own.arguments().orElseThrow());
		List<String> command = new ArrayList<>(List.of(own.command().orElseThrow()));
		for (int i = 0; i < given.size(); i++) {
			String argument = given.get(i);
			if (List.of("-data", "-application", "-testApplication", "-product", "-testproperties",
					"-testApplicationPreferences")
					.contains(argument)) {
				i++; // with its value
			} else if (!argument.startsWith("-Duser.home=") && !argument.startsWith("-Dosgi.clean")) { // the parent has it clean
				command.add(argument);
			}
		}
		command.addAll(1, List.of("-Duser.home=" + home, "-XX:TieredStopAtLevel=1")); // right after java; it does not live long
		command.addAll(1, options);
		command.addAll(List.of("-application", "org.cairnfield.ui.application", "-data", "@noDefault", "-archive",
				archive.toString()));
		ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(
				output == null ? ProcessBuilder.Redirect.DISCARD : ProcessBuilder.Redirect.to(output.toFile()));
		builder.environment().putAll(environment);
		return builder.start();
	}
}
