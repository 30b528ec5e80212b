package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.file;
import static org.cairnfield.exchange.Surveys.preview;
import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MappingTest {

	private static final IntakeOptions ALL = IntakeOptions.GUESS.withLayout(Layout.LONG).withSeparator('\t')
			.withCharset(StandardCharsets.ISO_8859_1).withDecimalMark(',').withHeader(false).withNotHeard("-110 NaN")
			.withSite("Tide House = old #1").withFloor(-2).withDevice(" guide A ").withSwapXY(true)
			.withMetresPerUnit(0.6).withAccessPointsPerSite(true).withRole("#3", ColumnRole.X)
			.withRole("Lift = lobby\\1\n2", ColumnRole.ACCESS_POINT).withRole(" x ", ColumnRole.Y)
			.withFloorName("Mezzanine", 1).withFloorName("Größe", -1);

	@TempDir
	Path folder;

	@Test
	void roundTripsEverySetting() throws IntakeException {
		assertEquals(Mapping.format(ALL), Mapping.format(Mapping.parse(Mapping.format(ALL))));
		IntakeOptions back = Mapping.parse(Mapping.format(ALL));
		assertEquals(ALL, back);
		assertEquals(" guide A ", back.device().orElseThrow());
		assertEquals(ALL.roles(), back.roles());
		assertEquals(ALL.floors(), back.floors());
		assertEquals('\t', back.separator().orElseThrow());
		assertEquals("Tide House = old #1", back.site().orElseThrow());
		assertEquals(0.6, back.metresPerUnit().orElseThrow());
	}

	@Test
	void roundTripsThroughAFile() throws IntakeException {
		Path f = folder.resolve("survey.mapping");
		Mapping.write(ALL, f);
		Mapping.write(ALL, f);
		assertEquals(ALL, Mapping.read(f));
	}

	@Test
	void leavesEverythingToGuessWhereNothingIsSaid() throws IntakeException {
		assertEquals(IntakeOptions.GUESS, Mapping.parse("\n# only a remark\n   \r\n"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "colour = red", "layout = round", "separator = ab", "decimal = dot", "header = perhaps",
			"floor = EG", "metres-per-unit = 0", "metres-per-unit = x", "charset = nonsense", "column.a = pilot",
			"no equals sign" })
	void namesTheLineThatIsNotUnderstood(String line) {
		Path f = file(folder, "m.mapping", "# remark\nsite = Hall\n" + line + "\n");
		IntakeException e = assertThrows(IntakeException.class, () -> Mapping.read(f));
		assertEquals(3, e.line());
		assertTrue(e.getMessage().contains("line 3"), e.getMessage());
	}

	@Test
	void keepsWhatAPreviewUnderstood() throws IntakeException {
		Path f = file(folder, "a.csv", "P1;x;y;storey;mood;sample\n-60,5;1,5;2,5;EG;3;S1\n100;1,5;3,5;EG;4;S2\n");
		IntakeOptions kept = Mapping.parse(Mapping.format(preview(f).options()));
		Intake guessed = read(f);
		Intake told = read(kept, f);
		for (int s = 0; s < 2; s++) {
			assertEquals(sample(guessed.map(), s), sample(told.map(), s));
		}
		assertEquals(guessed.sampleIds(), told.sampleIds());
		assertEquals("100", kept.notHeard().orElseThrow());
		assertEquals(ColumnRole.FLOOR, kept.roles().get("storey"));
	}
}
