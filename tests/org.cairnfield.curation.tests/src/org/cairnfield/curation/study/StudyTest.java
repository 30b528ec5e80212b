package org.cairnfield.curation.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyTest {

	private static final CampusSize SIZE = CampusSize.of(1, 2, 30);
	private static final int SAMPLES = 100;
	private static final StudyMap FIRST = campus("first", 11, 60);
	private static final StudyMap SECOND = campus("second", 12, 60);
	private static final List<StudyMap> BOTH = List.of(FIRST, SECOND);
	private static final StudySettings FEW = new StudySettings(
			List.of(StudyMethod.DBSCAN, StudyMethod.DBSCAN_CORRELATION, StudyMethod.K_MEANS, StudyMethod.CHOSEN),
			StudySettings.USUAL_TIME, 1);
	private static final int ROWS = 12;

	@TempDir
	Path folder;

	private static StudyMap campus(String name, long seed, int visit) {
		return new StudyMap(name, RandomMap.of(seed, SIZE, SAMPLES, Workers.inline()),
				RandomMap.testOf(seed, SIZE, visit, Workers.inline()), false, 0);
	}

	/** Counts what is done, and cancels where it is told to. */
	private static final class Watch implements StudyListener, Progress {
		private final List<String> begun = new ArrayList<>();
		private final List<Step> steps = new ArrayList<>();
		private int kept;
		private int cancelAfter = Integer.MAX_VALUE;

		@Override
		public void begun(Step step) {
			steps.add(step);
			begun.add(step.map() + " " + step.method().code());
		}

		@Override
		public void done(StudyRow row, boolean wasKept) {
			kept += wasKept ? 1 : 0;
		}

		@Override
		public boolean isCancelled() {
			return begun.size() > cancelAfter;
		}
	}

	private static StudyTable run(List<StudyMap> maps, StudySettings settings, StudyRecords records, Watch watch) {
		return Study.run(maps, settings, records, watch, Workers.inline().reportingTo(watch));
	}

	/** All but what the clock says. */
	private static List<String> figures(StudyTable table) {
		return table.rows().stream().map(row -> {
			StudyRow.Figures f = row.figures();
			return Stream
					.of(row.map(), row.method(), row.how(), row.tried(), row.best(), row.shape(), row.skipped(),
							f == null ? null
									: List.of(f.meanErrorM(), f.meanLowM(),
											f.meanHighM(), f.p95M(), f.floorHitRate(), f.toPlain(), f.toPlainLow(),
											f.toPlainHigh(), f.toPlain3w(), f.comparisonsPerQuery(), f.bytesPerQuery()))
					.map(String::valueOf).collect(Collectors.joining(" | "));
		}).toList();
	}

	@Test
	void measuresEveryMethodWithItsSettingsAndShapes() {
		StudyTable table = run(List.of(FIRST), StudySettings.usual(1), StudyRecords.none(), new Watch());
		assertEquals(StudyMethod.all().stream().map(StudyMethod::code).toList(),
				table.rows().stream().map(StudyRow::method).toList());
		Map<String, StudyRow> rows = table.rows().stream()
				.collect(Collectors.toMap(StudyRow::method, Function.identity()));
		for (StudyMethod method : StudyMethod.all()) {
			StudyRow row = rows.get(method.code());
			assertNull(row.skipped(), method.code());
			StudyRow.Figures f = row.figures();
			assertTrue(f.toPlainLow() <= f.toPlain() && f.toPlain() <= f.toPlainHigh(), () -> method + ": " + f);
			assertTrue(f.floorHitRate() > 0.5 && f.meanErrorM() > 0 && f.matchTimeRatio() > 0 && f.bytesPerQuery() > 0,
					() -> method + ": " + f);
			assertEquals(f.toPlain() / rows.get("plain-3w").figures().toPlain(), f.toPlain3w(), 1e-12, method.code());
			if (method.isCandidate()) {
				assertTrue(f.comparisonShare() < 0.5, () -> method + ": " + f);
				assertNotNull(row.best());
				assertFalse(row.tried().isEmpty());
			}
			if (row.shape() != null && method != StudyMethod.CHOSEN) {
				assertEquals(SAMPLES,
						row.shape().noise() + row.shape().sizes().stream().mapToInt(Integer::intValue).sum(),
						method.code());
			}
		}
		assertEquals(1, rows.get("plain").figures().toPlain());
		assertEquals(rows.get("dbscan").how(), rows.get("dbscan+correlation").how());
		assertTrue(rows.get("dbscan").shape().noise() > rows.get("dbscan+correlation").shape().noise());
		assertEquals(0, rows.get("dbscan+nearest").shape().noise());
		assertEquals(9, rows.get("chosen").tried().size());
		assertEquals(table.rows().stream()
				.filter(row -> row.best() != null && row.best().equals(rows.get("chosen").tried().get(0))).count(), 1);
	}

	@Test
	void theSeedDecidesEveryFigureButTimes() {
		List<String> once = figures(run(BOTH, FEW, StudyRecords.none(), new Watch()));
		assertEquals(once, figures(run(BOTH, FEW, StudyRecords.none(), new Watch())));
		StudySettings other = new StudySettings(FEW.methods(), FEW.most(), 2);
		assertNotEquals(once, figures(run(BOTH, other, StudyRecords.none(), new Watch())));
	}

	@Test
	void theTestSurveyPlaysNoPartInAnyChoice() {
		StudyTable table = run(List.of(FIRST), FEW, StudyRecords.none(), new Watch());
		StudyTable others = run(List.of(campus("first", 11, 20)), FEW, StudyRecords.none(), new Watch());
		assertEquals(table.rows().stream().map(row -> row.tried().toString() + row.how()).toList(),
				others.rows().stream().map(row -> row.tried().toString() + row.how()).toList());
		assertNotEquals(figures(table), figures(others));
	}

	@Test
	void goesOnWhereItWasCancelled() {
		List<String> whole = figures(run(BOTH, FEW, StudyRecords.none(), new Watch()));
		for (int rows : new int[] { 1, 3, 2 }) {
			StudyRecords records = StudyRecords.in(folder);
			Watch first = new Watch();
			first.cancelAfter = rows;
			assertThrows(CancellationException.class, () -> run(BOTH, FEW, records, first));
			assertEquals(rows + 1, first.begun.size());
		}
		Watch last = new Watch();
		assertEquals(whole, figures(run(BOTH, FEW, StudyRecords.in(folder), last)));
		assertEquals(ROWS, last.kept + last.begun.size());
		assertEquals(1 + 3 + 2, last.kept);
		Watch again = new Watch();
		assertEquals(whole, figures(run(BOTH, FEW, StudyRecords.in(folder), again)));
		assertEquals(List.of(), again.begun);
	}

	@Test
	void doesARowAgainWhoseRecordIsTornOrOfAnotherMap() throws IOException {
		StudyRecords records = StudyRecords.in(folder);
		List<String> whole = figures(run(List.of(FIRST), FEW, records, new Watch()));
		List<Path> files;
		try (Stream<Path> all = Files.list(folder)) {
			files = all.sorted().toList();
		}
		Files.writeString(files.get(0), Files.readString(files.get(0)).substring(0, 40));
		Files.writeString(files.get(1), Files.readString(files.get(2)));
		Watch watch = new Watch();
		assertEquals(whole, figures(run(List.of(FIRST), FEW, records, watch)));
		assertEquals(2, watch.begun.size());
		Watch changed = new Watch();
		RadioMap fewer = FIRST.training().where(s -> s != 0);
		run(List.of(new StudyMap("first", fewer, FIRST.test(), false, 0)), FEW, records, changed);
		assertEquals(ROWS / 2, changed.begun.size());
	}

	@Test
	void saysWhatWasTooSlowAndTriesItAgainWhenItMayTakeLonger() {
		StudyRecords records = StudyRecords.in(folder);
		StudySettings hasty = new StudySettings(FEW.methods(), Duration.ofMillis(1), 1);
		StudyTable table = run(List.of(FIRST), hasty, records, new Watch());
		assertTrue(
				table.skipped().stream()
						.anyMatch(row -> row.method().equals("k-means") && row.skipped().startsWith("too slow")),
				() -> table.skipped().toString());
		Watch same = new Watch();
		run(List.of(FIRST), hasty, records, same);
		assertEquals(List.of(), same.begun);
		StudyTable patient = run(List.of(FIRST), FEW, records, new Watch());
		assertEquals(List.of(), patient.skipped());
		assertEquals(figures(run(List.of(FIRST), FEW, StudyRecords.none(), new Watch())), figures(patient));
	}

	@Test
	void saysHowFarItIsAndWhatIsLeft() {
		Watch watch = new Watch();
		run(BOTH, FEW, StudyRecords.none(), watch);
		assertEquals(ROWS, watch.steps.size());
		assertNull(watch.steps.get(0).left());
		for (int i = 1; i < ROWS; i++) {
			assertEquals(i, watch.steps.get(i).done());
			assertEquals(ROWS, watch.steps.get(i).of());
			assertFalse(watch.steps.get(i).left().isNegative());
		}
		assertTrue(watch.steps.get(3).toString().startsWith("first, dbscan+correlation (4 of 12, about "),
				watch.steps.get(3).toString());
	}

	@Test
	void asksForSamplesEnough() {
		RadioMap none = FIRST.test().where(s -> false);
		assertTrue(
				assertThrows(UnfitSurveyException.class, () -> new StudyMap("empty", FIRST.training(), none, false, 0))
						.getMessage().contains("empty"));
		assertThrows(IllegalArgumentException.class, () -> StudyMethod.of("magic"));
	}
}
