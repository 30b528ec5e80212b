package org.cairnfield.spark;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.match.Search;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.Mapping;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: local on its own, on a cluster by spark-submit. */
@Command(name = "cairnfield spark", sortOptions = false, description = {
		"The whole job of \"batch run\" on Apache Spark: surveys in; split map, proposals, figures and device packs out.",
		"The same labels, proposals and figures as on one machine: positive levels, city-block distance." }, footer = {
				"", "On a cluster:", "  spark-submit --master URL --class org.cairnfield.spark.SparkCommand \\",
				"    target/spark/cairnfield-spark.jar --epsilon 92 \\",
				"    --map hdfs:///surveys/*.csv --out hdfs:///split",
				"\"cairnfield spark\" builds that jar. Paths are any that Spark can read and write.", "",
				"Exit codes: 0 done, 2 wrong command line, 3 a file cannot be read or written,",
				"4 done but rows were quarantined, 5 too few samples, 70 an internal error." })
public final class SparkCommand implements Callable<Integer> {

	/** minPts unless given, as in the batch command. */
	private static final int MIN_PTS = 3;

	@Spec
	private CommandSpec spec;

	@Option(names = "--map", arity = "1..*", required = true, paramLabel = "PATH", description = "Survey files of the map: files, folders, patterns; Parquet where the name ends in .parquet.")
	private List<String> map;

	@Option(names = "--test", arity = "1..*", paramLabel = "PATH", description = "Surveys to test with; otherwise a fifth of the samples is held out, by blocks of positions.")
	private List<String> test = List.of();

	@Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where the results go.")
	private String out;

	@Option(names = "--epsilon", required = true, paramLabel = "E", description = "DBSCAN's ε. Choose it with \"batch run\" on some of the sites: no choice is made on the cluster.")
	private double epsilon;

	@Option(names = "--min-pts", paramLabel = "K", description = "DBSCAN's minPts, the sample itself counted; default ${DEFAULT-VALUE}.")
	private int minPts = MIN_PTS;

	@Option(names = "--search", paramLabel = "SEARCH", description = "How the split is searched: published (default: nearest cluster, nearest sample in it), "
			+ "or e.g. \"cut groups 3 cells 4 relative k 3 weighted\".")
	private String search = "published";

	@Option(names = "--gate", paramLabel = "SHARE", description = "Noise share from which proposals are made; default ${DEFAULT-VALUE}.")
	private double gate = ProposalRule.USUAL.gate();

	@Option(names = "--threshold", paramLabel = "R", description = "Smallest correlation for a proposal; default ${DEFAULT-VALUE}.")
	private double threshold = ProposalRule.USUAL.threshold();

	@Option(names = "--seed", paramLabel = "N", description = "Seed of all that is drawn; default ${DEFAULT-VALUE}.")
	private long seed = 1;

	@Option(names = "--mapping", paramLabel = "FILE", description = "How to read survey files, as \"batch intake --keep-mapping\" writes it.")
	private Path mapping;

	@Option(names = "--keep-samples", paramLabel = "FOLDER", description = "Also write what was taken in as Parquet by site, for later --map; the name must end in .parquet.")
	private String keepSamples;

	@Option(names = "--no-packs", description = "No device packs.")
	private boolean noPacks;

	@Option(names = "--largest", paramLabel = "N", description = "Samples within earshot of each other that one task clusters; more are cut into ranges. "
			+ "Changes no result; default ${DEFAULT-VALUE}.")
	private int largest = 200_000;

	@Option(names = { "-q", "--quiet" }, description = "No progress on standard error.")
	private boolean quiet;

	@Option(names = { "-h", "--help" }, usageHelp = true, description = "Show this help.")
	private boolean help;

	/** Ends the program with the exit code. */
	public static void main(String[] args) {
		PrintStream printer = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		int code = run(args, printer, new PrintStream(System.err, true, StandardCharsets.UTF_8));
		printer.flush();
		System.exit(code);
	}

