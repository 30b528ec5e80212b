package org.cairnfield.curation.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.ReleasedMap;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.split.SmallRuns;
import org.cairnfield.testkit.SmallMaps;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;

class FileRunTest {

	private static FileRun run(RadioMap map, RadioMap test, long seed) {
		FileArchive files = test == null ? FileArchive.heldOut(SmallRuns.intake(map), seed)
				: FileArchive.of(SmallRuns.intake(map), SmallRuns.intake(test));
		return FileRun.measured(files, SplitRequest.automatic(seed).published(120, 3), ProposalRule.USUAL,
				Workers.inline());
	}

	private static List<Integer> heldOut(FileRun run) {
		return IntStream.range(0, run.files().keys().length).filter(s -> run.files().keys()[s] == null).boxed()
				.toList();
	}

	@Test
	void holdsOutAFifthWhereNoTestIsGiven() {
		FileRun run = run(SmallMaps.simulated(100), null, 1);
		assertTrue(run.files().isHeldOut());
		assertEquals(100, run.files().training() + run.files().tests());
		assertEquals(run.files().tests(), heldOut(run).size());
		assertTrue(run.files().tests() >= 20 && run.files().tests() < 30, "held out: " + run.files().tests());
		assertEquals(run.files().tests(), run.measured().way("plain").errors().n());
		assertEquals(run.files().tests(),
				ArchiveMap.of(run.files().archive(), Scope.ARCHIVE, SurveyKind.TEST).map().size());
	}

	@Test
	void theSeedDecidesWhatIsHeldOut() {
		RadioMap map = SmallMaps.simulated(100);
		assertEquals(heldOut(run(map, null, 4)), heldOut(run(map, null, 4)));
		assertNotEquals(heldOut(run(map, null, 4)), heldOut(run(map, null, 5)));
	}

	@Test
	void usesAllSamplesWhereATestIsGiven() {
		FileRun run = run(SmallMaps.simulated(60), SmallMaps.visit(10), 1);
		assertFalse(run.files().isHeldOut());
		assertEquals(60, run.files().training());
		assertEquals(10, run.measured().way("plain").errors().n());
		assertEquals(60, run.onMap().size() + run.setAside());
	}

	@Test
	void cleansTheMapAndNotTheTest() {
		RadioMap map = SmallMaps.of(new int[] { -40, -50, -60 }, new int[] { -41, -50, -60 },
				new int[] { -42, -50, -60 },
				new int[] { -43, -50, -60 }, new int[] { -44, -50, -60 }, new int[] { -45, -50, -60 },
				new int[] { -46, -50, -60 },
				new int[] { -47, -50, -60 }, new int[] { -48, -50, -60 }, new int[] { -49, 1, -60 });
		FileRun run = run(map, SmallMaps.of(new int[] { -40, 1, 1 }), 1);
		assertEquals(1, run.setAside());
		assertEquals(9, run.onMap().size());
		assertEquals(1, run.measured().test());
		assertTrue(run.cleaned().startsWith("1 of 10 samples set aside"), run.cleaned());
	}

	@Test
	void measuresWhatTheArchiveServicesMeasureOfTheSameArchive() {
		FileRun run = run(SmallMaps.simulated(120), SmallMaps.visit(40), 1);
		Measures archive = Measures.of(ReleasedMap.approved(run.files().archive(), run.split()),
				ReleasedMap.test(run.files().archive()),
				PackRequest.USUAL, Workers.inline());
		assertEquals(archive.ways().stream().map(w -> w.errors().meanMetres()).toList(),
				run.measured().ways().stream().map(w -> w.errors().meanMetres()).toList());
		assertEquals(List.of("plain", "plain-3w", "split", "split+proposals", "chosen"),
				run.measured().ways().stream().map(FileRun::nameOf).toList());
	}

	@Test
	void choosesWhatIsLeftOpen() {
		FileArchive files = FileArchive.of(SmallRuns.intake(SmallMaps.simulated(120)),
				SmallRuns.intake(SmallMaps.visit(40)));
		FileRun run = FileRun.measured(files, SplitRequest.automatic(1), ProposalRule.USUAL, Workers.inline());
		assertTrue(run.tried().size() > 20, run.tried().size() + " tried");
		assertEquals(run.tried().get(0).search(), run.split().getSearch());
		Way chosen = run.measured().way("released");
		assertTrue(chosen.ratio() < run.measured().way("split").ratio(), chosen::toString);
		FileRun again = FileRun.measured(
				FileArchive.of(SmallRuns.intake(SmallMaps.simulated(120)), SmallRuns.intake(SmallMaps.visit(40))),
				SplitRequest.automatic(1), ProposalRule.USUAL, Workers.inline());
		assertEquals(run.tried(), again.tried());
		assertEquals(run.split().getLabels(), again.split().getLabels());
	}

	@Test
	void namesThatAnArchiveCannotKeepBecomeNumbers() {
		FileArchive files = FileArchive.of(SmallRuns.intake(SmallMaps.simulated(20), s -> s == 3 ? " " : "S" + s));
		assertEquals(20, Arrays.stream(files.keys()).filter(Objects::nonNull).distinct().count());
		assertEquals("04", files.keys()[3].sample());
	}

	@Test
	void saysHowLittleIsLeft() {
		RadioMap one = SmallMaps.of(new int[] { -40, -50, -60 });
		UnfitSurveyException e = assertThrows(UnfitSurveyException.class, () -> run(one, null, 1));
		assertTrue(e.getMessage().contains("0 of 1 can be used"), e.getMessage());
		assertTrue(e.getMessage().contains("1 held out for testing"), e.getMessage());
		RadioMap deaf = SmallMaps.of(new int[] { 1, 1 }, new int[] { 1, 1 }, new int[] { -40, 1 });
		e = assertThrows(UnfitSurveyException.class, () -> run(deaf, one, 1));
		assertTrue(e.getMessage().contains("1 of 3 can be used: 2 of 3 samples set aside"), e.getMessage());
	}
}
