package org.cairnfield.exchange;

import org.cairnfield.core.task.Progress;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.NotHeard;

import java.util.concurrent.CancellationException;

/** What reading a wide, long or paired table has in common. */
abstract class FileReader {

	private static final int ROWS_A_STEP = 512;

	final FilePlan plan;
	final IntakeOptions options;
	final MapSink sink;
	final FloorNames floors;
	final Quarantine quarantine;
	final LevelReader levels;
	private final Progress progress;
	private long told;
	long rows;
	long accepted;

	FileReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Progress progress) {
		this.plan = plan;
		this.options = options;
		this.sink = sink;
		this.floors = floors;
		this.progress = progress;
		this.quarantine = new Quarantine(plan.file, options.limits().quarantineKept());
		this.levels = new LevelReader(plan.notHeard, plan.dialect.decimalComma());
	}

	/**
	 * Reads the file to its end.
	 *
	 * @throws Fallback.Amended where the plan was changed and all must be read again
	 */
	abstract void read() throws IntakeException, Fallback.Amended;

	/** Counts a row and, now and then, tells how far it is. */
	final void row(long consumed) {
		if (++rows % ROWS_A_STEP == 0) {
			if (progress.isCancelled()) {
				throw new CancellationException("intake cancelled");
			}
			progress.advance(consumed - told);
			told = consumed;
		}
	}

	/** Bytes told to the progress so far. */
	final long told() {
		return told;
	}

	final void refuse(RowReader row, Fault fault, String reason) {
		quarantine.add(row.line(), fault, row.lines() > 1 ? reason + " (lines " + row.line() + " to "
				+ (row.line() + row.lines() - 1) + ")" : reason, row.raw());
	}

	/** Takes a number that nearly all bad cells agree on for not heard, where nothing was known before. */
	final void learnNotHeard() throws Fallback.Amended {
		String sign = levels.unknownSign();
		if (sign != null && !plan.notHeardSure && options.notHeard().isEmpty()) {
			plan.notHeard = NotHeard.of(sign);
			plan.notHeardSure = true;
			plan.guess(new Guess("not heard", sign, "nearly all values outside -120 to 0 dBm, found further down"));
			throw new Fallback.Amended();
		}
	}

	final void noteTimes(PlaceReader place) {
		if (place.zoneless() > 0) {
			plan.note("times without a zone are taken as UTC");
		}
	}

	final FileReport report(int firstSample) {
		return new FileReport(plan.file, plan.layout, plan.part.word(), rows, accepted, quarantine.size(), firstSample,
				sink.size() - firstSample, plan.notHeard.toString(), java.util.List.copyOf(plan.notes));
	}
}
