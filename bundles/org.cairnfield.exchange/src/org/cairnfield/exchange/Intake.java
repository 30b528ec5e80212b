package org.cairnfield.exchange;

import java.util.List;
import java.util.Map;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.WifiChannel;

/**
 * What came out of survey files.
 *
 * @param map         all samples accepted, in the order of the files and of their rows
 * @param sampleIds   a name for each sample: from the files where all have one and no two agree, otherwise
 *                    the running number of the sample over all files, from 1
 * @param reports     one for each file, in the order given
 * @param quarantines one for each file, in the order given
 * @param notHeard    what meant not heard, such as "100" or "empty"; several joined by " or "
 * @param notes       what a person should know about all files together
 * @param channels    by the name of an access point, where files tell them
 */
public record Intake(RadioMap map, List<String> sampleIds, List<FileReport> reports, List<Quarantine> quarantines,
		String notHeard, List<String> notes, Map<String, WifiChannel> channels) {

	/** Without channels. */
	public Intake(RadioMap map, List<String> sampleIds, List<FileReport> reports, List<Quarantine> quarantines,
			String notHeard,
			List<String> notes) {
		this(map, sampleIds, reports, quarantines, notHeard, notes, Map.of());
	}

	/** The same with the channels of access points. */
	public Intake withChannels(Map<String, WifiChannel> known) {
		return new Intake(map, sampleIds, reports, quarantines, notHeard, notes, Map.copyOf(known));
	}

	/** Rows read in all files that hold signals. */
	public long rowsRead() {
		return reports.stream().filter(Intake::holdsSignals).mapToLong(FileReport::rowsRead).sum();
	}

	/** Rows accepted. */
	public long accepted() {
		return reports.stream().filter(Intake::holdsSignals).mapToLong(FileReport::accepted).sum();
	}

	/** Rows quarantined. */
	public long quarantined() {
		return reports.stream().mapToLong(FileReport::quarantined).sum();
	}

	private static boolean holdsSignals(FileReport report) {
		return report.part().equals("table") || report.part().equals("signals");
	}
}
