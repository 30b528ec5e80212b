package org.cairnfield.curation.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cairnfield.core.stats.SignedRank;
import org.cairnfield.curation.study.CommonPractice.Verdict;
import org.junit.jupiter.api.Test;

/** What follows from rows, worked by hand. */
class StudyTableTest {

	/** @param time match time to plain matching */
	private static StudyRow row(String map, StudyMethod method, double metres, double plain, double time) {
		StudyRow.Figures f = new StudyRow.Figures(metres, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.5, 1, metres / plain, 0, 0,
				metres / plain, 0, 0, 10, 0.05, 100, 0.2, time, time);
		return new StudyRow(map, method.code(), 100, 10, false, 0, 0.1, f, "", null, List.of(), null, 2, 3, null, 600);
	}

	private static StudyRow skipped(String map, StudyMethod method) {
		return new StudyRow(map, method.code(), 100, 10, false, 0, 0.1, null, "", null, List.of(), null, 0, 0,
				"too large", 600);
	}

	/** Errors of one method a map; NaN where it was skipped. */
	private static List<StudyRow> rows(double[] plain, double[] dbscan, double[] kMeans) {
		List<StudyRow> rows = new ArrayList<>();
		for (int m = 0; m < plain.length; m++) {
			rows.add(row("m" + m, StudyMethod.PLAIN, plain[m], plain[m], 1));
			rows.add(Double.isNaN(dbscan[m]) ? skipped("m" + m, StudyMethod.DBSCAN)
					: row("m" + m, StudyMethod.DBSCAN, dbscan[m], plain[m], 0.1));
			rows.add(row("m" + m, StudyMethod.K_MEANS, kMeans[m], plain[m], 0.25));
		}
		return rows;
	}

	@Test
	void ranksByMeanErrorOnEachMapAndSharesRanksOfEquals() {
		StudyTable table = StudyTable.of(
				rows(new double[] { 2, 2, 2, 4 }, new double[] { 3, 2, Double.NaN, 6 }, new double[] { 1, 2, 3, 5 }),
				1);
		// plain: 2, (1+2+3)/3, 1, 1; dbscan: 3, 2, –, 3; k-means: 1, 2, 2, 2
		assertEquals(List.of(1.5, 8 / 3.0, 1.75), table.averages().stream().map(StudyTable.Average::rank).toList());
		assertEquals(List.of(4, 3, 4), table.averages().stream().map(StudyTable.Average::maps).toList());
		assertEquals(Optional.of("k-means"), table.best());
		assertEquals(List.of("m2"), table.skipped().stream().map(StudyRow::map).toList());
	}

	@Test
	void averagesOverTheMapsThatAMethodWasMeasuredOn() {
		StudyTable table = StudyTable
				.of(rows(new double[] { 2, 2, 4 }, new double[] { 3, Double.NaN, 8 }, new double[] { 1, 3, 4 }), 1);
		StudyTable.Average dbscan = table.averages().get(1);
		assertEquals((1.5 + 2) / 2, dbscan.toPlain().value(), 1e-12);
		assertTrue(dbscan.toPlain().interval().low() >= 1.5 && dbscan.toPlain().interval().high() <= 2);
		assertEquals(0.1, dbscan.matchTime().value(), 1e-12);
		assertEquals(2, dbscan.offlineS());
	}

	@Test
	void pairsErrorsByMap() {
		double[] plain = { 2, 4, 5, 10, 2, 8 };
		double[] dbscan = { 3, 5, Double.NaN, 9, 4, 16 };
		double[] kMeans = { 2.2, 4.8, 5, 13, 2.8, 12 };
		StudyTable table = StudyTable.of(rows(plain, dbscan, kMeans), 1);
		// ratios 1.5 1.25 0.9 2 2 to 1: of five differences one, the smallest, is below
		assertEquals(new SignedRank(5, 1, 14, 4 / 32.0), table.averages().get(1).againstPlain());
		// k-means: 1.1 1.2 1 1.3 1.4 1.5; the one without a difference is left out
		assertEquals(new SignedRank(5, 0, 15, 2 / 32.0), table.averages().get(2).againstPlain());
		double[] both = { 1.5, 1.25, 0.9, 2, 2 };
		double[] best = { 1.1, 1.2, 1.3, 1.4, 1.5 };
		SignedRank expected = SignedRank.of(both, best);
		SignedRank found = table.averages().get(1).againstBest();
		assertEquals(expected.pairs(), found.pairs());
		assertEquals(expected.p(), found.p());
		assertEquals(0, table.averages().get(2).againstBest().pairs());
	}

	private static StudyTable practice(double dropped, double correlated, double pca, double droppedTime,
			double correlatedTime) {
		return StudyTable.of(Arrays.asList(row("m", StudyMethod.PLAIN, 1, 1, 1),
				row("m", StudyMethod.DBSCAN, dropped, 1, droppedTime),
				row("m", StudyMethod.DBSCAN_CORRELATION, correlated, 1, correlatedTime),
				row("m", StudyMethod.DBSCAN_PCA, pca, 1, 0.1)), 1);
	}

	private static List<Verdict> verdicts(StudyTable table) {
		return Arrays.stream(CommonPractice.values()).map(p -> p.verdict(p.on(table, "m").orElseThrow())).toList();
	}

	@Test
	void saysWhetherCommonPracticeIsMet() {
		assertEquals(List.of(Verdict.MET, Verdict.MET, Verdict.MET, Verdict.MET, Verdict.MET, Verdict.MET),
				verdicts(practice(1.25, 1.125, 2.5, 0.06, 0.066)));
		assertEquals(List.of(Verdict.MORE, Verdict.LESS, Verdict.MET, Verdict.LESS, Verdict.MORE, Verdict.LESS),
				verdicts(practice(1.6, 1.55, 2, 0.2, 0.3)));
		assertEquals(
				List.of(Verdict.NOT_MET, Verdict.NOT_MET, Verdict.MET, Verdict.NOT_MET, Verdict.NOT_MET,
						Verdict.NOT_MET),
				verdicts(practice(0.9, 0.95, 0.9, 1.1, 1.0)));
	}

	@Test
	void saysNothingOfPracticeWhereARowIsMissing() {
		StudyTable table = StudyTable.of(rows(new double[] { 2 }, new double[] { 3 }, new double[] { 1 }), 1);
		assertEquals(Optional.of(0.5), CommonPractice.DROPPED_ERROR.on(table, "m0"));
		assertEquals(Optional.empty(), CommonPractice.CORRELATED_ERROR.on(table, "m0"));
		assertEquals(Optional.empty(), CommonPractice.PCA_ERROR.on(table, "m0"));
	}
}
