package org.cairnfield.curation.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.Quarantine;

/** Several intakes as one, as if their files had been read together, but that each keeps its names of samples. */
final class JoinedIntake {

	private JoinedIntake() {
	}

	static Intake of(List<Intake> intakes) {
		if (intakes.size() == 1) {
			return intakes.get(0);
		}
		RadioMapBuilder map = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<FileReport> reports = new ArrayList<>();
		List<Quarantine> quarantines = new ArrayList<>();
		Set<String> notHeard = new LinkedHashSet<>();
		Set<String> notes = new LinkedHashSet<>();
		Map<String, WifiChannel> channels = new LinkedHashMap<>();
		for (Intake intake : intakes) {
			int first = map.size();
			for (FileReport r : intake.reports()) {
				reports.add(new FileReport(r.file(), r.layout(), r.part(), r.rowsRead(), r.accepted(), r.quarantined(),
						first + r.firstSample(), r.samples(), r.notHeard(), r.notes()));
			}
			add(map, intake.map());
			ids.addAll(intake.sampleIds());
			quarantines.addAll(intake.quarantines());
			notHeard.add(intake.notHeard());
			notes.addAll(intake.notes());
			intake.channels().forEach(channels::putIfAbsent);
		}
		return new Intake(map.build(), List.copyOf(ids), List.copyOf(reports), List.copyOf(quarantines),
				String.join(Messages.JoinedIntake_or, notHeard), List.copyOf(notes), Map.copyOf(channels));
	}

	private static void add(RadioMapBuilder builder, RadioMap map) {
		int[] accessPoints = map.accessPoints().stream().mapToInt(builder::accessPoint).toArray();
		for (int s = 0; s < map.size(); s++) {
			builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			if (map.device(s) != RadioMap.NO_DEVICE) {
				builder.device(map.devices().get(map.device(s)));
			}
			if (map.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(map.timeMillis(s));
			}
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				builder.reading(accessPoints[map.accessPoint(k)], map.rssiDbm(k));
			}
		}
	}
}
