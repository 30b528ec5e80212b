package org.cairnfield.curation.rules;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.testkit.OpenSets;

/** Openly published surveys as rules see them. */
public final class OpenSurveys {

	private OpenSurveys() {
	}

	/** The files of a set in whose paths a regular expression is found; skips the test where the set is absent. */
	public static SurveyedMap read(String set, String part) throws IOException, IntakeException {
		Pattern wanted = Pattern.compile(part);
		List<Path> files = OpenSets.files(set, "").stream().filter(file -> wanted.matcher(file.toString()).find())
				.toList();
		Intake in = SurveyIntake.read(files, IntakeOptions.GUESS, Workers.inline());
		RadioMap map = in.map();
		List<Survey> surveys = new ArrayList<>();
		int[] surveyOf = new int[map.size()];
		int at = 0;
		for (FileReport report : in.reports()) {
			if (!report.part().equals("table") && !report.part().equals("signals")) {
				continue;
			}
			for (int end = at + (int) report.accepted(); at < end; at++) {
				surveyOf[at] = surveys.size();
			}
			if (report.accepted() > 0 && at > 0) {
				long time = map.timeMillis(at - 1);
				Optional<LocalDate> date = time == RadioMap.NO_TIME ? Optional.empty()
						: Optional.of(Instant.ofEpochMilli(time).atZone(ZoneOffset.UTC).toLocalDate());
				surveys.add(new Survey(report.file().getParent().getFileName() + "/" + report.file().getFileName(),
						map.sites().get(map.site(at - 1)), date, "",
						Optional.empty()));
			}
		}
		return new SurveyedMapBuilder(map, in.sampleIds(), surveyOf, surveys).build();
	}
}
