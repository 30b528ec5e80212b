package org.cairnfield.batch.cli;

import java.util.List;
import java.util.Map;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.ArchiveDiff;
import org.cairnfield.archive.history.History;
import org.cairnfield.archive.history.ObjectChange;
import org.cairnfield.archive.history.SurveyDiff;
import org.cairnfield.core.task.Workers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "compare", description = "${bundle:CompareCommand_what}")
final class CompareCommand extends ArchiveCommand {

	@Parameters(index = "0", paramLabel = "BEFORE", descriptionKey = "CompareCommand_before")
	String before;

	@Parameters(index = "1", arity = "0..1", paramLabel = "AFTER", descriptionKey = "CompareCommand_after")
	String after;

	@Override
	Mode mode() {
		return Mode.READ;
	}

	@Override
	void run(OpenArchive archive, Workers workers) throws Exception {
		try (History history = archive.history()) {
			ArchiveDiff diff = after == null ? history.compareWithSaved(history.find(before))
					: history.compare(history.find(before), history.find(after));
			if (json) {
				printJson(json(diff));
				return;
			}
			diff.summary().forEach(out()::println);
			if (diff.isEmpty()) {
				out().println(Messages.CompareCommand_noDifference);
			}
		}
	}

	private static Json json(ArchiveDiff diff) {
		List<Map<String, Object>> surveys = diff.surveys().stream().map(CompareCommand::json).toList();
		List<Map<String, Object>> objects = diff.objects().stream().map(CompareCommand::json).toList();
		return new Json().put("summary", diff.summary()).put("surveys", surveys).put("objects", objects);
	}

	private static Map<String, Object> json(SurveyDiff survey) {
		return new Json().put("survey", survey.survey())
				.put("samples", survey.samples().stream().map(c -> c.id()).toList())
				.put("readingsAdded", survey.readingsAdded()).put("readingsRemoved", survey.readingsRemoved())
				.put("readingsChanged", survey.readingsChanged()).fields();
	}

	private static Map<String, Object> json(ObjectChange change) {
		return new Json().put("what", change.what()).put("id", change.id())
				.put("way", change.way().name().toLowerCase(java.util.Locale.ROOT))
				.put("fields", change.fields().stream().map(Object::toString).toList()).fields();
	}
}
