package org.cairnfield.batch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssignCommandTest {

	@TempDir
	Path folder;
	private Path archive;

	@BeforeEach
	void takeIn() {
		archive = SmallArchive.make(folder, 240);
	}

	private int savePoints() {
		return Cli.ok("history", "--json", "-q", "--archive", archive).json().getAsJsonArray("savePoints").size();
	}

	private JsonObject assignments() {
		return Cli.ok("assignments", "--json", "-q", "--archive", archive).json().getAsJsonArray("splits").get(0)
				.getAsJsonObject();
	}

	private JsonObject reviewer(int which) {
		return assignments().getAsJsonArray("reviewers").get(which).getAsJsonObject();
	}

	@Test
	void sharesProposalsOutAndTellsHowFarEachHasCome() throws IOException {
		int before = savePoints();
		Cli.ok("assign", "-q", "--archive", archive, "--split", "all", "--equally", "Ada,Ben", "--person", "L. Lead");
		assertEquals(before + 1, savePoints());
		JsonObject split = assignments();
		int proposals = split.get("proposals").getAsInt();
		assertEquals(0, split.get("unassigned").getAsInt());
		assertEquals(proposals, reviewer(0).get("proposals").getAsInt() + reviewer(1).get("proposals").getAsInt());
		JsonObject share = reviewer(0).getAsJsonArray("shares").get(0).getAsJsonObject();
		assertEquals("part 1/2 L. Lead",
				share.get("share").getAsString() + ' ' + share.get("assignedBy").getAsString());
		int given = approveAll();
		assertEquals(reviewer(0).get("proposals"), reviewer(0).get("given"), "Ada has decided on all of hers");
		assertEquals(0, reviewer(0).get("toDo").getAsInt());
		assertEquals(given - reviewer(0).get("given").getAsInt(), reviewer(1).get("byOthers").getAsInt());
		String table = Cli.ok("assignments", "-q", "--archive", archive).out();
		assertTrue(table.contains("split        all: " + proposals + " proposals, 0 assigned to nobody")
				&& table.contains("2nd due"), table);
	}

	/** Ada approves every proposal. */
	private int approveAll() throws IOException {
		Path table = folder.resolve("verdicts.csv");
		Cli.ok("verdicts", "-q", "--archive", archive, "--export", table);
		List<String> lines = new ArrayList<>(Files.readAllLines(table));
		List<String> columns = List.of(lines.get(0).split(","));
		int given = 0;
		for (int i = 1; i < lines.size(); i++) {
			String[] cells = lines.get(i).split(",", -1);
			if (cells[columns.indexOf("made")].equals("yes")) {
				cells[columns.indexOf("decision")] = "approve";
				given++;
			}
			lines.set(i, String.join(",", cells));
		}
		Files.write(table, lines);
		Cli.ok("verdicts", "-q", "--archive", archive, "--import", table, "--person", "Ada");
		return given;
	}

	@Test
	void saysWhatIsAssignedTwiceAndTakesItAway() {
		Cli.ok("assign", "-q", "--archive", archive, "--to", "Ada", "--by", "part 1/2");
		Cli second = Cli.ok("assign", "--archive", archive, "--to", "Ben", "--by", "part 1/2");
		int shared = reviewer(0).get("proposals").getAsInt();
		second.says("note: " + shared + " of the " + shared + " proposals of Ben are also assigned to Ada (" + shared
				+ ").");
		assertTrue(second.out().contains("assigned     part 1/2 to Ben: " + shared + " of "), second::toString);
		String id = reviewer(1).getAsJsonArray("shares").get(0).getAsJsonObject().get("id").getAsString();
		int before = savePoints();
		Cli.ok("assignments", "-q", "--archive", archive, "--remove", id);
		assertEquals(before + 1, savePoints());
		assertEquals(1, assignments().getAsJsonArray("reviewers").size());
		Cli.run("assignments", "-q", "--archive", archive, "--remove", id).ended(ExitCode.USAGE)
				.says("no assignment has the id '" + id + "'");
	}

	@Test
	void changesNothingWhereItIsRefused() {
		int before = savePoints();
		Cli.run("assign", "-q", "--archive", archive, "--to", "Ada").ended(ExitCode.USAGE)
				.says("give either --to NAME with --by SHARE, or --equally");
		Cli.run("assign", "-q", "--archive", archive, "--to", "Ada", "--by", "half").ended(ExitCode.USAGE)
				.says("a share is band NAME, site ID");
		Cli.run("assign", "-q", "--archive", archive, "--to", "Ada", "--by", "band huge").ended(ExitCode.ARCHIVE)
				.says("there is no band 'huge'");
		Cli.run("assign", "-q", "--archive", archive, "--equally", "Ada").ended(ExitCode.ARCHIVE)
				.says("equal parts are for two reviewers or more");
		assertEquals(before, savePoints());
		assertTrue(Cli.ok("assignments", "-q", "--archive", archive).out().contains("nothing is assigned"));
	}
}
