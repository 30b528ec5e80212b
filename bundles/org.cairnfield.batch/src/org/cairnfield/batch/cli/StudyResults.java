package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;

/** A study as tables on a terminal. */
final class StudyResults {

	private StudyResults() {
	}

	static void print(StudyTable table, PrintWriter out) {
		for (String map : table.maps()) {
			List<StudyRow> rows = table.of(map);
			StudyRow first = rows.get(0);
			out.printf(Locale.ROOT, Messages.StudyResults_samplesBudgetOfPlainMatching, map,
					first.samples(), first.testSamples(),
					first.heldOut() ? Messages.StudyResults_ofItsOwnPositionsHeld : Messages.StudyResults_testSamples,
					100 * first.budgetShare());
			ConsoleTable lines = new ConsoleTable("method", Messages.StudyResults_meanM, Messages.StudyResults_toPlain,
					Messages.StudyResults_95OfRatio, Messages.StudyResults_toPlain3w,
					"floor", "compared", "time", Messages.StudyResults_offlineS, Messages.StudyResults_choiceS);
			for (StudyRow row : rows) {
				StudyRow.Figures f = row.figures();
				if (f == null) {
					lines.row(row.method(), "–", "–", "–", "–", "–", "–", "–", "–", "–");
				} else {
					lines.row(row.method(), f("%.3f", f.meanErrorM()), f("%.3f", f.toPlain()),
							f("%.3f", f.toPlainLow()) + " … " + f("%.3f", f.toPlainHigh()),
							f("%.3f", f.toPlain3w()), f("%.1f %%", 100 * f.floorHitRate()),
							f("%.1f %%", 100 * f.comparisonShare()),
							f("%.3f", f.matchTimeRatio()), f("%.2f", row.offlineS()), f("%.1f", row.choiceS()));
				}
			}
			lines.print(out);
			rows.stream().filter(row -> row.method().equals("chosen") && row.isMeasured())
					.forEach(row -> out.println(Words.bind(Messages.StudyResults_chosen, row.how())));
			rows.stream().filter(row -> !row.isMeasured())
					.forEach(row -> out
							.println(Words.bind(Messages.StudyResults_skipped, row.method(), row.skipped())));
			out.println();
		}
		ConsoleTable averages = new ConsoleTable(Messages.StudyResults_overMaps, "maps", Messages.StudyResults_toPlain,
				"95 %", Messages.StudyResults_toPlain3w, "95 %", "time",
				"compared", "rank", Messages.StudyResults_pToPlain, Messages.StudyResults_pToPlain3w);
		for (StudyTable.Average a : table.averages()) {
			averages.row(a.method(), Integer.toString(a.maps()), f("%.3f", a.toPlain().value()), interval(a.toPlain()),
					f("%.3f", a.toPlain3w().value()),
					interval(a.toPlain3w()), f("%.3f", a.matchTime().value()), f("%.1f %%", 100 * a.comparisonShare()),
					f("%.1f", a.rank()),
					f("%.4f", a.againstPlain().p()), f("%.4f", a.against3w().p()));
		}
		averages.print(out);
		out.println(
				Messages.StudyResults_pWilcoxonSSignedRank);
		out.println();
	}

	private static String interval(StudyTable.Mean mean) {
		return f("%.3f", mean.interval().low()) + " … " + f("%.3f", mean.interval().high());
	}

	private static String f(String format, double value) {
		return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value);
	}
}
