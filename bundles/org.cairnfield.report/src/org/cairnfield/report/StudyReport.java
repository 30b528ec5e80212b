package org.cairnfield.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cairnfield.core.stats.SignedRank;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.study.CommonPractice;
import org.cairnfield.curation.study.StudyMethod;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.curation.study.StudyTable.Average;
import org.cairnfield.exchange.export.Caution;
import org.cairnfield.report.internal.picture.MethodPoints;
import org.cairnfield.report.internal.picture.Pictures;
import org.cairnfield.report.internal.picture.SplitShape;

/** One page on a study: which way the maps should be split, and what that rests on. */
public final class StudyReport {

	private static final String TITLE = Messages.StudyReport_whichWayShouldTheseMaps;
	/** Whose clusters are drawn: before and after noise is given back, and after principal components. */
	private static final List<StudyMethod> DRAWN = List.of(StudyMethod.DBSCAN, StudyMethod.DBSCAN_CORRELATION,
			StudyMethod.DBSCAN_NEAREST, StudyMethod.DBSCAN_PCA);

	private final StudyTable table;
	private final ReportPage page = new ReportPage(TITLE, true);

	private StudyReport(StudyTable table) {
		this.table = table;
	}

	/** Writes the page. @return HTML; the same for the same table */
	public static String html(StudyTable table) {
		StudyReport report = new StudyReport(table);
		report.inShort();
		report.averages();
		report.ranks();
		report.practice();
		report.shapes();
		table.maps().forEach(report::map);
		report.basis();
		return report.page.toString();
	}

	private void inShort() {
		page.element("h1", "", TITLE);
		page.element("p", "class=\"sub\"",
				Words.bind(Messages.StudyReport_seed, words(table.maps().size(), "map"),
						words((int) table.rows().stream().map(StudyRow::method).distinct().count(), "method"),
						table.seed()));
		List<List<String>> rows = new ArrayList<>();
		for (String map : table.maps()) {
			table.row(map, StudyMethod.CHOSEN)
					.ifPresent(row -> rows.add(List.of(map, row.how(), f("%.2f", row.figures().meanErrorM()),
							f("%.2f", row.figures().toPlain()), f("%.2f", row.figures().toPlain3w()),
							percent(row.figures().comparisonShare()) + (row.isWithinBudget() ? "" : " *"))));
		}
		if (!rows.isEmpty()) {
			page.table(Messages.StudyReport_whatWinsOnHeldOut,
					List.of(Messages.StudyReport_map, Messages.StudyReport_methodSettingAndSearch,
							Messages.StudyReport_meanErrorM,
							Messages.StudyReport_toPlain, Messages.StudyReport_toPlain3w,
							Messages.StudyReport_compared),
					rows);
			note(rows, Messages.StudyReport_moreThanTheBudgetAllows);
		}
		table.best().ifPresent(
				best -> page.paragraph(Words.bind(Messages.StudyReport_searchedAsPublishedAndRanked, best)));
		if (!table.skipped().isEmpty()) {
			page.table(Messages.StudyReport_skipped,
					List.of(Messages.StudyReport_map, Messages.StudyReport_method, Messages.StudyReport_why),
					table.skipped().stream().map(row -> List.of(row.map(), row.method(), row.skipped())).toList());
		}
	}

	private void note(List<List<String>> rows, String words) {
		if (rows.stream().flatMap(List::stream).anyMatch(cell -> cell.endsWith(" *"))) {
			page.element("p", "class=\"sub\"", words);
		}
	}

	private void averages() {
		page.heading(Messages.StudyReport_errorAndCostOverThe);
		page.picture(
				Pictures.methods(table.averages().stream().map(this::points).toList(),
						Messages.StudyReport_faintAMapEachStrong),
				1, Messages.StudyReport_toTheLeftIsFaster);
		page.table(Messages.StudyReport_meansOverTheMapsOn,
				List.of(Messages.StudyReport_method, "Maps#", Messages.StudyReport_toPlain, "95 %#",
						Messages.StudyReport_toPlain3w, "95 %#", Messages.StudyReport_matchTime,
						Messages.StudyReport_compared,
						Messages.StudyReport_bytesRead, Messages.StudyReport_floorRight, Messages.StudyReport_offlineS),
				table.averages().stream().map(a -> List.of(a.method(), Integer.toString(a.maps()),
						f("%.2f", a.toPlain().value()), interval(a.toPlain()), f("%.2f", a.toPlain3w().value()),
						interval(a.toPlain3w()), f("%.2f", a.matchTime().value()),
						percent(a.comparisonShare()), percent(a.byteShare()), percent(a.floorHitRate()),
						f("%.2f", a.offlineS()))).toList());
	}

