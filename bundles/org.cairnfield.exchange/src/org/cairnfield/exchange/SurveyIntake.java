package org.cairnfield.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.NotHeard;

/**
 * Turns survey files into a radio map. Tables may be wide, long or paired (see {@link Layout}); separated by
 * comma, semicolon or tab; compressed with gzip; in UTF-8, UTF-16 with a byte order mark, or Latin-1. Layout,
 * columns and the value for "not heard" are guessed unless {@link IntakeOptions} say them. Rows that cannot
 * be trusted are quarantined, the rest is taken in. Files are streamed and never held in memory.
 *
 * <pre>
 * Intake intake = SurveyIntake.read(List.of(Path.of("tide-house.csv")), IntakeOptions.GUESS, Workers.inline());
 * </pre>
 */
public final class SurveyIntake {

	private SurveyIntake() {
	}

	/**
	 * What would be understood of the files, from their first rows. A table in which no position or no levels
	 * are found, or whose partner is missing, is shown with its {@link Preview#problems}.
	 *
	 * @return one for each file, in order
	 * @throws IntakeException where a file cannot be read, or is no table of text
	 */
	public static List<Preview> preview(List<Path> files, IntakeOptions options) throws IntakeException {
		List<Preview> previews = new ArrayList<>();
		List<FilePlan> plans = Planner.plan(files, options, false);
		for (FilePlan plan : plans) {
			previews.add(Previews.of(plan, plans, options));
		}
		return previews;
	}

	/**
	 * Reads the files as parts of one map; access points and sites of one name are the same.
	 *
	 * @param workers their progress counts bytes of the files, hears all notes as warnings, and may cancel; what is read does
	 *                not depend on their number
	 * @throws IntakeException where a file cannot be read or not be understood; nothing is taken in then
	 * @throws CancellationException once the progress is cancelled
	 */
	public static Intake read(List<Path> files, IntakeOptions options, Workers workers) throws IntakeException {
		List<FilePlan> plans = Planner.plan(files, options, true);
		while (true) {
			// ends: each turn gives up UTF-8, the blank for not heard, or a column for good
			try {
				return readPlanned(plans, options, workers);
			} catch (Fallback.Amended e) {
				workers.progress().warn(Messages.SurveyIntake_aFileTurnedOutDifferent);
			}
		}
	}

	private static Intake readPlanned(List<FilePlan> plans, IntakeOptions options, Workers workers)
			throws IntakeException, Fallback.Amended {
		Progress progress = workers.progress();
		MapSink sink = new MapSink(options);
		FloorNames floors = new FloorNames(options.floors());
		Map<FilePlan, FileReport> reports = new LinkedHashMap<>();
		Map<FilePlan, Quarantine> quarantines = new LinkedHashMap<>();
		progress.begin(Messages.SurveyIntake_readingSurveys, plans.stream().mapToLong(p -> bytes(p.file)).sum());
		for (FilePlan plan : plans) {
			if (plan.part != FilePlan.Part.TABLE && plan.part != FilePlan.Part.SIGNALS) {
				continue;
			}
			if (progress.isCancelled()) {
				throw new CancellationException(Messages.SurveyIntake_intakeCancelled);
			}
			int firstSample = sink.size();
			FileReader<?> reader = plan.listed ? new ListReader(plan, options, sink, floors, workers)
					: plan.layout == Layout.LONG ? new LongReader(plan, options, sink, floors, workers)
							: new WideReader(plan, options, sink, floors, workers);
			try {
				reader.read();
			} catch (IntakeException e) {
				for (FilePlan each : plan.parts()) {
					if (each.file.equals(e.file()) && Fallback.toLatin1(each, e, options)) {
						throw new Fallback.Amended();
					}
				}
				throw e;
			}
			progress.advance(Math.max(0, plan.parts().stream().mapToLong(p -> bytes(p.file)).sum() - reader.told()));
			reports.put(plan, reader.report(firstSample));
			quarantines.put(plan, reader.quarantine);
		}
		List<String> notes = new ArrayList<>();
		RadioMap map = sink.map();
		List<String> ids = sink.ids(notes);
		if (!floors.readings().isEmpty()) {
			notes.add(Words.bind(Messages.SurveyIntake_floorNamesWereReadAs,
					new java.util.TreeMap<>(floors.readings()), floors.readings().containsValue(FloorNames.FIRST_FREE)
							? Words.bind(Messages.SurveyIntake_thoseFromUpHoldNo, FloorNames.FIRST_FREE)
							: ""));
		}
		if (!options.accessPointsPerSite()) {
			SharedNames.note(map, notes);
		}
		return finish(plans, reports, quarantines, map, ids, notes, progress, options).withChannels(sink.channels());
	}

	private static Intake finish(List<FilePlan> plans, Map<FilePlan, FileReport> reports,
			Map<FilePlan, Quarantine> quarantines, RadioMap map, List<String> ids, List<String> notes,
			Progress progress, IntakeOptions options) {
		List<FileReport> all = new ArrayList<>();
		List<Quarantine> bad = new ArrayList<>();
		Set<String> notHeard = new LinkedHashSet<>();
		for (FilePlan plan : plans) {
			FileReport report = reports.get(plan);
			if (report == null) {
				report = new FileReport(plan.file, plan.layout, plan.part.word(), plan.rows, plan.rows, 0, 0, 0,
						NotHeard.EMPTY, List.copyOf(plan.notes));
			} else {
				notHeard.add(report.notHeard());
			}
			all.add(report);
			bad.add(quarantines.getOrDefault(plan, new Quarantine(plan.file, options.limits().quarantineKept())));
			report.notes().forEach(n -> progress.warn(plan.file.getFileName() + ": " + n));
		}
		notes.forEach(progress::warn);
		return new Intake(map, ids, List.copyOf(all), List.copyOf(bad), String.join(Messages.SurveyIntake_or, notHeard),
				List.copyOf(notes));
	}

	private static long bytes(Path file) {
		try {
			return Files.size(file);
		} catch (IOException e) {
			return 0;
		}
	}
}
