package org.cairnfield.batch.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.FileReport;
import org.cairnfield.exchange.Intake;

/** What intake noted, each note once however many files it is about. */
final class IntakeNotes {

	private static final int MOST_LINES = 12;

	private final Map<String, Integer> files = new LinkedHashMap<>();
	private final Map<String, String> firstFile = new LinkedHashMap<>();

	private IntakeNotes() {
	}

	static IntakeNotes of(Intake intake) {
		IntakeNotes notes = new IntakeNotes();
		for (FileReport report : intake.reports()) {
			for (String note : report.notes()) {
				notes.files.merge(note, 1, Integer::sum);
				notes.firstFile.putIfAbsent(note, report.file().getFileName().toString());
			}
		}
		intake.notes().forEach(note -> notes.files.put(note, 0));
		return notes;
	}

	/** @param all whether a long list is printed whole */
	void print(PrintWriter err, boolean all) {
		int line = 0;
		for (Map.Entry<String, Integer> note : files.entrySet()) {
			if (!all && line++ == MOST_LINES) {
				err.println(Words.bind(Messages.IntakeNotes_noteFurtherNotesIntakeOn, files.size() - MOST_LINES));
				return;
			}
			int more = note.getValue() - 1;
			err.println(Words.bind(Messages.IntakeNotes_note, note.getValue() == 0 ? ""
					: firstFile.get(note.getKey())
							+ (more > 0 ? Words.bind(Messages.IntakeNotes_andMore, more) : ": "),
					note.getKey()));
		}
	}
}
