package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Commands on files that were changed in many ways: each ends with an exit code that is documented, without a fault of its
 * own, and what it prints is plain text. {@code CAIRNFIELD_MUTANTS} and {@code CAIRNFIELD_SEED} in the environment try
 * more of them, and others.
 */
class MutatedFilesTest {

	private static final long SEED = Long.parseLong(System.getenv().getOrDefault("CAIRNFIELD_SEED", "1"));
	private static final int MUTANTS = Integer.parseInt(System.getenv().getOrDefault("CAIRNFIELD_MUTANTS", "16"));
	private static final Set<Integer> DOCUMENTED = Set.of(ExitCode.OK, ExitCode.USAGE, ExitCode.INPUT,
			ExitCode.QUARANTINED, ExitCode.NOT_ENOUGH,
			ExitCode.ARCHIVE, ExitCode.DAMAGED, ExitCode.FINDINGS_WARNING, ExitCode.FINDINGS_ERROR, ExitCode.GATES,
			ExitCode.NOT_SOUND);

	@TempDir
	Path folder;
	private final List<String> wrong = new ArrayList<>();

	private static void copy(Path from, Path to) throws IOException {
		try (Stream<Path> all = Files.walk(from)) {
			for (Path file : all.toList()) {
				Path copy = to.resolve(from.relativize(file).toString());
				if (Files.isDirectory(file)) {
					Files.createDirectories(copy);
				} else {
					Files.copy(file, copy);
				}
			}
		}
	}

	/** Makes the change a meant one, which is taken as it is where its form is sound. */
	private static void commit(Path archive) throws Exception {
		for (List<String> words : List.of(List.of("add", "-A"), List.of("commit", "-q", "-m", "edited"))) {
			List<String> command = new ArrayList<>(
					List.of("git", "-c", "safe.directory=*", "-c", "commit.gpgSign=false", "-c", "user.name=E", "-c",
							"user.email=e", "-C", archive.toString()));
			command.addAll(words);
			Process git = new ProcessBuilder(command).redirectErrorStream(true).start();
			git.getInputStream().readAllBytes();
			git.waitFor();
		}
	}

	private int run(String what, Object... args) {
		try {
			Cli done = Cli.run(args);
			String all = done.out() + done.err();
			if (!DOCUMENTED.contains(done.code()) || all.contains("Exception")
					|| all.chars().anyMatch(TerminalWriter::isHidden)) {
				wrong.add(what + "\n" + done);
			}
			return done.code();
		} catch (AssertionError e) {
			wrong.add(what + "\n" + e.getMessage());
			return ExitCode.INTERNAL;
		}
	}

	private Path released() {
		Path archive = SmallArchive.make(folder, 60);
		Cli.run("gate", "--init", "-q", "--archive", archive);
		List<Object> release = new ArrayList<>(List.of("release", "-q", "--archive", archive, "--person", "L. Lead"));
		for (String gate : List.of("findings-error", "proposals-open", "error-to-plain", "floor-hit-rate",
				"cost-to-plain")) {
			release.addAll(List.of("--override", gate + "=a trial"));
		}
		Cli.ok(release.toArray());
		for (int site = 0; site < 2; site++) {
			Cli.ok("locate", "-q", "--archive", archive, "--site", TestSurveys.map(60).sites().get(site), "--latitude",
					10, "--longitude", 10 + site);
		}
		return archive;
	}

	private List<List<Object>> reading(Path out) {
		return List
				.of(List.of("check", "--most", 1), List.of("gate"), List.of("measure"), List.of("export", "--out", out),
						List.of("export", "--out", out, "--format", "wide,geojson", "--with-set-aside", "--kind",
								"test"),
						List.of("report", "--out", out + ".html"),
						List.of("history"), List.of("releases"), List.of("verdicts", "--export", out + ".csv"),
						List.of("compare", "HEAD~1"),
						List.of("export", "--release", "1.0.0", "--format", "pack", "--out", out), List.of("verify"),
						List.of("remedy", "--dry-run", "--rule",
								"exact-duplicate"),
						List.of("waive", "--dry-run", "--rule", "few-readings", "--reason", "x"));
	}

	@Test
	void everyReadingCommandOnMutatedArchives() throws Exception {
		Path sound = released();
		Set<Integer> codes = new TreeSet<>();
		for (int mutant = 0; mutant < MUTANTS; mutant++) {
			Path archive = folder.resolve("mutant" + mutant);
			copy(sound, archive);
			List<Path> files = SmallArchive.files(archive).stream()
					.filter(file -> !archive.relativize(file).startsWith(".cairnfield")).toList();
			String what = "mutant " + mutant + ": " + new Mutator(SEED * 10_000 + mutant).mutate(files);
			if (mutant % 4 != 0) {
				commit(archive);
			}
			List<List<Object>> commands = reading(folder.resolve("out" + mutant));
			for (int c = 0; c < commands.size(); c++) {
				List<Object> args = new ArrayList<>(commands.get(c));
				args.addAll(List.of("-q", "--archive", archive));
				if (mutant % 2 == 0 && !args.get(0).equals("verify")) {
					args.add("--despite-damage");
				}
				if (c % 2 == mutant % 3 % 2) {
					args.add("--json");
				}
				codes.add(run(what, args.toArray()));
			}
		}
		assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n\n", wrong));
		assertTrue(codes.containsAll(Set.of(ExitCode.OK, ExitCode.DAMAGED)), codes::toString);
	}

	@Test
	void everyCommandOnMutatedSurveys() throws Exception {
		Path wide = TestSurveys.wide(folder.resolve("own.csv"), TestSurveys.map(40), "S");
		Path plain = TestSurveys.plain(folder.resolve("plain.csv"), TestSurveys.map(40), "100");
		Path other = TestSurveys.text(folder.resolve("long.csv"),
				"id,bssid,rssi,floor,x,y\n" + "1,00:00:5E:00:53:01,-50,0,1,2\n1,00:00:5E:00:53:02,-60,0,1,2\n"
						+ "2,00:00:5E:00:53:01,-55,0,3,2\n3,00:00:5E:00:53:02,-50,1,1,9\n");
		List<Path> kinds = List.of(wide, plain, other);
		Set<Integer> codes = new TreeSet<>();
		for (int mutant = 0; mutant < MUTANTS; mutant++) {
			Path file = folder.resolve("mutant" + mutant + ".csv");
			Files.copy(kinds.get(mutant % kinds.size()), file);
			String what = "mutant " + mutant + ": " + new Mutator(SEED * 10_000 + 5_000 + mutant).mutate(List.of(file));
			codes.add(run(what, "intake", "-q", "--map", file, "--wide", folder.resolve("w.csv"), "--archive",
					folder.resolve("archive" + mutant)));
			codes.add(run(what, "intake", "--preview", "--json", "--map", file));
			codes.add(run(what, "propose", "-q", "--map", file, "--epsilon", 60, "--min-pts", 2));
			codes.add(run(what, "run", "-q", "--json", "--map", wide, "--test", file, "--epsilon", 60, "--min-pts", 2,
					"--out", folder.resolve("run")));
			if (Files.exists(folder.resolve("archive" + mutant).resolve("archive.xmi"))) {
				codes.add(run(what, "gate", "-q", "--archive", folder.resolve("archive" + mutant)));
				codes.add(run(what, "check", "-q", "--archive", folder.resolve("archive" + mutant)));
			}
		}
		assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n\n", wrong));
		assertTrue(codes.containsAll(Set.of(ExitCode.OK, ExitCode.INPUT, ExitCode.QUARANTINED)), codes::toString);
	}
}
