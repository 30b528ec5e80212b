package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.PlantedFault;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.task.Workers;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.exchange.WideTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "simulate", description = {
		"Write the invented surveys of Marrow Quay Museums, and the faults planted in them.",
		"With --samples: a campus drawn by chance, without faults, as map.csv and a later visit to it, test.csv." })
final class SimulateCommand extends SurveyCommand {

	private static final int VISIT = 5;

	@Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder for surveys/, test/, later/ and truth.csv; made where there is none.")
	Path out;

	@Option(names = "--samples", paramLabel = "N", description = "Draw a campus, and survey it at so many places.")
	Integer samples;

	@Option(names = "--sites", paramLabel = "N", defaultValue = "2", description = "Buildings of a campus that is drawn; default ${DEFAULT-VALUE}.")
	int sites;

	@Option(names = "--floors", paramLabel = "N", defaultValue = "3", description = "Floors of each; default ${DEFAULT-VALUE}.")
	int floors;

	@Option(names = "--access-points", paramLabel = "N", defaultValue = "150", description = "Access points in all; default ${DEFAULT-VALUE}.")
	int accessPoints;

	@Option(names = "--seed", paramLabel = "N", defaultValue = ""
			+ MarrowQuay.DEFAULT_SEED, description = "Seed; the same seed gives the same bytes. Default ${DEFAULT-VALUE}.")
	long seed;

	@Option(names = "--clean", description = "Plant no faults.")
	boolean clean;

	@Override
	void run(Workers workers) throws Exception {
		OutputFolder.make(out);
		if (samples != null) {
			drawn(workers);
			return;
		}
		SimulatedArchive archive = clean ? MarrowQuay.clean(seed) : MarrowQuay.surveys(seed);
		List<Map<String, Object>> written = new ArrayList<>();
		ConsoleTable table = new ConsoleTable("survey", "samples", "site", "device", "date");
		for (SimulatedSurvey survey : archive.surveys()) {
			Path folder = folder(survey.role() == SimulatedSurvey.Role.TEST ? "test" : "surveys");
			Path file = folder.resolve(survey.name() + ".csv");
			WideTable.write(file, survey.map(), survey.sampleIds());
			table.row(survey.name(), Integer.toString(survey.map().size()), survey.site(), survey.device(),
					survey.date().toString());
			written.add(new Json().put("file", file.toString()).put("samples", survey.map().size()).fields());
		}
		ResultTable.write(folder("").resolve("truth.csv"), PlantedFault.COLUMNS,
				archive.truth().stream().map(PlantedFault::fields));
		SimulatedArchive later = MarrowQuay.later(seed);
		for (SimulatedSurvey survey : later.surveys()) {
			Path file = folder("later").resolve(survey.name() + ".csv");
			WideTable.write(file, survey.map(), survey.sampleIds());
			table.row(survey.name(), Integer.toString(survey.map().size()), survey.site(), survey.device(),
					survey.date().toString());
			written.add(new Json().put("file", file.toString()).put("samples", survey.map().size()).fields());
		}
		ResultTable.write(folder("later").resolve("truth.csv"), PlantedFault.COLUMNS,
				later.truth().stream().map(PlantedFault::fields));
		if (json) {
			printJson(new Json().put("seed", seed).put("surveys", written).put("faults", archive.truth().size()));
		} else {
			table.print(out());
			out().println();
			out().println(archive.truth().size() + " lines of planted faults in " + out.resolve("truth.csv"));
		}
	}

	/** A visit has a fifth as many samples as the survey. */
	private void drawn(Workers workers) throws IntakeException {
		CampusSize size;
		try {
			size = CampusSize.of(sites, floors, accessPoints);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		}
		if (samples < VISIT) {
			throw new ParameterException(spec.commandLine(),
					"--samples must be at least " + VISIT + ", was " + samples);
		}
		RadioMap map = RandomMap.of(seed, size, samples, workers);
		RadioMap test = RandomMap.testOf(seed, size, samples / VISIT, workers);
		write("map.csv", map);
		write("test.csv", test);
		if (json) {
			printJson(new Json().put("seed", seed).put("samples", map.size()).put("testSamples", test.size())
					.put("accessPoints", map.accessPointCount()));
		} else {
			out().println(map.size() + " samples in " + out.resolve("map.csv") + ", " + test.size() + " in "
					+ out.resolve("test.csv"));
		}
	}

	private void write(String name, RadioMap map) throws IntakeException {
		WideTable.write(out.resolve(name), map,
				IntStream.rangeClosed(1, map.size()).mapToObj(Integer::toString).toList());
	}

	private Path folder(String name) throws IntakeException {
		return OutputFolder.make(out.resolve(name));
	}
}
