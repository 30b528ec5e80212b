package org.cairnfield.report.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.cairnfield.curation.study.StudyRow;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.exchange.TextFile;
import org.cairnfield.report.StudyReport;

/** What a study leaves in a folder for people and spreadsheets. */
public final class StudyFiles {

	private static final List<String> HEADER = List.of("map", "method", "samples", "testSamples", "heldOut", "setAside", "meanErrorM", "meanLowM", "meanHighM",
			"medianErrorM", "p75M", "p95M", "floorHitRate", "siteHitRate", "toPlain", "toPlainLow", "toPlainHigh", "toPlain3w", "toPlain3wLow", "toPlain3wHigh",
			"comparisonsPerQuery", "comparisonShare", "budgetShare", "bytesPerQuery", "byteShare", "rmseM", "p90M", "ce50M", "ce95M", "clusters", "noise",
			"matchTimeRatio", "matchTimeToPlain3w", "offlineS", "choiceS", "how", "skipped");
	private static final int FIGURES = HEADER.indexOf("setAside") + 1;
	private static final int HOW = HEADER.indexOf("how");

	private StudyFiles() {
	}

	/**
	 * Writes {@code study.csv}, a line a row, and {@code study.html}.
	 *
	 * @param folder that exists
	 * @throws IntakeException where it cannot be written to
	 */
	public static void write(Path folder, StudyTable table) throws IntakeException {
		ResultTable.write(folder.resolve("study.csv"), HEADER, table.rows().stream().map(StudyFiles::line));
		TextFile.write(folder.resolve("study.html"), StudyReport.html(table));
	}

	private static List<?> line(StudyRow row) {
		List<Object> line = new ArrayList<>(Arrays.asList(row.map(), row.method(), row.samples(), row.testSamples(), row.heldOut(), row.setAside()));
		StudyRow.Figures f = row.figures();
		if (f == null) {
			line.addAll(Collections.nCopies(HOW - FIGURES, null));
		} else {
			line.addAll(Arrays.asList(f.meanErrorM(), f.meanLowM(), f.meanHighM(), f.medianErrorM(), f.p75M(), f.p95M(), f.floorHitRate(), f.siteHitRate(),
					f.toPlain(), f.toPlainLow(), f.toPlainHigh(), f.toPlain3w(), f.toPlain3wLow(), f.toPlain3wHigh(), f.comparisonsPerQuery(),
					f.comparisonShare(), row.budgetShare(), f.bytesPerQuery(), f.byteShare(), f.rmseM(), f.p90M(), f.ce50M(), f.ce95M(),
					row.shape() == null ? null : row.shape().sizes().size(), row.shape() == null ? null : row.shape().noise(), f.matchTimeRatio(),
					f.matchTimeToPlain3w(), row.offlineS(), row.choiceS()));
		}
		line.addAll(Arrays.asList(row.how(), row.skipped()));
		return line;
	}
}
