package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.PlantedFault;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.task.Workers;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.exchange.WideTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "simulate", description = "Write the invented surveys of Marrow Quay Museums, and the faults planted in them.")
final class SimulateCommand extends SurveyCommand {

	@Option(names = "--out", required = true, paramLabel = "DIR",
			description = "Folder for surveys/, test/, later/ and truth.csv; made where there is none.")
	Path out;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "" + MarrowQuay.DEFAULT_SEED,
			description = "Seed; the same seed gives the same bytes. Default ${DEFAULT-VALUE}.")
	long seed;

	@Option(names = "--clean", description = "Plant no faults.")
	boolean clean;

	@Override
	void run(Workers workers) throws Exception {
		OutputFolder.make(out);
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
		ResultTable.write(folder("").resolve("truth.csv"), PlantedFault.COLUMNS, archive.truth().stream().map(PlantedFault::fields));
		SimulatedArchive later = MarrowQuay.later(seed);
		for (SimulatedSurvey survey : later.surveys()) {
			Path file = folder("later").resolve(survey.name() + ".csv");
			WideTable.write(file, survey.map(), survey.sampleIds());
			table.row(survey.name(), Integer.toString(survey.map().size()), survey.site(), survey.device(), survey.date().toString());
			written.add(new Json().put("file", file.toString()).put("samples", survey.map().size()).fields());
		}
		ResultTable.write(folder("later").resolve("truth.csv"), PlantedFault.COLUMNS, later.truth().stream().map(PlantedFault::fields));
		if (json) {
			printJson(new Json().put("seed", seed).put("surveys", written).put("faults", archive.truth().size()));
		} else {
			table.print(out());
			out().println();
			out().println(archive.truth().size() + " lines of planted faults in " + out.resolve("truth.csv"));
		}
	}

	private Path folder(String name) throws IntakeException {
		return OutputFolder.make(out.resolve(name));
	}
}
