package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Help, wrong command lines, and what goes to which stream. */
@Isolated
class CommandLineTest {

	@TempDir
	Path folder;
	private Path survey;

	@BeforeEach
	void simulate() {
		survey = TestSurveys.plain(folder.resolve("survey.csv"), TestSurveys.map(60));
	}

	@Test
	void helpListsCommandsAndExitCodes() {
		Cli help = Cli.ok("--help");
		for (String word : List.of("run", "intake", "split", "propose", "measure", "check", "remedy", "waive",
				"history", "compare", "restore", "gate", "release", "releases",
				"verify", "export", "report", "simulate", "Exit codes", "quarantined", "70")) {
			assertTrue(help.out().contains(word), word);
		}
		assertEquals("", help.err());
		assertEquals(help.out(), Cli.run().ended(ExitCode.USAGE).out());
	}

	@ParameterizedTest
	@CsvSource({ "run,--map --test --out --json --seed --epsilon --min-pts",
			"split,--map --archive --name --scope --per-floor --epsilon --min-pts --labels",
			"propose,--map --archive --split --epsilon --min-pts --proposals --gate --threshold",
			"measure,--map --archive --split --test --json",
			"verdicts,--archive --split --export --import --carry-from --bands --second",
			"intake,--map --preview --keep-mapping --wide --layout --not-heard",
			"waive,--archive --rule --finding --reason --dry-run --person --note", "simulate,--out --seed --clean" })
	void helpOfEachCommandNamesItsOptions(String verb, String options) {
		Cli help = Cli.ok(verb, "--help");
		assertTrue(help.out().startsWith("Usage: cairnfield batch " + verb), help::toString);
		for (String option : options.split(" ")) {
			// in the list of options, not only in the line of usage
			assertTrue(help.out().lines().anyMatch(l -> l.matches(" +(-., )?" + option + "(=.*| +[A-Z].*|)")), option);
		}
		assertEquals(help.out(), Cli.ok("help", verb).out());
	}

