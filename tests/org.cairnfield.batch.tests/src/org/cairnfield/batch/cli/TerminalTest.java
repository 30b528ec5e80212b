package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cairnfield.archive.history.Person;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** What a terminal gets to see of texts that others wrote, and what the locale does to texts on their way in. */
@Isolated
class TerminalTest {

	private static final String ESCAPE = "\u001b[31m";

	@TempDir
	Path folder;

	private static String printed(String text) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		TerminalWriter writer = new TerminalWriter(out, false);
		writer.print(text);
		writer.flush();
		return out.toString(StandardCharsets.UTF_8);
	}

	@Test
	void showsWhateverATerminalWouldObey() {
		assertEquals("a\\x1b[31mb\\x07\\x00\\x0d\\x7f\\x9b", printed("a\u001b[31mb\u0007\0\r\u007f\u009b"));
		assertEquals("\\u202eabc\\u2066\\u200f\\u2028", printed("\u202eabc\u2066\u200f\u2028"));
		assertEquals("Zoë\tÜnal ε …\n😀", printed("Zoë\tÜnal ε …\n😀"));
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		TerminalWriter writer = new TerminalWriter(out, true);
		writer.write('\u001b');
		writer.carriageReturn();
		writer.printf("%s%n", "\u009b");
		assertEquals("\\x1b\r\\x9b\n", out.toString(StandardCharsets.UTF_8));
	}

	private static void requirePlain(Cli done) {
		assertTrue((done.out() + done.err()).chars().noneMatch(TerminalWriter::isHidden), done::toString);
	}

	@Test
	void printsNamesNotesAndFilesWithoutControls() throws Exception {
		Path survey = TestSurveys.text(folder.resolve("sur" + ESCAPE + "vey.csv"),
				"x,y,floor,building,\"A" + ESCAPE + "\",B\u202e\n"
						+ "1,2,0,\"Qu\u009bay\",-50,-60\n2,2,0,\"Qu\u009bay\",-51,-61\n3,2,?,\"Qu\u009bay\",-51,-61\n");
		Path archive = folder.resolve("archive");
		requirePlain(Cli.run("intake", "--map", survey, "--archive", archive).ended(ExitCode.QUARANTINED));
		Process git = new ProcessBuilder("git", "-c", "safe.directory=*", "-c", "commit.gpgSign=false", "-c",
				"user.name=E" + ESCAPE + "ve", "-c",
				"user.email=e", "-C", archive.toString(), "commit", "-q", "--allow-empty", "-m",
				"cleared\u001b[2J\u0007 all").inheritIO().start();
		assertEquals(0, git.waitFor());
		Cli history = Cli.ok("history", "--archive", archive);
		requirePlain(history);
		assertTrue(history.out().contains("E\\x1b[31mve") && history.out().contains("cleared\\x1b[2J\\x07 all"),
				history::toString);
		Cli json = Cli.ok("history", "--json", "--archive", archive);
		requirePlain(json);
		assertTrue(json.json().toString().contains("E\\u001b[31mve"), json::toString);
		Files.writeString(archive.resolve("surveys").resolve("stray" + ESCAPE + ".samples"), "x");
		for (List<Object> command : List.<List<Object>>of(List.of("check"), List.of("check", "--json"), List.of("gate"),
				List.of("locate", "--site",
						"no" + ESCAPE, "--latitude", 1, "--longitude", 1),
				List.of("no" + ESCAPE))) {
			requirePlain(Cli.run(command, "--archive", archive));
		}
	}

	@Test
	void keepsJsonValidWhateverIsInIt() {
		Json json = new Json().put("name", "a\u001b\u009b\u202e\u007f\"\\");
		assertTrue(json.toString().chars().noneMatch(TerminalWriter::isHidden));
		assertEquals("a\u001b\u009b\u202e\u007f\"\\",
				com.google.gson.JsonParser.parseString(json.toString()).getAsJsonObject().get("name").getAsString());
	}

	/** What a JVM makes of "Zoë" in a locale that knows ASCII only. */
	@Test
	void refusesNamesThatTheLocaleHasBroken() {
		String broken = "Zo\uFFFD\uFFFD";
		Path survey = TestSurveys.wide(folder.resolve("survey.csv"), TestSurveys.map(30), "S");
		Cli.run("intake", "--map", survey, "--archive", folder.resolve("a"), "--person", broken).ended(ExitCode.USAGE)
				.says("LC_ALL=C.UTF-8");
		assertFalse(Files.exists(folder.resolve("a")));
		assertThrows(IllegalArgumentException.class, () -> Person.named(broken));
		String user = System.getProperty("user.name");
		try {
			System.setProperty("user.name", broken);
			Cli.run("intake", "-q", "--map", survey, "--archive", folder.resolve("b")).ended(ExitCode.ARCHIVE)
					.says("--person");
			System.setProperty("cairnfield.person", "Zoë Quay");
			Cli.ok("intake", "-q", "--map", survey, "--archive", folder.resolve("b"));
			assertEquals("Zoë Quay",
					Cli.ok("history", "--json", "--archive", folder.resolve("b")).json().getAsJsonArray("savePoints")
							.get(0)
							.getAsJsonObject().get("person").getAsString());
		} finally {
			System.setProperty("user.name", user);
			System.clearProperty("cairnfield.person");
		}
	}
}
