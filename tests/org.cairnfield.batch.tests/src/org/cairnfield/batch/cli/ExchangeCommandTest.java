package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people and a bare repository, on the command line. */
class ExchangeCommandTest {

	private static final String ANN = "A. Steward";
	private static final String BEN = "B. Reviewer";

	@TempDir
	Path folder;
	private Path ann;
	private Path ben;
	private Path meeting;

	@BeforeEach
	void meet() {
		ann = folder.resolve("ann");
		ben = folder.resolve("ben");
		meeting = folder.resolve("meeting.git");
		StringBuilder rows = new StringBuilder("x,y,floor,building,A,B\n");
		for (int k = 0; k < 12; k++) {
			rows.append(k + ",2,0,Tide House,-50,-6" + k % 10 + "\n");
		}
		Cli.ok("intake", "-q", "--map", TestSurveys.text(folder.resolve("spring.csv"), rows.toString()), "--archive",
				ann, "--person", ANN);
		Cli connected = Cli.ok("connect", "--archive", ann, "--to", meeting);
		assertTrue(connected.err().contains("stays in its history for good"), connected::toString);
		Cli.ok("exchange", "-q", "--archive", ann, "--person", ANN);
		Cli.ok("copy", "-q", meeting, ben);
	}

	private static void rename(Path archive, String name, String person) {
		Cli.ok("rename", "-q", "--archive", archive, "--site", "tide-house", "--name", name, "--person", person);
	}

	private JsonObject exchange(Path archive, String person, int code, Object... more) {
		return Cli.run("exchange", "--json", "-q", "--archive", archive, "--person", person, List.of(more)).ended(code)
				.json();
	}

	@Test
	void twoWhoNameOneSiteDecideInATableAndEndWithOneState() throws IOException {
		rename(ann, "Tide House, west", ANN);
		rename(ben, "Tide House, east", BEN);
		assertEquals(1, exchange(ann, ANN, ExitCode.OK).getAsJsonArray("sent").size());
		JsonObject dry = exchange(ben, BEN, ExitCode.CONFLICTS, "--dry-run");
		assertEquals(List.of(1, 1), List.of(dry.getAsJsonArray("received").size(), dry.get("conflicts").getAsInt()));
		assertEquals("nothing to decide\n", Cli.ok("conflicts", "--archive", ben).out());
		JsonObject both = exchange(ben, BEN, ExitCode.CONFLICTS);
		assertFalse(both.get("merged").isJsonNull());
		Path table = folder.resolve("conflicts.csv");
		Cli listed = Cli.run("conflicts", "--archive", ben, "--export", table).ended(ExitCode.CONFLICTS);
		assertTrue(listed.out().startsWith("site tide-house: name, before: Tide House\n  Tide House, east  by " + BEN),
				listed::toString);
		String text = Files.readString(table);
		assertTrue(text.startsWith("place,unit,value,person,time,keep"), text);
		Files.writeString(table, text.replaceFirst("(\"Tide House, west\",[^\\r\\n]*?),?(\\r?\\n)", "$1yes$2")
				.replaceFirst("Zyes", "Z,yes"));
		Cli.ok("conflicts", "--archive", ben, "--import", table, "--person", BEN);
		exchange(ben, BEN, ExitCode.OK);
		JsonObject last = exchange(ann, ANN, ExitCode.OK);
		assertEquals(exchange(ben, BEN, ExitCode.OK).get("digest"), last.get("digest"));
		assertTrue(Files.readString(ann.resolve("archive.xmi")).contains("Tide House, west"));
	}

	@Test
	void aWrongTableDecidesNothing() throws IOException {
		rename(ann, "west", ANN);
		rename(ben, "east", BEN);
		exchange(ann, ANN, ExitCode.OK);
		exchange(ben, BEN, ExitCode.CONFLICTS);
		Path table = folder.resolve("conflicts.csv");
		for (String rows : List.of("site tide-house,name,east,,,yes\nsite tide-house,name,west,,,yes\n",
				"site tide-house,name,north,,,yes\n",
				"site other,name,east,,,yes\n", "site tide-house,name,east,,,perhaps\n")) {
			Files.writeString(table, "place,unit,value,person,time,keep\n" + rows);
			Cli refused = Cli.run("conflicts", "--archive", ben, "--import", table, "--person", BEN)
					.ended(ExitCode.INPUT);
			assertTrue(refused.err().contains("conflicts.csv, line "), refused::toString);
			Cli.run("conflicts", "--archive", ben).ended(ExitCode.CONFLICTS);
		}
	}