	@Test
	void tellsItsVersion() {
		assertTrue(Cli.ok("--version").out().startsWith("Cairnfield "));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "split --epsilon wide|--epsilon|'wide' is not a double",
			"split --epsilon -1|--epsilon must be a number from 0 up|-1", "split --epsilon NaN|--epsilon|NaN",
			"split --min-pts 0|--min-pts must be at least 1|0", "split --min-pts 2.5|--min-pts|2.5",
			"split --seed x|--seed|x",
			"split --representation loud|no representation 'loud'|positive, normalised, exponential or powed",
			"split --distance far|no distance 'far'|city-block or euclidean", "split --pca 2|--pca must be above 0|2.0",
			"split --pca 0|--pca must be above 0|0.0", "propose --gate 2|gate must be within 0|2.0",
			"propose --threshold 2|threshold within|2.0", "split --colour blue|Unknown option|--colour",
			"intake --layout round|--layout|WIDE, LONG, PAIRED",
			"intake --separator ab|--separator|comma, semicolon, tab",
			"intake --separator \"|--separator|comma, semicolon, tab", "intake --charset runes|no character set|runes",
			"intake --decimal ;|decimal mark must be a point or a comma|;",
			"intake --metres-per-unit 0|metres to a unit must be positive|0",
			"intake --metres-per-unit wide|--metres-per-unit|wide", "intake --floor top|--floor|top",
			"intake --floor 40000|--floor must be within -999|40000", "intake --column A|NAME=ROLE|A",
			"intake --column A=loud|'loud' is not one of|access-point", "run --json|--out=DIR|Missing" })
	void namesTheOptionThatIsWrong(String command, String first, String second) {
		List<Object> args = new ArrayList<>(List.of(command.split(" ")));
		args.addAll(List.of("--map", survey));
		Cli done = Cli.run(args.toArray()).ended(ExitCode.USAGE).says("cairnfield: ", first, second,
				"\"cairnfield batch " + args.get(0) + " --help\" tells more.");
		assertEquals("", done.out());
		assertFalse(done.err().contains("org.cairnfield"), done::toString);
	}

	@ParameterizedTest
	@ValueSource(strings = { "--site", "--device" })
	void refusesBlankNames(String option) {
		Cli.run("intake", "--map", survey, option, " ").ended(ExitCode.USAGE).says(option + " must be a name");
	}

	@Test
	void refusesTheEmptyNameOfAVariableThatWasNeverSet() {
		for (String verb : List.of("intake", "split", "measure")) {
			Cli.run(verb, "--map", "").ended(ExitCode.USAGE).says("a survey file has an empty name");
		}
	}

	@Test
	void listsTheCommandsWhereOneIsUnknown() {
		Cli.run("cluster", "--map", survey).ended(ExitCode.USAGE).says("no command 'cluster'",
				"run, intake, split, propose, measure, check, rules, remedy, waive, verdicts,",
				"history, compare, restore,", "connect, copy, exchange, conflicts,", "simulate");
	}

	@Test
	void namesTheFileThatIsMissing() {
		Cli.run("split").ended(ExitCode.USAGE).says("--map=FILE", "--archive=DIR");
		Cli.run("run", "--out", survey).ended(ExitCode.USAGE).says("Missing required option: '--map=FILE'");
		Cli.run("simulate").ended(ExitCode.USAGE).says("'--out=DIR'");
		Cli.run("intake", "--map", survey, "--column", "harbour=x").ended(ExitCode.INPUT).says(survey,
				"no column 'harbour'", "#3");
	}

	@Test
	void progressGoesToStandardErrorOnly() {
		for (String verb : List.of("split", "propose", "measure")) {
			Cli loud = Cli.ok(verb, "--map", survey, "--epsilon", 130, "--min-pts", 3);
			Cli quiet = Cli.ok(verb, "--map", survey, "--epsilon", 130, "--min-pts", 3, "--quiet");
			assertTrue(loud.err().contains("reading surveys …"), loud::toString);
			assertTrue(loud.err().contains("clustering …"), loud::toString);
			assertEquals("", quiet.err());
			assertFalse(loud.out().contains("…" + System.lineSeparator()), loud::toString);
			if (!verb.equals("measure")) { // whose times differ
				assertEquals(loud.out(), quiet.out());
			}
		}
		assertEquals("", Cli.ok("split", "--map", survey, "-q", "--json").err());
	}

	@Test
	void quietStillTellsOfQuarantineAndTrouble() {
		Path bad = TestSurveys.text(folder.resolve("bad.csv"),
				"x,y,floor,building,A,B\n1,2,0,Quay,-50,-60\n1,2,0,Quay,-51,-61\neast,2,0,Quay,-50,-60\n");
		Cli.run("intake", "-q", "--map", bad).ended(ExitCode.QUARANTINED).says("1 row quarantined");
		Cli.run("intake", "-q", "--map", folder.resolve("none.csv")).ended(ExitCode.INPUT).says("no such file");
	}

	@Test
	void printsPointsWhateverTheLocale() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.ROOT);
			String expected = Cli.ok("propose", "--map", survey, "--epsilon", 130.5, "--min-pts", 3).out();
			Locale.setDefault(Locale.GERMANY);
			assertNotEquals("0.5", String.format("%.1f", 0.5), "no fit for the test");
			assertEquals(expected, Cli.ok("propose", "--map", survey, "--epsilon", 130.5, "--min-pts", 3).out());
			assertTrue(expected.contains("ε 130.500"), expected);
			Cli measured = Cli.ok("measure", "--map", survey, "--epsilon", 130.5, "--min-pts", 3);
			String plain = measured.out().lines().filter(l -> l.startsWith("plain ")).findFirst().orElseThrow();
			assertTrue(plain.matches("plain +\\d+\\.\\d{3} .* 1\\.000"), plain);
			assertFalse(plain.contains(","), plain);
			Path labels = folder.resolve("proposals.csv");
			Cli.ok("propose", "--map", survey, "--epsilon", 130.5, "--min-pts", 3, "--proposals", labels);
			assertTrue(Csv.of(labels).texts("strength").stream().allMatch(s -> s.matches("(-?[0-9.E-]+)?")));
		} finally {
			Locale.setDefault(before);
		}
	}
}
