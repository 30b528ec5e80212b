package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.SampleKey;

/** A small archive of one corridor of the Tide House, released as 1.0.0, with a ledger of three verdicts. */
final class ReleasedArchive {

	private ReleasedArchive() {
	}

	/** Made within a second of another it begins with the same save point, so what is known of that one is not asked. */
	static Path make(Path folder) throws IOException {
		System.setProperty("cairnfield.state", folder.resolve("state").toString());
		StringBuilder table = new StringBuilder("x,y,floor,building");
		for (int a = 0; a < 6; a++) {
			table.append(",00:00:5E:00:53:0").append(a);
		}
		for (int s = 0; s < 24; s++) {
			int x = 1 + 2 * s;
			table.append('\n').append(x).append(",5,0,Tide House");
			for (int a = 0; a < 6; a++) {
				table.append(',').append(Math.round(-35 - Math.abs(x - 10 * a) - (s * 7 + a * 3) % 5));
			}
		}
		Path survey = Files.writeString(folder.resolve("corridor.csv"), table.append('\n'));
		Path archive = folder.resolve("tide-house");
		Cli.ok("intake", "-q", "--map", survey, "--archive", archive, "--person", "A. Steward");
		judge(archive);
		release(archive);
		return archive;
	}

	static Cli release(Path archive) {
		return Cli.ok("release", "-q", "--json", "--archive", archive, "--person", "L. Lead", "--override",
				"error-to-plain=no test survey", "--override",
				"floor-hit-rate=no test survey", "--override", "cost-to-plain=no test survey");
	}

	private static void judge(Path archive) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			Ledger ledger = ModelFactory.eINSTANCE.createLedger();
			ledger.setId("r-reviewer");
			for (int v = 1; v <= 3; v++) {
				Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
				verdict.setId("v-" + v);
				verdict.setSplit("all");
				verdict.setSample(new SampleKey("corridor", "S-" + v));
				verdict.setDecision(Decision.APPROVE);
				verdict.setPerson("R. Reviewer");
				ledger.getVerdicts().add(verdict);
			}
			open.archive().getLedgers().add(ledger);
			open.savePoint(Person.named("R. Reviewer"), null);
		}
	}

	/** What plain Git says; skips the test where there is none. */
	static String git(Path archive, String... arguments) {
		List<String> command = new ArrayList<>(
				List.of("git", "-c", "user.name=RT", "-c", "user.email=rt@example.org", "-c", "safe.directory=*",
						"-c", "protocol.file.allow=always", "-C", archive.toString()));
		command.addAll(List.of(arguments));
		ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
		builder.environment().put("GIT_CONFIG_NOSYSTEM", "1");
		builder.environment().put("GIT_CONFIG_GLOBAL", archive.resolve("none").toString());
		try {
			Process process = builder.start();
			String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			assertEquals(0, process.waitFor(), () -> String.join(" ", command) + ": " + said);
			return said.strip();
		} catch (InterruptedException e) {
			throw new AssertionError(e);
		} catch (IOException e) {
			assumeTrue(false, "no git here: " + e.getMessage());
			return "";
		}
	}
}
