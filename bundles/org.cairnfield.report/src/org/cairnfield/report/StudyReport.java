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

	private static final String TITLE = "Which way should these maps be split?";
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
				words(table.maps().size(), "map") + ", "
						+ words((int) table.rows().stream().map(StudyRow::method).distinct().count(), "method")
						+ ", seed " + table.seed());
		List<List<String>> rows = new ArrayList<>();
		for (String map : table.maps()) {
			table.row(map, StudyMethod.CHOSEN)
					.ifPresent(row -> rows.add(List.of(map, row.how(), f("%.2f", row.figures().meanErrorM()),
							f("%.2f", row.figures().toPlain()), f("%.2f", row.figures().toPlain3w()),
							percent(row.figures().comparisonShare()) + (row.isWithinBudget() ? "" : " *"))));
		}
		if (!rows.isEmpty()) {
			page.table("What wins on held-out training positions, measured on test samples",
					List.of("Map", "Method, setting and search", "Mean error (m)#",
							"To plain#", "To plain-3w#", "Compared %#"),
					rows);
			note(rows, "* more than the budget allows; nothing within it was found");
		}
		table.best().ifPresent(best -> page.paragraph("Searched as published, and ranked by mean error over the maps, "
				+ best + " comes first of the methods that split."));
		if (!table.skipped().isEmpty()) {
			page.table("Skipped", List.of("Map", "Method", "Why"),
					table.skipped().stream().map(row -> List.of(row.map(), row.method(), row.skipped())).toList());
		}
	}

	private void note(List<List<String>> rows, String words) {
		if (rows.stream().flatMap(List::stream).anyMatch(cell -> cell.endsWith(" *"))) {
			page.element("p", "class=\"sub\"", words);
		}
	}

	private void averages() {
		page.heading("Error and cost over the maps");
		page.picture(
				Pictures.methods(table.averages().stream().map(this::points).toList(),
						"Faint: a map each. Strong: mean over the maps, with the 95 % interval of "
								+ "the error by the bootstrap over maps. Plain matching is at 1 and 1."),
				1, "To the left is faster, below is more accurate.");
		page.table("Means over the maps on which a method was measured",
				List.of("Method", "Maps#", "To plain#", "95 %#", "To plain-3w#", "95 %#", "Match time#", "Compared %#",
						"Bytes read %#", "Floor right %#", "Offline s#"),
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
		page.heading("Ranks");
		List<List<String>> rows = table.averages().stream().sorted(Comparator.comparingDouble(Average::rank))
				.map(a -> List.of(a.method(),
						Integer.toString(a.maps()), f("%.1f", a.rank()), p(a.againstPlain()), p(a.against3w()),
						p(a.againstBest())))
				.toList();
		String best = table.best().orElse("the best");
		page.table(
				"Mean rank of the mean error on each map, 1 being the smallest, and p of Wilcoxon's signed-rank test of the errors to plain matching, paired by map",
				List.of("Method", "Maps#", "Mean rank#", "p to plain#", "p to plain-3w#", "p to " + best + "#"), rows);
		page.paragraph("p is two-sided, exact for up to " + SignedRank.MOST_EXACT
				+ " maps, and not corrected for several tests. An arrow says which way the rank sums "
				+ "lean: ↓ smaller errors than the other, ↑ larger. With n maps p cannot be below 2/2ⁿ: five maps cannot show anything at 5 %.");
	}

	private static String p(SignedRank test) {
		return test.pairs() == 0 ? "–"
				: (test.p() < 0.0005 ? "< 0.001" : f("%.3f", test.p()))
						+ (test.below() > test.above() ? " ↓" : test.below() < test.above() ? " ↑" : "");
	}

	private void practice() {
		page.heading("Beside common practice");
		page.paragraph(
				"What people of the trade expect of DBSCAN. It is common practice and has no source. \"About\" is taken as half to twice as much. Match time "
						+ "is that of this program, whose plain matching does not look at every sample; fingerprints compared do not depend on that.");
		List<String> header = new ArrayList<>(List.of("Map"));
		List.of(CommonPractice.values()).forEach(practice -> header.add(practice.words()));
		page.table("Change on each map", header, table.maps().stream().map(map -> {
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
			page.heading("Cluster sizes");
			page.picture(Pictures.splitShapes(maps, "A bar is all samples of a map."), 2,
					"Clusters of DBSCAN before and after noise is given back, and after principal components.");
		}
	}

	private void map(String map) {
		List<StudyRow> rows = table.of(map);
		StudyRow first = rows.get(0);
		page.heading(map);
		page.paragraph(String.format(Locale.ROOT,
				"%d samples%s; %s; a query may compare %.1f %% of what plain matching compares.", first.samples(),
				first.setAside() == 0 ? "" : ", after " + first.setAside() + " that heard too little were set aside",
				first.heldOut()
						? "measured on " + first.testSamples()
								+ " samples of its own, held out by blocks of positions, for want of a test survey"
						: "measured on " + first.testSamples() + " test samples",
				100 * first.budgetShare()));
		List<List<String>> cells = rows.stream().filter(StudyRow::isMeasured).map(StudyReport::cells).toList();
		page.table("95 % intervals are of the ratio to plain, paired by test sample",
				List.of("Method", "Mean error (m)#", "To plain#", "95 %#", "To plain-3w#", "Floor right %#",
						"Compared %#", "Match time#", "Bytes read#", "Offline s#"),
				cells);
		note(cells,
				"* more than the budget allows: no setting within it was found, or it costs less on held-out positions");
		page.table("Settings, as held-out training positions chose them", List.of("Method", "Setting"),
				rows.stream().filter(row -> row.isMeasured() && row.shape() != null)
						.map(row -> List.of(row.method(), row.how())).toList());
		table.row(map, StudyMethod.CHOSEN).ifPresent(row -> page.table(
				"Each method in its best setting and search, on held-out training positions; the first is chosen",
				List.of("Method", "Setting", "Search", "Mean error (m)#", "Compared %#"),
				row.tried().stream().map(t -> List.of(t.method(), t.setting(), t.search(),
						f("%.2f", t.meanErrorM()), percent(t.comparisonShare()))).toList()));
	}

	private static List<String> cells(StudyRow row) {
		StudyRow.Figures f = row.figures();
		boolean over = !row.isWithinBudget() && row.shape() != null;
		return List.of(row.method(), f("%.2f", f.meanErrorM()), f("%.2f", f.toPlain()),
				f("%.2f", f.toPlainLow()) + " to " + f("%.2f", f.toPlainHigh()),
				f("%.2f", f.toPlain3w()), percent(f.floorHitRate()), percent(f.comparisonShare()) + (over ? " *" : ""),
				f("%.2f", f.matchTimeRatio()),
				String.format(Locale.ROOT, "%,.0f", f.bytesPerQuery()), f("%.2f", row.offlineS()));
	}

	private void basis() {
		page.heading("What this rests on");
		page.table("Methods", List.of("Method", "What it is"), methods(method -> List.of(method.code(), method.how())));
		page.list(List.of(
				"Settings are chosen on blocks of the training positions that are held out. Test samples give the figures and play no part in any choice.",
				"All methods have one budget: 6 % of plain matching's comparisons from 5,000 samples on, 3/√n below. Held-out errors within 3 % are not told apart; "
						+ "what compares most samples is taken.",
				"Methods are searched as published: the nearest cluster, and the nearest sample in it. Only the choice also tries cutting large clusters, two levels, "
						+ "several cells and several voters, so it is the one to compare with plain-3w.",
				"The choice takes only what a device pack holds: a Gaussian process has figures and is never chosen.",
				"plain is the nearest sample of the cleaned map, plain-3w the three nearest, weighted 1/(d + 1). Errors are in the plane; all test samples count.",
				"Match time is processor time on one thread, in turns, to that of plain matching. Bytes read are those of a device pack, mean a query. Offline seconds make "
						+ "the map searchable once the setting is known. These depend on the machine; all else follows from the files and the seed."));
		page.raw("<div class=\"caution\">\n");
		Caution.general().forEach(page::paragraph);
		page.raw("</div>\n");
	}

	private List<List<String>> methods(Function<StudyMethod, List<String>> cells) {
		List<String> used = table.rows().stream().map(StudyRow::method).distinct().collect(Collectors.toList());
		return StudyMethod.all().stream().filter(method -> used.contains(method.code())).map(cells).toList();
	}

	private static String interval(StudyTable.Mean mean) {
		return f("%.2f", mean.interval().low()) + " to " + f("%.2f", mean.interval().high());
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
