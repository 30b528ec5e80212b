package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.measure.SplitFacts;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.report.files.Tables;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

@Command(name = "split", description = {
		"${bundle:SplitCommand_what}",
		"${bundle:SplitCommand_more}" })
final class SplitCommand extends SurveyCommand {

	@Mixin
	SourceArgs sourceArgs;

	@Mixin
	ArchiveSplitArgs archiveSplitArgs;

	@Mixin
	SplitArgs splitArgs;

	@Option(names = "--labels", paramLabel = "OUT.csv", descriptionKey = "SplitCommand_labels")
	Path labels;

	@Override
	void run(Workers workers) throws Exception {
		SplitRequest request = splitArgs.request();
		splitArgs.rule(); // of no use here, but checked
		if (sourceArgs.isArchive()) {
			SplitPlan plan = archiveSplitArgs.plan(splitArgs.kept());
			ArchiveWork.run(this, sourceArgs.source.archive, Mode.EDIT, OnDamage.REFUSE,
					archive -> keep(archive, plan, workers));
			return;
		}
		if (archiveSplitArgs.method != null) {
			throw new ParameterException(spec.commandLine(),
					Messages.SplitCommand_methodIsForArchiveTo);
		}
		Intake intake = read(sourceArgs.source.map, sourceArgs.reading, workers);
		notes(intake, false);
		FileRun run = FileRun.proposed(FileArchive.of(intake), request, splitArgs.rule(), workers);
		if (labels != null) {
			Tables.labels(labels, run);
		}
		if (json) {
			printJson(
					new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
							.put("notHeard", intake.notHeard()).put("split", Results.split(run, workers)));
		} else {
			Results.printSplit(run, workers, out());
		}
	}

	private void keep(OpenArchive archive, SplitPlan plan, Workers workers) throws Exception {
		Archive model = archive.archive();
		SplitMaker.Made made = archiveSplitArgs.make(model, plan, workers);
		made.notes().forEach(this::note);
		AddSplitsCommand keep = new AddSplitsCommand(model, made.splits());
		if (!keep.canExecute()) {
			throw new ArchiveException(
					Words.bind(Messages.SplitCommand_theArchiveHasASplit,
							made.splits().stream().map(Split::getId).collect(Collectors.joining(", "))),
					Messages.SplitCommand_chooseAnotherWithName);
		}
		List<SplitFacts> facts = new ArrayList<>();
		for (Split split : made.splits()) {
			facts.add(SplitFacts.of(SplitOnMap.of(model, split), workers));
		}
		keep.execute();
		if (labels != null) {
			Tables.labels(labels, made.splits());
		}
		String told = ArchiveWork.record(archive, sourceArgs.person, sourceArgs.note);
		if (json) {
			List<Map<String, Object>> splits = new ArrayList<>();
			for (int i = 0; i < facts.size(); i++) {
				splits.add(Results.split(made.splits().get(i), facts.get(i)).fields());
			}
			printJson(new Json().put("splits", splits));
		} else {
			for (int i = 0; i < facts.size(); i++) {
				Results.printSplit(made.splits().get(i), facts.get(i), out());
			}
			out().println(told);
		}
	}
}
