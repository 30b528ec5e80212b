package org.cairnfield.exchange;

import java.nio.file.Path;
import java.util.List;

import org.cairnfield.exchange.internal.text.SiteNames;

/**
 * What became of one file.
 *
 * @param file        the file
 * @param layout      how it was read
 * @param part        "table", or which part of a paired survey it is: signals, coordinates, ids, times, channels
 * @param rowsRead    rows after the header, blank lines not counted
 * @param accepted    rows taken in; the rest is quarantined
 * @param quarantined rows not taken in
 * @param firstSample the map's index of the file's first sample; those of one file follow each other
 * @param samples     samples made of the rows accepted
 * @param notHeard    what was taken to mean not heard
 * @param notes       what a person should know
 */
public record FileReport(Path file, Layout layout, String part, long rowsRead, long accepted, long quarantined,
		int firstSample, int samples, String notHeard, List<String> notes) {

	/** What to call a survey of this file: as the file without endings, or as its folder where the file is called after its part only. */
	public String surveyName() {
		String stem = SiteNames.stem(file.getFileName().toString());
		Path folder = file.toAbsolutePath().normalize().getParent();
		boolean onlyPart = layout == Layout.PAIRED && NameMarks.key(stem).isBlank();
		return onlyPart && folder.getFileName() != null ? folder.getFileName().toString() : stem;
	}
}
