package org.cairnfield.curation.split;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.MoveSampleCommand;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Scope;
import org.cairnfield.testkit.SmallMaps;
import org.junit.jupiter.api.Test;

class SplitStudyTest {

	private static final SplitRequest REQUEST = SplitRequest.automatic(1);
	private static final Duration TIME = SplitRequest.USUAL_TIME;

	private final Archive archive = SmallArchives.simulated();
	private final SplitStudies studies = new SplitStudies(4);
	private final Workers workers = Workers.inline();

	private SplitStudy study() {
		return studies.study(archive, Scope.ARCHIVE, REQUEST);
	}

	@Test
	void answersTheSameQuestionAtOnce() {
		SplitStudy study = study();
		assertSame(study.curve(5, workers), study.curve(5, workers));
		assertSame(study.split(100, 4, workers), study.split(100, 4, workers));
		double[] epsilons = study.gridEpsilons(workers);
		assertSame(study.sweep(epsilons, new int[] { 3, 5 }, workers),
				study.sweep(epsilons, new int[] { 3, 5 }, workers));
		assertSame(study.choose(3, TIME, 1, workers), study.choose(3, TIME, 1, workers));
		assertSame(study.chooseSearch(100, 4, TIME, 1, workers), study.chooseSearch(100, 4, TIME, 1, workers));
	}

	@Test
	void isFoundAgainByItsContent() {
		SplitStudy before = study();
		assertSame(before, study());
		Survey survey = archive.getSites().get(0).getSurveys().get(0);
		double x = survey.table().xMetres(3);
		new MoveSampleCommand(new SampleRef(survey, 3), x + 1, survey.table().yMetres(3)).execute();
		assertNotSame(before, study());
		new MoveSampleCommand(new SampleRef(survey, 3), x, survey.table().yMetres(3)).execute();
		assertSame(before, study());
		assertNotSame(before, studies.study(archive, Scope.ARCHIVE,
				SplitRequest.named("positive", "euclidean", OptionalDouble.empty(), OptionalInt.empty(),
						OptionalDouble.empty(), Optional.empty(), 1)));
	}

	@Test
	void curveAscendsAndEndsWithTheStray() {
		double[] curve = SmallRuns.run(0, 0.1).curve(workers).ascending();
		assertEquals(11, curve.length);
		double[] sorted = curve.clone();
		Arrays.sort(sorted);
		assertArrayEquals(sorted, curve);
		// the stray (-66, -47) has two others at 11, (-62, -40) and (-61, -41), and the third, k = minPts, at 12
		assertEquals(12, curve[10]);
		assertEquals(1, curve[0]);
	}

	@Test
	void leavesInfiniteKDistancesOutOfTheCurve() {
		KDistanceCurve curve = SmallRuns.run(SmallMaps.twoGroupsAndAStray(), REQUEST.published(5, 12), 0, 0.1)
				.curve(workers);
		assertEquals(0, curve.ascending().length);
		assertTrue(curve.elbow().isEmpty());
	}

	@Test
	void readsTheCurve() {
		KDistanceCurve curve = study().curve(5, workers);
		double half = curve.epsilonAt(0.5);
		assertTrue(curve.shareWithin(half) >= 0.5);
		assertTrue(curve.shareWithin(half - 1) < 0.5);
		assertEquals(1, curve.shareWithin(Double.MAX_VALUE));
		assertEquals(0, curve.shareWithin(-1));
		assertEquals(half, study().startEpsilon(workers));
		assertEquals(curve.elbow().map(k -> curve.ascending()[k.index()]), curve.elbowEpsilon());
	}

	@Test
	void sweepsLikeSingleSplits() {
		double[] epsilons = study().gridEpsilons(workers);
		assertTrue(epsilons.length >= 4);
		SweepTable table = study().sweep(epsilons, new int[] { 3, 8 }, workers);
		SplitStudy fresh = new SplitStudies(1).study(archive, Scope.ARCHIVE, REQUEST);
		for (int m = 0; m < 2; m++) {
			for (int e = 0; e < epsilons.length; e++) {
				Trial alone = fresh.split(epsilons[e], table.minPts()[m], workers);
				SweepCell cell = table.cell(e, m);
				assertEquals(alone.clusters(), cell.clusters());
				assertEquals(alone.noiseShare(), cell.noiseShare());
				assertEquals(alone.largestShare(), cell.largestShare());
				assertTrue(Double.isNaN(cell.meanErrorMetres()));
			}
		}
		assertFalse(table.hasErrors());
	}

	@Test
	void addsErrorsOfHeldOutSamples() {
		double[] epsilons = study().gridEpsilons(workers);
		SweepTable table = study().sweepWithErrors(epsilons, new int[] { 3 }, 1, workers);
		assertTrue(table.hasErrors());
		assertTrue(table.basis().contains("held out"), table.basis());
		SweepCell middle = table.cell(epsilons.length / 2, 0);
		assertTrue(middle.meanErrorMetres() > 0.1 && middle.meanErrorMetres() < 20, middle::toString);
		assertTrue(middle.comparisonShare() > 0 && middle.comparisonShare() <= 1.5, middle::toString);
	}

	@Test
	void asksTrainingSurveysOnly() {
		SplitStudy with = study();
		assertTrue(archive.getSites().stream()
				.anyMatch(site -> site.getSurveys().removeIf(survey -> survey.getKind() == SurveyKind.TEST)));
		SplitStudy without = new SplitStudies(1).study(archive, Scope.ARCHIVE, REQUEST);
		double[] epsilons = with.gridEpsilons(workers);
		assertArrayEquals(epsilons, without.gridEpsilons(workers));
		SweepTable one = with.sweepWithErrors(epsilons, new int[] { 3, 5 }, 1, workers);
		SweepTable other = without.sweepWithErrors(epsilons, new int[] { 3, 5 }, 1, workers);
		for (int e = 0; e < epsilons.length; e++) {
			assertEquals(one.cell(e, 0), other.cell(e, 0));
			assertEquals(one.cell(e, 1), other.cell(e, 1));
		}
		assertEquals(with.choose(3, TIME, 1, workers).tried(), without.choose(3, TIME, 1, workers).tried());
		assertEquals(with.chooseSearch(100, 4, TIME, 1, workers).tried(),
				without.chooseSearch(100, 4, TIME, 1, workers).tried());
	}

	@Test
	void reducesToPrincipalComponents() {
		SplitRequest reduced = SmallRuns.reduced(0.9, OptionalDouble.of(40), OptionalInt.of(4));
		SplitStudy study = studies.study(archive, Scope.ARCHIVE, reduced);
		assertTrue(study.components(workers) > 1);
		assertEquals(0, study().components(workers));
		FileRun two = SmallRuns.run(SmallMaps.twoGroupsAndAStray(),
				SmallRuns.reduced(0.99, OptionalDouble.of(4), OptionalInt.of(3)), 0, 0.1);
		assertArrayEquals(new int[] { 5, 5 }, two.onMap().clustering().sizes());
		assertTrue(two.onMap().clustering().isNoise(two.onMap().index(two.files().keys()[10])));
		assertThrows(UnfitSurveyException.class, () -> study.choose(4, TIME, 1, workers));
		assertThrows(UnfitSurveyException.class,
				() -> study.sweepWithErrors(new double[] { 40 }, new int[] { 4 }, 1, workers));
	}

	@Test
	void refusesAScopeWithoutSamples() {
		assertThrows(UnfitSurveyException.class, () -> studies.study(archive, Scope.floor("nowhere", 0), REQUEST));
	}
}
