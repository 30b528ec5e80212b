package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.samples.ClusterMarks;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;

public class CellTextTest {

	private final SampleContent five = SmallTables.five();

	private String column(SampleColumn column) {
		return String.join(" | ", IntStream.range(0, five.size()).mapToObj(i -> CellText.of(five, column, i)).toList());
	}

	@Test
	public void showsEachColumnWithWhatIsKnown() {
		assertEquals("SH-A1 | SH-A2 | SH-A3 | TH-B1 | TH-B2", column(SampleColumn.ID));
		assertEquals("sh-spring | sh-spring | sh-spring | th-spring | th-spring", column(SampleColumn.SURVEY));
		assertEquals("Sailmakers' Hall | Sailmakers' Hall | Sailmakers' Hall | Tide House | Tide House",
				column(SampleColumn.SITE));
		assertEquals("training | training | training | test | test", column(SampleColumn.KIND));
		assertEquals("0 | 1 | 1 | 2 | -1", column(SampleColumn.FLOOR));
		assertEquals("1.50 | 12.40 | 3.00 | 0.00 | 5.00", column(SampleColumn.X));
		assertEquals("2.00 | 7.85 | -4.00 | 0.00 | 5.00", column(SampleColumn.Y));
		assertEquals("2031-04-07 09:30:00 | 2031-04-07 09:31:00 |  | 2031-04-08 09:30:00 | ",
				column(SampleColumn.TIME));
		assertEquals("Wrist guide A | Wrist guide A | Wrist guide A |  | ", column(SampleColumn.DEVICE));
		assertEquals("2 | 1 | 4 | 1 | 0", column(SampleColumn.HEARD));
		assertEquals("kept | set aside: courier's hotspot | kept | kept | kept", column(SampleColumn.STATE));
		assertEquals("7 |  |  |  | ", column(SampleColumn.CLUSTER));
		assertEquals("core | noise |  |  | ", column(SampleColumn.ROLE));
	}

	@Test
	public void namesTheThreeStrongestAccessPoints() {
		assertEquals("00:00:5E:00:53:01 −50, 00:00:5E:00:53:02 −70 | 00:00:5E:00:53:02 −55"
				+ " | 00:00:5E:00:53:03 −55, 00:00:5E:00:53:02 −60, 00:00:5E:00:53:01 −65 | 00:00:5E:00:53:03 −61 | ",
				column(SampleColumn.STRONGEST));
		assertEquals("00005e005304", five.address("00005e005304"), "one that the archive does not know");
	}

	@Test
	public void countsFindingsAndSaysTheWorst() {
		assertEquals(" |  | ◆ 2 error | ◆ 1 error | ", column(SampleColumn.FINDINGS));
		assertEquals(Severity.ERROR, five.findings().of(2).orElseThrow().worst());
		assertEquals("swapped-axes wrong-floor", five.findings().of(2).orElseThrow().rules());
	}

	@Test
	public void writesLengthsWithTwoDecimals() {
		assertEquals("0.00 -0.01 0.00 1.05 -12.40 99.99 1000000.00 1230000000000000000.00", String.join(" ",
				DoubleStream.of(0, -0.009, -0.001, 1.05, -12.4, 99.994, 1e6, 1.23e18).mapToObj(CellText::metres)
						.toList()));
	}

	@Test
	public void findsRowsOfAPartOfASurvey() {
		SampleTable table = five.table(0);
		SampleRows some = SampleRows.builder().part(new SampleRows.Part(null, "a", "s", "", SurveyKind.TRAINING, table))
				.row(0).row(2)
				.done();
		assertEquals(1, some.index(0, 2));
		assertEquals(-1, some.index(0, 1), "not listed");
		assertFalse(ClusterMarks.NONE.has(0));
		SampleRows.Builder wrong = SampleRows.builder()
				.part(new SampleRows.Part(null, "a", "s", "", SurveyKind.TRAINING, table)).row(2);
		assertThrows(IllegalArgumentException.class, () -> wrong.row(1));
	}
}
