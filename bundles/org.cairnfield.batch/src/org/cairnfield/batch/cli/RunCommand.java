package org.cairnfield.batch.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.report.files.RunFiles;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.TextFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "run", description = "${bundle:RunCommand_what}")
final class RunCommand extends MeasuringCommand {

	@Mixin
	IntakeArgs intakeArgs;

	@Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "RunCommand_out")
	Path out;

	@Override
	List<Path> files() {
		return intakeArgs.map;
	}

	@Override
	IntakeArgs.Reading reading() {
		return intakeArgs.reading;
	}

	@Override
	void prepare() throws IntakeException {
		OutputFolder.make(out);
	}

	@Override
	List<Path> write(FileRun run, Json result, Workers workers) throws IntakeException {
		Path figures = out.resolve("run.json");
		TextFile.write(figures, result + "\n");
		List<Path> files = new ArrayList<>(List.of(figures));
		files.addAll(RunFiles.write(out, run, workers));
		return files;
	}
}
