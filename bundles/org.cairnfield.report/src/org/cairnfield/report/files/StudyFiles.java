package org.cairnfield.report.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.curation.study.StudyTable;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.cairnfield.exchange.TextFile;
import org.cairnfield.report.StudyReport;

/** What a study leaves in a folder for people, spreadsheets and scripts. */
public final class StudyFiles {

	private StudyFiles() {
	}

	/**
	 * Writes {@code study.csv}, a line a row, {@code study.json} and {@code study.html}.
	 *
	 * @param folder that exists
	 * @param table  of one row at least
	 * @throws IntakeException where it cannot be written to
	 */
	public static void write(Path folder, StudyTable table) throws IntakeException {
		ResultTable.write(folder.resolve("study.csv"), List.copyOf(table.rows().get(0).fields().keySet()),
				table.rows().stream().map(row -> new ArrayList<>(row.fields().values())));
		TextFile.write(folder.resolve("study.json"), StudyJson.text(table));
		TextFile.write(folder.resolve("study.html"), StudyReport.html(table));
	}
}
