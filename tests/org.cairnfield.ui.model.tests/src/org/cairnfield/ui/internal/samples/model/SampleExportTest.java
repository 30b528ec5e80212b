package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cairnfield.core.task.Workers;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

public class SampleExportTest {

	@TempDir
	Path folder;

	@Test
	public void writesAllThatIsKnownInTheOrderAsked() throws Exception {
		Path file = folder.resolve("samples.csv");
		SampleExport.write(file, SmallTables.five(), new int[] { 2, 1 }, Workers.inline());
		assertEquals(List.of(
				"id,survey,site,floor,x (m),y (m),time (UTC),device,heard,state,reason,findings,worst,rules,cluster,role,readings (dBm)",
				"SH-A3,sh-spring,Sailmakers' Hall,1,3.0,-4.0,,Wrist guide A,4,kept,,2,error,swapped-axes wrong-floor,,,"
						+ "00:00:5E:00:53:01 -65; 00:00:5E:00:53:02 -60; 00:00:5E:00:53:03 -55; 00005e005304 -90",
				"SH-A2,sh-spring,Sailmakers' Hall,1,12.404,7.85,2031-04-07T09:31:00Z,Wrist guide A,1,set aside,courier's hotspot,"
						+ "0,,,,noise,00:00:5E:00:53:02 -55"),
				Files.readAllLines(file));
	}

	@Test
	public void copiesCellsAsTheyStandOnScreen() {
		assertEquals("id\tx (m)\tstate\nSH-A2\t12.40\tset aside: courier's hotspot\nTH-B2\t5.00\tkept\n",
				SampleExport.text(SmallTables.five(), List.of(SampleColumn.ID, SampleColumn.X, SampleColumn.STATE),
						new int[] { 1, 4 }, Workers.inline()));
	}
}
