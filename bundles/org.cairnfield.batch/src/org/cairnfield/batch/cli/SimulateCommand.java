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
import org.cairnfield.core.text.Words;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.exchange.WideTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "simulate", description = {
		"${bundle:SimulateCommand_what}",
		"${bundle:SimulateCommand_more}" })
final class SimulateCommand extends SurveyCommand {

	private static final int VISIT = 5;

	@Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "SimulateCommand_out")
	Path out;

	@Option(names = "--samples", paramLabel = "N", descriptionKey = "SimulateCommand_samples")
	Integer samples;

	@Option(names = "--sites", paramLabel = "N", defaultValue = "2", descriptionKey = "SimulateCommand_sites")
	int sites;

	@Option(names = "--floors", paramLabel = "N", defaultValue = "3", descriptionKey = "SimulateCommand_floors")
	int floors;

	@Option(names = "--access-points", paramLabel = "N", defaultValue = "150", descriptionKey = "SimulateCommand_accessPoints")
	int accessPoints;

	@Option(names = "--seed", paramLabel = "N", defaultValue = ""
			+ MarrowQuay.DEFAULT_SEED, descriptionKey = "SimulateCommand_seed")
	long seed;

	@Option(names = "--clean", descriptionKey = "SimulateCommand_clean")
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
			out().println(Words.bind(Messages.SimulateCommand_linesOfPlantedFaultsIn, archive.truth().size(),
					out.resolve("truth.csv")));
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
					Words.bind(Messages.SimulateCommand_samplesMustBeAtLeast, VISIT, samples));
		}
		RadioMap map = RandomMap.of(seed, size, samples, workers);
		RadioMap test = RandomMap.testOf(seed, size, samples / VISIT, workers);
		write("map.csv", map);
		write("test.csv", test);
		if (json) {
			printJson(new Json().put("seed", seed).put("samples", map.size()).put("testSamples", test.size())
					.put("accessPoints", map.accessPointCount()));
		} else {
			out().println(Words.bind(Messages.SimulateCommand_samplesInIn, map.size(), out.resolve("map.csv"),
					test.size(), out.resolve("test.csv")));
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
