package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.core.text.Words;

/** What was made of the rows of one block, on any thread, before it takes its turn. */
class RowBatch {

	final LevelReader levels;
	final PlaceReader place;
	final List<QuarantinedRow> refused = new ArrayList<>();
	long rows;
	long accepted;
	/** Where the rows end early. */
	IntakeException failure;

	RowBatch(LevelReader levels, PlaceReader place) {
		this.levels = levels;
		this.place = place;
	}

	final void refuse(JoinedRows rows, Fault fault, String reason) {
		BlockRows row = rows.signals();
		refused.add(new QuarantinedRow(row.line(), fault,
				row.lines() > 1
						? Words.bind(Messages.RowBatch_linesTo, reason, row.line(), row.line() + row.lines() - 1)
						: reason,
				row.raw()));
	}
}
