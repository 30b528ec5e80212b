package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.List;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "measure", description = {
		"${bundle:MeasureCommand_what}",
		"${bundle:MeasureCommand_more}" })
final class MeasureCommand extends MeasuringCommand {

	@Mixin
	SourceArgs sourceArgs;

	@Option(names = "--split", paramLabel = "NAME", descriptionKey = "MeasureCommand_split")
	List<String> splitNames = List.of();

	@Mixin
	PolicyArgs policyArgs;

	@Mixin
	DamageArgs damageArgs;

	@Override
	boolean measuresArchive(SplitRequest request, Workers workers) throws Exception {
		if (sourceArgs.isArchive()) {
			ArchiveWork.run(this, sourceArgs.source.archive, Mode.READ, damageArgs.on(Mode.READ),
					archive -> measure(archive, workers));
		}
		return sourceArgs.isArchive();
	}

	private void measure(OpenArchive archive, Workers workers) throws Exception {
		Archive content = archive.archive();
		List<Split> splits = ArchiveWork.splits(content, splitNames);
		boolean one = splits.size() == 1 && !splitNames.isEmpty();
		ReviewPolicy policy = policyArgs.policy(archive);
		ReleasedMap map = one ? ReleasedMap.within(content, splits.get(0), policy)
				: ReleasedMap.of(content, splits, policy);
		Scope scope = one ? splits.get(0).getScope() : Scope.ARCHIVE;
		Measures measured = Measures.of(map, ArchiveMap.of(content, scope, SurveyKind.TEST).map(), PackRequest.USUAL,
				workers);
		if (measured.ways().isEmpty()) {
			throw new UnfitSurveyException(map.map().size() == 0 ? Messages.MeasureCommand_theArchiveHasNoTraining
					: Words.bind(Messages.MeasureCommand_thereIsNoTestSurvey, scope));
		}
		if (json) {
			printJson(Results.measurement(map, measured));
		} else {
			Results.printMeasurement(map, measured, out());
		}
	}

	@Override
	List<Path> files() {
		return sourceArgs.source.map;
	}

	@Override
	IntakeArgs.Reading reading() {
		return sourceArgs.reading;
	}

	@Override
	void prepare() {
		// nothing is written
	}

	@Override
	List<Path> write(FileRun run, Json result, Workers workers) {
		return List.of(); // the figures are all there is to it
	}
}
