package org.cairnfield.batch.cli;

import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.study.FewerAccessPoints;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "fewer", description = {
		"${bundle:FewerCommand_what}",
		"${bundle:FewerCommand_more}" })
final class FewerCommand extends ArchiveCommand {

	@Option(names = "--keep", paramLabel = "N", descriptionKey = "FewerCommand_keep")
	Integer keep;

	@Option(names = "--seed", paramLabel = "N", defaultValue = "1", descriptionKey = "FewerCommand_seed")
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
					.orElseThrow(
							() -> new ParameterException(
									spec.commandLine(), Words.bind(
											Messages.FewerCommand_keepMustBeOneOf, String.join(", ",
													fewer.steps().stream().skip(1)
															.map(each -> Integer.toString(each.kept())).toList()),
											keep)));
			new RemedyCommands(archive.archive()).apply(step.remedy());
			record(archive);
		}
		if (json) {
			printJson(new Json().put("steps", fewer.steps().stream().map(FewerCommand::step).toList())
					.put("proposed", fewer.proposed().map(FewerAccessPoints.Step::kept).orElse(null)));
			return;
		}
		for (FewerAccessPoints.Step step : fewer.steps()) {
			out().println(
					step + (fewer.proposed().filter(step::equals).isPresent() ? Messages.FewerCommand_proposed : ""));
		}
		if (fewer.proposed().isEmpty()) {
			out().println(Messages.FewerCommand_measuredNoGainAllOf);
		}
	}

	private static Map<String, Object> step(FewerAccessPoints.Step step) {
		return new Json().put("accessPoints", step.kept()).put("others", List.copyOf(step.others()))
				.put("errorM", step.errorM())
				.put("comparisonShare", step.comparisonShare()).put("packBytes", step.bytes()).fields();
	}
}