	@Test
	void aGateThatTwoHaveSetDifferentlyIsAConflictAndTheOthersAreMerged() throws IOException {
		Path gates = Path.of("releases", "gates.txt");
		Cli.ok("gate", "-q", "--init", "--archive", ann, "--person", ANN);
		Files.writeString(ann.resolve(gates), "# ours\nmean at most 1.2\nworst-floor at most 1.5\nsigner = anyone\n");
		exchange(ann, ANN, ExitCode.OK);
		exchange(ben, BEN, ExitCode.OK);
		Files.writeString(ann.resolve(gates),
				"# ours\nmean at most 1.1   # as agreed\nworst-floor at most 1.5\nsigner = another\n");
		Files.writeString(ben.resolve(gates), "# ours\nmean at most 1.3\nworst-floor at most 1.4\nsigner = anyone\n");
		exchange(ann, ANN, ExitCode.OK);
		exchange(ben, BEN, ExitCode.CONFLICTS);
		assertEquals("# ours\nmean at most 1.2\nworst-floor at most 1.4\nsigner = another\n",
				Files.readString(ben.resolve(gates)));
		Path table = folder.resolve("conflicts.csv");
		Cli listed = Cli.run("conflicts", "--archive", ben, "--export", table).ended(ExitCode.CONFLICTS);
		assertTrue(
				listed.out().startsWith("file releases/gates.txt: mean, before: at most 1.2\n  at most 1.1  by " + ANN),
				listed::toString);
		assertTrue(listed.out().contains("\n  at most 1.3  by " + BEN), listed::toString);
		Files.writeString(table, "place,unit,value,person,time,keep\nfile releases/gates.txt,mean,at most 1.1,,,yes\n");
		assertTrue(Cli.ok("conflicts", "--archive", ben, "--import", table, "--person", BEN).out()
				.contains("releases/gates.txt changed\nnothing to decide\n"));
		assertTrue(Files.readString(ben.resolve(gates)).contains("\nmean at most 1.1\n"));
		exchange(ben, BEN, ExitCode.OK);
		JsonObject last = exchange(ann, ANN, ExitCode.OK);
		assertEquals(exchange(ben, BEN, ExitCode.OK).get("digest"), last.get("digest"));
		assertEquals(Files.readString(ben.resolve(gates)), Files.readString(ann.resolve(gates)));
	}

	@Test
	void fetchingOnlySendsNothing() {
		rename(ann, "west", ANN);
		exchange(ann, ANN, ExitCode.OK);
		JsonObject fetched = exchange(ben, BEN, ExitCode.OK, "--fetch-only");
		assertEquals(List.of(1, 0),
				List.of(fetched.getAsJsonArray("received").size(), fetched.getAsJsonArray("sent").size()));
	}

	@Test
	void aRemoteThatIsGoneHasACodeOfItsOwnAndChangesNothing() throws IOException {
		Files.move(meeting, folder.resolve("away"));
		String before = Cli.ok("history", "--archive", ann).out();
		Cli gone = Cli.run("exchange", "-q", "--archive", ann, "--person", ANN).ended(ExitCode.UNREACHABLE);
		assertTrue(gone.err().contains(meeting.toString()), gone::toString);
		assertEquals(before, Cli.ok("history", "--archive", ann).out());
		Cli.run("copy", "-q", meeting, folder.resolve("cyn")).ended(ExitCode.UNREACHABLE);
		assertFalse(Files.exists(folder.resolve("cyn")));
		Cli.run("exchange", "-q", "--archive", ben, "--person", BEN, "--dry-run").ended(ExitCode.UNREACHABLE);
	}

	@Test
	void anArchiveWithoutARemoteSaysSo() {
		Path alone = folder.resolve("alone");
		Cli.ok("intake", "-q", "--map", folder.resolve("spring.csv"), "--archive", alone, "--person", ANN);
		assertTrue(Cli.run("exchange", "--archive", alone).ended(ExitCode.ARCHIVE).err()
				.contains("not connected to a remote"));
		assertTrue(Cli.run("connect", "--archive", alone, "--to", "ftp://host.example/x").ended(ExitCode.ARCHIVE).err()
				.contains("not supported"));
	}
}
