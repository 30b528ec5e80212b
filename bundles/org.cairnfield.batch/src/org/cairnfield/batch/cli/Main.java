package org.cairnfield.batch.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.cairnfield.archive.fault.ArchiveException;
import org.cairnfield.archive.fault.DamagedException;
import org.cairnfield.archive.fault.UnreachableException;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.exchange.IntakeException;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: reads the arguments, runs one command, turns what went wrong into a line and an exit code. */
@Command(name = "cairnfield batch", mixinStandardHelpOptions = true, versionProvider = Version.class, description = "Keep Wi-Fi radio maps: take in surveys, split a map, give noise back, measure the result.", exitCodeListHeading = "%nExit codes:%n", exitCodeList = {
		"0:done", "2:the command line is wrong", "3:a file cannot be read or written, or holds no survey",
		"4:done, but rows were quarantined", "5:too few samples for what was asked, or samples that are not fit for it",
		"6:out of memory",
		"7:an archive cannot be opened or changed", "8:an archive or its history is damaged",
		"9:the remote cannot be reached or does not take what is sent", "10:done, the worst found is a warning",
		"11:done, the worst found is an error", "12:a gate is not met, and nothing was released",
		"13:a release, an exported file or the history is not what it was", "14:done, conflicts are to be decided",
		"15:done, the latest survey of a site contradicts its map", "70:an internal error of Cairnfield" }, footer = {
				"", "Positions are not for safety of life without independent validation; access point addresses",
				"can be personal data: local law decides." })
public final class Main {

	private static final List<Class<?>> COMMANDS = List.of(
			RunCommand.class, IntakeCommand.class, SplitCommand.class, ProposeCommand.class, MeasureCommand.class,
			CheckCommand.class, RulesCommand.class, RemedyCommand.class, WaiveCommand.class, VerdictsCommand.class,
			PeopleCommand.class, HistoryCommand.class, CompareCommand.class, RestoreCommand.class, LocateCommand.class,
			FloorsCommand.class, RenameCommand.class, PolicyCommand.class, GateCommand.class, ReleaseCommand.class,
			ReleasesCommand.class,
			VerifyCommand.class, ExportCommand.class, ReportCommand.class, WaiversCommand.class, ConnectCommand.class,
			CopyCommand.class, ExchangeCommand.class, ConflictsCommand.class, SimulateCommand.class,
			AutoComplete.GenerateCompletion.class, TimelineCommand.class, AgeingCommand.class, RefreshCommand.class,
			WalkCommand.class, WatchCommand.class, StudyCommand.class, FewerCommand.class, PeriodCommand.class,
			SetCommand.class,
			AssignCommand.class, AssignmentsCommand.class,
			CommentCommand.class, CommentsCommand.class, CommandLine.HelpCommand.class);

	/** Those that have to know all of them. */
	private static final Set<Class<?>> ABOUT_ALL = Set.of(AutoComplete.GenerateCompletion.class,
			CommandLine.HelpCommand.class);

	/** What the JVM puts for bytes of an argument that the locale does not know. */
	private static final char UNREADABLE = '\uFFFD';

	private Main() {
	}

	public static void main(String[] args) {
		PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
		PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
		int code = run(args, out, err);
		out.flush();
		System.exit(code);
	}

	/**
	 * Runs one command.
	 *
	 * @return one of {@link ExitCode}
	 */
	public static int run(String[] args, PrintStream out, PrintStream err) {
		PrintWriter outWriter = new TerminalWriter(out, false);
		PrintWriter errWriter = new TerminalWriter(err, true);
		if (Arrays.stream(args).anyMatch(arg -> arg.indexOf(UNREADABLE) >= 0)) {
			errWriter.println("cairnfield: an argument has characters that the locale ("
					+ System.getProperty("sun.jnu.encoding", "unknown")
					+ ") cannot hold; set one of UTF-8, for instance LC_ALL=C.UTF-8");
			return ExitCode.USAGE;
		}
		CommandLine line = lineFor(args).setOut(outWriter).setErr(errWriter)
				.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
				.setCaseInsensitiveEnumValuesAllowed(true)
				.setExecutionExceptionHandler((e, command, parsed) -> explain(e, errWriter))
				.setParameterExceptionHandler((e, parsed) -> {
					errWriter.println("cairnfield: " + wrong(e));
					errWriter.println(
							"\"" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help\" tells more.");
					return ExitCode.USAGE;
				});
		if (args.length == 0) {
			line.usage(outWriter);
			outWriter.flush();
			return ExitCode.USAGE;
		}
		int code = line.execute(args);
		outWriter.flush();
		return code;
	}

	/** Knows only the command that is meant, where one is: to look at the options of all takes longer than most of them do. */
	private static CommandLine lineFor(String[] args) {
		CommandLine line = new CommandLine(new Main());
		String first = args.length == 0 ? "" : args[0];
		List<Class<?>> meant = COMMANDS.stream().filter(command -> !ABOUT_ALL.contains(command))
				.filter(command -> command.getAnnotation(Command.class).name().equals(first)).toList();
		(meant.isEmpty() ? COMMANDS : meant).forEach(line::addSubcommand);
		return line;
	}

	private static String wrong(ParameterException e) {
		if (e instanceof UnmatchedArgumentException unmatched && e.getCommandLine().getParent() == null
				&& !unmatched.isUnknownOption()) {
			return "there is no command '" + unmatched.getUnmatched().get(0) + "'; the commands are "
					+ String.join(", ", e.getCommandLine().getSubcommands().keySet());
		}
		return e.getMessage();
	}

	private static int explain(Exception e, PrintWriter err) {
		if (e instanceof IntakeException || e instanceof NotEnoughException) {
			err.println("cairnfield: " + e.getMessage());
			if (e instanceof IntakeException intake && intake.remedy().contains("mapping")) {
				err.println(
						"\"--column NAME=ROLE\" or \"--mapping FILE\" say it; \"cairnfield batch intake --help\" tells more.");
			}
			return e instanceof IntakeException ? ExitCode.INPUT : ExitCode.NOT_ENOUGH;
		}
		if (e instanceof ArchiveException || e instanceof ReviewRefused) {
			err.println("cairnfield: " + e.getMessage());
			return e instanceof DamagedException ? ExitCode.DAMAGED
					: e instanceof UnreachableException ? ExitCode.UNREACHABLE : ExitCode.ARCHIVE;
		}
		err.println("cairnfield: an internal error, please report it with what you ran: " + e);
		e.printStackTrace(err);
		return ExitCode.INTERNAL;
	}
}
