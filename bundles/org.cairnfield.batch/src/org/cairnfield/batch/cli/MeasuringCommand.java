package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.Intake;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Reads a map and perhaps a test survey, does the whole job, and shows the figures. */
abstract class MeasuringCommand extends SurveyCommand {

	@Option(names = "--test", arity = "1..*", paramLabel = "FILE", descriptionKey = "MeasuringCommand_test")
	List<Path> test = List.of();

	@Mixin
	SplitArgs splitArgs;

	@Override
	final void run(Workers workers) throws Exception {
		SplitRequest request = splitArgs.request();
		ProposalRule rule = splitArgs.rule();
		if (measuresArchive(request, workers)) {
			return;
		}
		prepare();
		Intake intake = read(files(), reading(), workers);
		FileArchive files;
		if (test.isEmpty()) {
			files = FileArchive.heldOut(intake, request.seed());
		} else {
			Intake tested = read(test, reading(), workers);
			notes(tested, false);
			requireCommonAccessPoint(intake.map(), tested.map());
			files = FileArchive.of(intake, tested);
		}
		notes(intake, false);
		FileRun run = FileRun.measured(files, request, rule, workers);
		Json result = json(run, workers);
		List<Path> written = write(run, result, workers);
		if (json) {
			printJson(result);
			return;
		}
		print(run, workers);
		if (!written.isEmpty()) {
			out().println();
			Path folder = written.get(0).getParent();
			out().println(Words.bind(Messages.MeasuringCommand_writtenTo, folder == null ? "." : folder,
					written.stream().map(f -> f.getFileName().toString()).collect(Collectors.joining(", "))));
		}
	}

	/** Whether what an archive keeps was measured, in place of files. */
	boolean measuresArchive(SplitRequest request, Workers workers) throws Exception {
		return false;
	}

	/** Survey files of the map. */
	abstract List<Path> files();

	/** How to read them. */
	abstract IntakeArgs.Reading reading();

	/** What must be possible before anything is computed. */
	abstract void prepare() throws Exception;

	/** Keeps the results; answers the files written, all in one folder. */
	abstract List<Path> write(FileRun run, Json result, Workers workers) throws Exception;

	static void requireCommonAccessPoint(RadioMap map, RadioMap test) throws NotEnoughException {
		if (Collections.disjoint(new HashSet<>(map.accessPoints()), test.accessPoints())) {
			throw new NotEnoughException(
					Words.bind(Messages.MeasuringCommand_mapAndTestSurveyHave, some(map), some(test)));
		}
	}

	private static String some(RadioMap map) {
		List<String> names = map.accessPoints();
		return names.isEmpty() ? "none"
				: String.join(", ", names.subList(0, Math.min(3, names.size()))) + (names.size() > 3 ? " …" : "");
	}

	private static Json json(FileRun run, Workers workers) {
		Intake intake = run.files().intake();
		return new Json().put("samples", intake.map().size()).put("accessPoints", intake.map().accessPointCount())
				.put("notHeard", intake.notHeard())
				.put("trainingSamples", run.files().training()).put("testSamples", run.files().tests())
				.put("heldOut", run.files().isHeldOut()).put("setAside", run.setAside())
				.put("quarantined", intake.quarantined())
				.put("split", Results.split(run, workers)).put("proposals", Results.proposals(run))
				.put("variants", Results.ways(run));
	}

	private void print(FileRun run, Workers workers) {
		Intake intake = run.files().intake();
		out().printf(Locale.ROOT, Messages.MeasuringCommand_mapSamplesAccessPointsNot, intake.map().size(),
				intake.map().accessPointCount(), intake.notHeard());
		out().printf(Locale.ROOT, Messages.MeasuringCommand_testSamples, run.files().tests(),
				run.files().isHeldOut()
						? Words.bind(Messages.MeasuringCommand_heldOutByBlocksOf, run.files().training())
						: Messages.MeasuringCommand_aSurveyOfItsOwn);
		out().println(Words.bind(Messages.MeasuringCommand_cleaned, run.cleaned()));
		Results.printSplit(run, workers, out());
		Results.printProposals(run, out());
		out().println();
		Results.printWays(run, out());
	}
}
