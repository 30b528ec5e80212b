package org.cairnfield.ui.internal.app;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the command line asks of the workbench.
 *
 * @param archive folder of the archive to open; empty: the last one, or the demo
 */
record StartArguments(Optional<Path> archive) {

	/** The platform's own arguments and their values are passed over. */
	static StartArguments parse(String[] arguments) {
		for (int i = 0; i + 1 < arguments.length; i++) {
			if (arguments[i].equals("-archive")) {
				return new StartArguments(Optional.of(Path.of(arguments[i + 1]).toAbsolutePath()));
			}
		}
		return new StartArguments(Optional.empty());
	}
}
