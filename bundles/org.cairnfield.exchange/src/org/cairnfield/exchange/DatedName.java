package org.cairnfield.exchange;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The day that the name of a file, or of the folder that it lies in, tells. */
final class DatedName {

	private static final Pattern DAY = Pattern
			.compile("(?<!\\d)((?:19|20|21)\\d{2})[-_.]?(\\d{2})[-_.]?(\\d{2})(?!\\d)");

	private DatedName() {
	}

	static Optional<LocalDate> of(Path file) {
		Path folder = file.toAbsolutePath().normalize().getParent();
		Optional<LocalDate> own = day(file.getFileName().toString());
		return own.isPresent() || folder == null || folder.getFileName() == null ? own
				: day(folder.getFileName().toString());
	}

	private static Optional<LocalDate> day(String name) {
		Matcher found = DAY.matcher(name);
		while (found.find()) {
			try {
				return Optional.of(LocalDate.of(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2)),
						Integer.parseInt(found.group(3))));
			} catch (DateTimeException e) {
				// digits that are no day
			}
		}
		return Optional.empty();
	}
}
