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
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.ReviewRefused;
import org.cairnfield.exchange.IntakeException;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: reads the arguments, runs one command, turns what went wrong into a line and an exit code. */
@Command(name = "cairnfield batch", mixinStandardHelpOptions = true, versionProvider = Version.class, description = "${bundle:Main_what}", exitCodeListHeading = "${bundle:Main_exitcodes}", exitCodeList = {
		"0:${bundle:Main_exit0}", "2:${bundle:Main_exit2}", "3:${bundle:Main_exit3}",
		"4:${bundle:Main_exit4}", "5:${bundle:Main_exit5}",
		"6:${bundle:Main_exit6}",
		"7:${bundle:Main_exit7}", "8:${bundle:Main_exit8}",
		"9:${bundle:Main_exit9}", "10:${bundle:Main_exit10}",
		"11:${bundle:Main_exit11}", "12:${bundle:Main_exit12}",
		"13:${bundle:Main_exit13}", "14:${bundle:Main_exit14}",
		"15:${bundle:Main_exit15}", "70:${bundle:Main_exit70}" }, footer = {
				"", "${bundle:Main_footer}",
				"${bundle:Main_footer2}" })
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
			errWriter.println(Words.bind(Messages.Main_cairnfieldAnArgumentHasCharacters,
					System.getProperty("sun.jnu.encoding", "unknown")));
			return ExitCode.USAGE;
		}
		CommandLine line = lineFor(args).setOut(outWriter).setErr(errWriter)
				.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
				.setCaseInsensitiveEnumValuesAllowed(true)
				.setExecutionExceptionHandler((e, command, parsed) -> explain(e, errWriter))
				.setParameterExceptionHandler((e, parsed) -> {
					errWriter.println(Words.bind(Messages.Main_cairnfield, wrong(e)));
					errWriter.println(
							Words.bind(Messages.Main_helpTellsMore,
									e.getCommandLine().getCommandSpec().qualifiedName()));
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
		return line.setResourceBundle(Words.of(Messages.class));
	}

	private static String wrong(ParameterException e) {
		if (e instanceof UnmatchedArgumentException unmatched && e.getCommandLine().getParent() == null
				&& !unmatched.isUnknownOption()) {
			return Words.bind(Messages.Main_thereIsNoCommandThe, unmatched.getUnmatched().get(0),
					String.join(", ", e.getCommandLine().getSubcommands().keySet()));
		}
		return e.getMessage();
	}

	private static int explain(Exception e, PrintWriter err) {
		if (e instanceof IntakeException || e instanceof NotEnoughException) {
			err.println(Words.bind(Messages.Main_cairnfield, e.getMessage()));
			if (e instanceof IntakeException intake && intake.remedy().contains("mapping")) {
				err.println(
						Messages.Main_columnNameRoleOrMapping);
			}
			return e instanceof IntakeException ? ExitCode.INPUT : ExitCode.NOT_ENOUGH;
		}
		if (e instanceof ArchiveException || e instanceof ReviewRefused) {
			err.println(Words.bind(Messages.Main_cairnfield, e.getMessage()));
			return e instanceof DamagedException ? ExitCode.DAMAGED
					: e instanceof UnreachableException ? ExitCode.UNREACHABLE : ExitCode.ARCHIVE;
		}
		err.println(Words.bind(Messages.Main_cairnfieldAnInternalErrorPlease, e));
		e.printStackTrace(err);
		return ExitCode.INTERNAL;
	}
}