	static int run(String[] args, PrintStream out, PrintStream err) {
		PrintWriter errors = new PrintWriter(err, true);
		return new CommandLine(new SparkCommand()).setOut(new PrintWriter(out, true)).setErr(errors)
				.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
				.setExecutionExceptionHandler((e, command, parsed) -> {
					errors.println("cairnfield: "
							+ (e instanceof JobException ? e.getMessage()
									: "an internal error, please report it with what you ran: " + e));
					if (!(e instanceof JobException)) {
						e.printStackTrace(errors);
					}
					return e instanceof JobException job ? job.exitCode() : JobException.INTERNAL;
				}).setParameterExceptionHandler((e, parsed) -> {
					errors.println("cairnfield: " + e.getMessage());
					errors.println("\"cairnfield spark --help\" tells more.");
					return JobException.USAGE;
				}).execute(args);
	}

	@Override
	public Integer call() throws Exception {
		SplitJob.Request request = request();
		SparkConf conf = new SparkConf();
		SparkSession.Builder builder = SparkSession.builder().appName("Cairnfield")
				.config("spark.sql.sources.partitionColumnTypeInference.enabled", false); // a site may be called 007
		SparkSession session = (conf.contains("spark.master") ? builder
				: builder.master("local[*]").config("spark.ui.enabled", false)).getOrCreate();
		try {
			SplitJob.Result result = new SplitJob(session, request, step -> note(step + " …")).run(out + "/packs");
			new ResultFiles(session, result, request.rule(), out).write();
			if (keepSamples != null) {
				SurveyTables.write(session, result.surveys(), keepSamples);
			}
			print(result, request.rule());
			return result.quarantined() > 0 ? JobException.QUARANTINED : 0;
		} finally {
			session.stop();
		}
	}

	private SplitJob.Request request() throws JobException {
		require(epsilon >= 0 && epsilon < Double.POSITIVE_INFINITY,
				"--epsilon must be a number from 0 up, was " + epsilon);
		require(minPts >= 1, "--min-pts must be at least 1, was " + minPts);
		require(largest >= 1, "--largest must be at least 1, was " + largest);
		require(keepSamples == null || SurveyTables.isTable(keepSamples),
				"--keep-samples must end in .parquet, was " + keepSamples);
		try {
			IntakeOptions options = mapping == null ? IntakeOptions.GUESS : Mapping.read(mapping);
			return new SplitJob.Request(map, test, Mapping.format(options), epsilon, minPts,
					search.equals("published") ? Search.PUBLISHED : Search.parse(search),
					new ProposalRule(gate, threshold), seed, largest, !noPacks);
		} catch (IllegalArgumentException e) {
			throw new ParameterException(spec.commandLine(), e.getMessage());
		} catch (IntakeException e) {
			throw new JobException(JobException.INPUT, e.getMessage());
		}
	}

	private void require(boolean right, String otherwise) {
		if (!right) {
			throw new ParameterException(spec.commandLine(), otherwise);
		}
	}

	private void note(String text) {
		if (!quiet) {
			spec.commandLine().getErr().println("cairnfield: " + text);
		}
	}

	private void print(SplitJob.Result result, ProposalRule rule) {
		PrintWriter to = spec.commandLine().getOut();
		to.printf(Locale.ROOT,
				"map          %d samples, %d set aside; surveys read: %d; components out of earshot of each other: %d%n",
				result.taking().size(), result.taking().setAside(), result.surveys().count(), result.components());
		to.printf(Locale.ROOT, "split        %d clusters, %.1f %% noise (ε %.6g, minPts %d)%n",
				result.split().clusters(),
				100 * result.split().noiseShare(), epsilon, minPts);
		to.printf(Locale.ROOT, "proposals    %d for %d noise samples%s%n",
				result.placements().stream().filter(rule::proposes).count(), result.split().noise(),
				rule.opens(result.split()) ? "" : ": noise is below the gate");
		to.printf(Locale.ROOT, "test         %d samples, %s%n", result.tests(),
				result.heldOut() ? "held out by blocks of positions" : "a survey of its own");
		result.figures().stream().filter(f -> f.site() == null)
				.forEach(f -> to.printf(Locale.ROOT, "%-16s mean %.3f m, median %.3f m, 95 %% %.3f m, %.1f compared%n",
						f.way(),
						f.errors().meanMetres(), f.errors().medianMetres(), f.errors().p95Metres(), f.comparisons()));
		result.packs().stream().filter(p -> p.problem() != null)
				.forEach(p -> to.println("no pack of " + p.site() + ": " + p.problem()));
		to.println("written to " + out);
		if (result.quarantined() > 0) {
			to.println(result.quarantined() + " rows were quarantined, see quarantine.parquet");
		}
	}
}
