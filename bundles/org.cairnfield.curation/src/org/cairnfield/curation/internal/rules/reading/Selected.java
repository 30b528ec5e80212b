package org.cairnfield.curation.internal.rules.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.internal.rules.evidence.Ints;

/** Readings that a rule has something against, gathered for one finding about a survey. */
final class Selected {

	private final SurveyedMap map;
	private final List<Remedy.Reading> readings = new ArrayList<>();
	private final Set<String> addresses = new TreeSet<>();
	private final Ints samples = new Ints();
	private int lowestDbm = RadioMap.HIGHEST_RSSI_DBM;
	private int highestDbm = RadioMap.LOWEST_RSSI_DBM;

	Selected(SurveyedMap map) {
		this.map = map;
	}

	/** Samples must come in ascending order. */
	void add(int sample, int reading) {
		String address = map.map().accessPoints().get(map.map().accessPoint(reading));
		readings.add(new Remedy.Reading(map.sampleId(sample), address));
		addresses.add(address);
		if (samples.size() == 0 || samples.get(samples.size() - 1) != sample) {
			samples.add(sample);
		}
		lowestDbm = Math.min(lowestDbm, map.map().rssiDbm(reading));
		highestDbm = Math.max(highestDbm, map.map().rssiDbm(reading));
	}

	int size() {
		return readings.size();
	}

	Set<String> addresses() {
		return addresses;
	}

	int lowestDbm() {
		return lowestDbm;
	}

	int highestDbm() {
		return highestDbm;
	}

	int[] samples() {
		return samples.toArray();
	}

	List<Subject.OfSample> subjects() {
		return map.subjects(samples.toArray());
	}

	List<Subject.OfAccessPoint> accessPoints() {
		return addresses.stream().map(Subject.OfAccessPoint::new).toList();
	}

	Remedy drop(String reason) {
		return new Remedy.DropReadings(readings, reason);
	}
}
