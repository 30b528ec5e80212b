package org.cairnfield.report.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileArchive;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.testkit.SmallMaps;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.exchange.IntakeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Column names and values that other programs read. */
class TablesTest {

	@TempDir
	Path folder;
	private final FileRun run = Runs.proposed(0, 0.1);

	private List<String> lines(Path file) throws IOException {
		String text = Files.readString(file);
		assertTrue(text.endsWith("\n") && !text.contains("\r"), "lines end with LF alone");
		return text.lines().toList();
	}

	@Test
	void labelsHaveALineASample() throws Exception {
		Path file = folder.resolve("labels.csv");
		Tables.labels(file, run);
		List<String> lines = lines(file);
		assertEquals("sample,cluster,role", lines.get(0));
		assertEquals("TH-0,0,core", lines.get(1));
		assertEquals("TH-9,1,core", lines.get(10));
		assertEquals("TH-10,-1,noise", lines.get(11));
		assertEquals(12, lines.size());
	}

	@Test
	void proposalsHaveALineANoiseSample() throws Exception {
		Path file = folder.resolve("proposals.csv");
		Tables.proposals(file, run);
		List<String> lines = lines(file);
		assertEquals("sample,cluster,strength,margin,carrier,runnerUp", lines.get(0));
		assertEquals(2, lines.size());
		NoisePlacement stray = run.proposals().placements().get(0);
		String[] cells = lines.get(1).split(",", -1);
		assertEquals(List.of("TH-10", "1", Double.toString(stray.strength()), Double.toString(stray.margin()),
				run.onMap().key(stray.carrier()).sample(), "0"), List.of(cells));
	}

	@Test
	void aWeakProposalHasNoClusterButItsStrength() throws Exception {
		Path file = folder.resolve("proposals.csv");
		Tables.proposals(file, Runs.proposed(0, 1));
		assertTrue(lines(file).get(1).matches("TH-10,,0\\.\\d{9,},[-0-9.E]+,TH-\\d,0"), lines(file).get(1));
	}

	@Test
	void behindTheGateOnlyTheSampleIsNamed() throws Exception {
		Path file = folder.resolve("proposals.csv");
		Tables.proposals(file, Runs.proposed(0.5, 0.1));
		assertEquals(List.of("sample,cluster,strength,margin,carrier,runnerUp", "TH-10,,,,,"), lines(file));
	}

	@Test
	void theSplitMapShowsBothClusterings() throws Exception {
		Path file = folder.resolve("split-map.csv");
		Tables.splitMap(file, run);
		List<String> lines = lines(file);
		assertEquals("sample,site,floor,x,y,cluster,role,clusterWithProposals", lines.get(0));
		assertEquals("TH-3,Tide House,0,3.0,0.0,0,core,0", lines.get(4));
		assertEquals("TH-10,Tide House,0,10.0,0.0,-1,noise,1", lines.get(11));
	}

	@Test
	void idsThatLookLikeFormulasAreMadeHarmless() throws Exception {
		Path file = folder.resolve("labels.csv");
		Tables.labels(file,
				FileRun.proposed(FileArchive.of(Runs.intake(SmallMaps.twoGroupsAndAStray(), s -> "=1+" + s)),
						SplitRequest.automatic(1).published(5, 3), ProposalRule.USUAL, Workers.inline()));
		assertEquals("'=1+0,0,core", lines(file).get(1));
	}

	@Test
	void namesTheFileThatCannotBeWritten() {
		Path file = folder.resolve("none/labels.csv");
		IntakeException e = assertThrows(IntakeException.class, () -> Tables.labels(file, run));
		assertEquals(file, e.file());
	}
}
