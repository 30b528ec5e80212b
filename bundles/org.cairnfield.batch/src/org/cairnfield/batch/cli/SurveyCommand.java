package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.Damage;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.report.files.OutputFolder;
import org.cairnfield.curation.run.Threads;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.Quarantine;
import org.cairnfield.exchange.pack.PackLimitException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What commands on surveys share: threads and progress, reading files and saying what became of them. */
abstract class SurveyCommand implements Callable<Integer> {

	@Spec
	CommandSpec spec;

	@Option(names = "--json", descriptionKey = "SurveyCommand_json")
	boolean json;

	@Option(names = { "-q", "--quiet" }, descriptionKey = "SurveyCommand_quiet")
	boolean quiet;

	@Option(names = { "-h", "--help" }, usageHelp = true, descriptionKey = "SurveyCommand_help")
	boolean help;

	private int ending = ExitCode.OK;
	private Set<Damage> damages;
	private final Set<Path> quarantineFiles = new HashSet<>();

	@Override
	public final Integer call() throws Exception {
		try (Threads threads = Threads.ofMachine()) {
			ConsoleProgress progress = ConsoleProgress.on(err(), quiet);
			try {
				run(threads.workers(progress));
			} finally {
				progress.end();
			}
			return damages == null || damages.isEmpty() ? ending : ExitCode.DAMAGED;
		} catch (OutOfMemoryError e) {
			err().println(Messages.SurveyCommand_cairnfieldOutOfMemoryGive);
			return ExitCode.MEMORY;
		} catch (UnfitSurveyException | PackLimitException e) {
			throw withDamage(new NotEnoughException(e.getMessage()));
		} catch (ArchiveException | IntakeException | NotEnoughException e) {
			throw withDamage(e);
		}
	}

	/** Whatever cannot be done with a damaged archive may be due to the damage, which scripts then find in the JSON. */
	private Exception withDamage(Exception e) {
		if (e instanceof DamagedException damaged) {
			meet(damaged.damages());
		}
		if (damages == null || damages.isEmpty()) {
			return e;
		}
		if (json) {
			printJson(new Json());
		}
		return e instanceof DamagedException ? e
				: new DamagedException(e.getMessage(), Messages.SurveyCommand_theArchiveIsDamagedWhich,
						List.copyOf(damages),
						e);
	}

	/** Lists what is wrong with an archive; it is in the JSON from then on, and the command ends with {@link ExitCode#DAMAGED}. */
	final void meet(List<Damage> found) {
		damages = damages == null ? new LinkedHashSet<>() : damages;
		list(found.stream().filter(damages::add).toList());
	}

	/** Lists what is wrong with an archive, for a command that may be the remedy. */
	final void list(List<Damage> found) {
		found.forEach(damage -> err().println(Words.bind(Messages.SurveyCommand_cairnfieldDamaged, damage)));
	}

	/** What is wrong with the archive, as far as it was met. */
	final List<Damage> damages() {
		return damages == null ? List.of() : List.copyOf(damages);
	}

	/** Prints the one object of a command; of an archive it lists the damages too. */
	final void printJson(Json result) {
		if (damages != null) {
			result.put("damages", damages.stream().map(d -> new Json().put("file", d.file()).put("line", d.line())
					.put("reason", d.reason()).put("remedy", d.remedy()).fields()).toList());
		}
		out().println(result);
	}

	abstract void run(Workers workers) throws Exception;

	/** What the exit code is to say, if the command comes to its end. */
	final void endWith(int code) {
		ending = code;
	}

	PrintWriter out() {
		return spec.commandLine().getOut();
	}

	PrintWriter err() {
		return spec.commandLine().getErr();
	}

	/** Reads survey files; writes what was quarantined and says so on standard error. */
	Intake read(List<Path> files, IntakeArgs.Reading reading, Workers workers) throws Exception {
		requireNames(files);
		Intake intake = reading.read(files, workers.reportingTo(withoutNotes(workers.progress())));
		for (Quarantine quarantine : intake.quarantines()) {
			report(quarantine, reading.quarantine);
		}
		if (intake.map().size() == 0) {
			throw new NotEnoughException(Words.bind(Messages.SurveyCommand_noRowCouldBeTaken,
					files.stream().map(Path::toString).collect(Collectors.joining(", "))));
		}
		return intake;
	}

	/** An empty name is that of the current folder; it mostly comes of a variable that a script never set. */
	final void requireNames(List<Path> files) {
		if (files.stream().anyMatch(f -> f.toString().isEmpty())) {
			throw new ParameterException(spec.commandLine(), Messages.SurveyCommand_aSurveyFileHasAn);
		}
	}

	private void report(Quarantine quarantine, Path folder) throws IntakeException {
		if (quarantine.size() == 0) {
			return;
		}
		endWith(ExitCode.QUARANTINED);
		Optional<Path> written = folder == null ? quarantine.writeBeside()
				: quarantine.writeTo(OutputFolder.make(free(folder, quarantine.fileName())));
		String reasons = quarantine.counts().entrySet().stream().map(e -> e.getValue() + " " + e.getKey())
				.collect(Collectors.joining(", "));
		err().println(Words.bind(Messages.SurveyCommand_cairnfieldQuarantined, quarantine.file(), quarantine.size(),
				quarantine.size() == 1 ? Messages.SurveyCommand_row : Messages.SurveyCommand_rows, reasons,
				written.map(p -> Words.bind(Messages.SurveyCommand_see, p)).orElse("")));
	}

	/** The folder, or a numbered one in it where files of one name come from several folders. */
	private Path free(Path folder, String name) {
		Path free = folder;
		for (int n = 2; !quarantineFiles.add(free.resolve(name)); n++) {
			free = folder.resolve(Integer.toString(n));
		}
		return free;
	}

	/** Intake's notes come with its result, where each can be said once. */
	private static Progress withoutNotes(Progress progress) {
		return new Progress() {
			@Override
			public void begin(String step, long units) {
				progress.begin(step, units);
			}

			@Override
			public void advance(long units) {
				progress.advance(units);
			}

			@Override
			public boolean isCancelled() {
				return progress.isCancelled();
			}
		};
	}

	/** Notes that a person should see, on standard error. */
	void notes(Intake intake, boolean all) {
		if (!quiet) {
			IntakeNotes.of(intake).print(err(), all);
		}
	}

	/** Something a person should see, on standard error. */
	void note(String text) {
		if (!quiet) {
			err().println(Words.bind(Messages.SurveyCommand_note, text));
		}
	}
}
