package org.cairnfield.batch.cli;

import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.study.FewerAccessPoints;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "fewer", description = {
		"Find out how few access points will do: those that explain the place best, and what it costs to leave the others out, "
				+ "measured on held-out training positions.",
		"With --keep the others are set aside, as one save point that can be restored." })
final class FewerCommand extends ArchiveCommand {

	@Option(names = "--keep", paramLabel = "N", description = "Set all but so many access points aside: one of the numbers that are listed.")
	Integer keep;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all that is drawn; default ${DEFAULT-VALUE}.")
	long seed;

	@Override
	Mode mode() {
		return keep == null ? Mode.READ : Mode.EDIT;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		FewerAccessPoints fewer = FewerAccessPoints.of(archive.archive(), seed, workers);
		if (keep != null) {
			FewerAccessPoints.Step step = fewer.steps().stream().skip(1).filter(each -> each.kept() == keep).findFirst()
					.orElseThrow(() -> new ParameterException(spec.commandLine(), "--keep must be one of "
							+ String.join(", ",
									fewer.steps().stream().skip(1).map(each -> Integer.toString(each.kept())).toList())
							+ ", was " + keep));
			new RemedyCommands(archive.archive()).apply(step.remedy());
			record(archive);
		}
		if (json) {
			printJson(new Json().put("steps", fewer.steps().stream().map(FewerCommand::step).toList())
					.put("proposed", fewer.proposed().map(FewerAccessPoints.Step::kept).orElse(null)));
			return;
		}
		for (FewerAccessPoints.Step step : fewer.steps()) {
			out().println(step + (fewer.proposed().filter(step::equals).isPresent() ? "  (proposed)" : ""));
		}
		if (fewer.proposed().isEmpty()) {
			out().println("measured: no gain, all of them are needed");
		}
	}

	private static Map<String, Object> step(FewerAccessPoints.Step step) {
		return new Json().put("accessPoints", step.kept()).put("others", List.copyOf(step.others()))
				.put("errorM", step.errorM())
				.put("comparisonShare", step.comparisonShare()).put("packBytes", step.bytes()).fields();
	}
}