	private MethodPoints points(Average average) {
		List<StudyRow> rows = table.rows().stream()
				.filter(row -> row.isMeasured() && row.method().equals(average.method())).toList();
		return new MethodPoints(average.method(),
				rows.stream().mapToDouble(row -> row.figures().matchTimeRatio()).toArray(),
				rows.stream().mapToDouble(row -> row.figures().toPlain()).toArray(), average.matchTime().value(),
				average.toPlain().value(),
				average.toPlain().interval().low(), average.toPlain().interval().high());
	}

	private void ranks() {
		page.heading(Messages.StudyReport_ranks);
		List<List<String>> rows = table.averages().stream().sorted(Comparator.comparingDouble(Average::rank))
				.map(a -> List.of(a.method(),
						Integer.toString(a.maps()), f("%.1f", a.rank()), p(a.againstPlain()), p(a.against3w()),
						p(a.againstBest())))
				.toList();
		String best = table.best().orElse(Messages.StudyReport_theBest);
		page.table(
				Messages.StudyReport_meanRankOfTheMean,
				List.of(Messages.StudyReport_method, "Maps#", Messages.StudyReport_meanRank,
						Messages.StudyReport_pToPlain, Messages.StudyReport_pToPlain3w,
						Words.bind(Messages.StudyReport_pTo, best)),
				rows);
		page.paragraph(Words.bind(Messages.StudyReport_pIsTwoSidedExact, SignedRank.MOST_EXACT));
	}

	private static String p(SignedRank test) {
		return test.pairs() == 0 ? "–"
				: (test.p() < 0.0005 ? "< 0.001" : f("%.3f", test.p()))
						+ (test.below() > test.above() ? " ↓" : test.below() < test.above() ? " ↑" : "");
	}

	private void practice() {
		page.heading(Messages.StudyReport_besideCommonPractice);
		page.paragraph(
				Messages.StudyReport_whatPeopleOfTheTrade);
		List<String> header = new ArrayList<>(List.of(Messages.StudyReport_map));
		List.of(CommonPractice.values()).forEach(practice -> header.add(practice.words()));
		page.table(Messages.StudyReport_changeOnEachMap, header, table.maps().stream().map(map -> {
			List<String> row = new ArrayList<>(List.of(map));
			for (CommonPractice practice : CommonPractice.values()) {
				Optional<Double> change = practice.on(table, map);
				row.add(change.map(by -> String
						.format(Locale.ROOT, "%+.0f %%, %s", 100 * by, practice.verdict(by).word()).replace('-', '−'))
						.orElse("–"));
			}
			return row;
		}).toList());
	}

	private void shapes() {
		Map<String, List<SplitShape>> maps = new LinkedHashMap<>();
		for (String map : table.maps()) {
			List<SplitShape> shapes = DRAWN.stream().map(method -> table.row(map, method)).flatMap(Optional::stream)
					.map(row -> new SplitShape(row.method(), row.shape().sizes(), row.shape().noise())).toList();
			if (!shapes.isEmpty()) {
				maps.put(map, shapes);
			}
		}
		if (!maps.isEmpty()) {
			page.heading(Messages.StudyReport_clusterSizes);
			page.picture(Pictures.splitShapes(maps, Messages.StudyReport_aBarIsAllSamples), 2,
					Messages.StudyReport_clustersOfDbscanBeforeAnd);
		}
	}

