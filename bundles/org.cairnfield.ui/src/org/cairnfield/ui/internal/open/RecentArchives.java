package org.cairnfield.ui.internal.open;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.ui.prefs.Preferences;

/** The archives that were open before, the last first. */
public final class RecentArchives {

	private static final int MOST = 10;
	private static final String RECENT = "recent";
	private static final String LAST_OPEN = "lastOpen";

	private RecentArchives() {
	}

	/** Those that are still there. */
	public static List<Path> all() {
		return Preferences.get(RECENT, "").lines().filter(line -> !line.isBlank()).map(Path::of)
				.filter(Files::isDirectory)
				.toList();
	}

	/** Whether no archive was ever open. */
	static boolean isFirstStart() {
		return Preferences.get(RECENT, "").isBlank();
	}

	/** The one that was open when the workbench closed. */
	static Optional<Path> lastOpen() {
		String last = Preferences.get(LAST_OPEN, "");
		return last.isBlank() ? Optional.empty() : Optional.of(Path.of(last)).filter(Files::isDirectory);
	}

	static void opened(Path folder) {
		Path whole = folder.toAbsolutePath().normalize();
		List<String> recent = new ArrayList<>(List.of(whole.toString()));
		all().stream().filter(other -> !other.equals(whole)).limit(MOST - 1)
				.forEach(other -> recent.add(other.toString()));
		Preferences.put(RECENT, String.join("\n", recent));
		Preferences.put(LAST_OPEN, whole.toString());
	}

	static void closed() {
		Preferences.put(LAST_OPEN, "");
	}
}