	private void map(String map) {
		List<StudyRow> rows = table.of(map);
		StudyRow first = rows.get(0);
		page.heading(map);
		page.paragraph(String.format(Locale.ROOT,
				Messages.StudyReport_samplesAQueryMayCompare, first.samples(),
				first.setAside() == 0 ? ""
						: Words.bind(Messages.StudyReport_afterThatHeardTooLittle, first.setAside()),
				first.heldOut()
						? Words.bind(Messages.StudyReport_measuredOnSamplesOfIts, first.testSamples())
						: Words.bind(Messages.StudyReport_measuredOnTestSamples, first.testSamples()),
				100 * first.budgetShare()));
		List<List<String>> cells = rows.stream().filter(StudyRow::isMeasured).map(StudyReport::cells).toList();
		page.table(Messages.StudyReport_95IntervalsAreOfThe,
				List.of(Messages.StudyReport_method, Messages.StudyReport_meanErrorM, Messages.StudyReport_toPlain,
						"95 %#", Messages.StudyReport_toPlain3w, Messages.StudyReport_floorRight,
						Messages.StudyReport_compared, Messages.StudyReport_matchTime, Messages.StudyReport_bytesRead2,
						Messages.StudyReport_offlineS),
				cells);
		note(cells,
				Messages.StudyReport_moreThanTheBudgetAllows2);
		page.table(Messages.StudyReport_settingsAsHeldOutTraining,
				List.of(Messages.StudyReport_method, Messages.StudyReport_setting),
				rows.stream().filter(row -> row.isMeasured() && row.shape() != null)
						.map(row -> List.of(row.method(), row.how())).toList());
		table.row(map, StudyMethod.CHOSEN).ifPresent(row -> page.table(
				Messages.StudyReport_eachMethodInItsBest,
				List.of(Messages.StudyReport_method, Messages.StudyReport_setting, Messages.StudyReport_search,
						Messages.StudyReport_meanErrorM, Messages.StudyReport_compared),
				row.tried().stream().map(t -> List.of(t.method(), t.setting(), t.search(),
						f("%.2f", t.meanErrorM()), percent(t.comparisonShare()))).toList()));
	}

	private static List<String> cells(StudyRow row) {
		StudyRow.Figures f = row.figures();
		boolean over = !row.isWithinBudget() && row.shape() != null;
		return List.of(row.method(), f("%.2f", f.meanErrorM()), f("%.2f", f.toPlain()),
				Words.bind(Messages.StudyReport_to, f("%.2f", f.toPlainLow()), f("%.2f", f.toPlainHigh())),
				f("%.2f", f.toPlain3w()), percent(f.floorHitRate()), percent(f.comparisonShare()) + (over ? " *" : ""),
				f("%.2f", f.matchTimeRatio()),
				String.format(Locale.ROOT, "%,.0f", f.bytesPerQuery()), f("%.2f", row.offlineS()));
	}

	private void basis() {
		page.heading(Messages.StudyReport_whatThisRestsOn);
		page.table(Messages.StudyReport_methods, List.of(Messages.StudyReport_method, Messages.StudyReport_whatItIs),
				methods(method -> List.of(method.code(), method.how())));
		page.list(List.of(
				Messages.StudyReport_settingsAreChosenOnBlocks,
				Messages.StudyReport_allMethodsHaveOneBudget,
				Messages.StudyReport_methodsAreSearchedAsPublished,
				Messages.StudyReport_theChoiceTakesOnlyWhat,
				Messages.StudyReport_plainIsTheNearestSample,
				Messages.StudyReport_matchTimeIsProcessorTime));
		page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(page::paragraph);
		page.raw("</div>\n");
	}

	private List<List<String>> methods(Function<StudyMethod, List<String>> cells) {
		List<String> used = table.rows().stream().map(StudyRow::method).distinct().collect(Collectors.toList());
		return StudyMethod.all().stream().filter(method -> used.contains(method.code())).map(cells).toList();
	}

	private static String interval(StudyTable.Mean mean) {
		return Words.bind(Messages.StudyReport_to, f("%.2f", mean.interval().low()),
				f("%.2f", mean.interval().high()));
	}

	private static String words(int n, String what) {
		return n + " " + what + (n == 1 ? "" : "s");
	}

	private static String percent(double share) {
		return ReportPage.percent(share);
	}

	private static String f(String format, double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value);
	}
}
