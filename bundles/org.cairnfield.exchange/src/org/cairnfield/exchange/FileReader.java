package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.ToIntFunction;

import org.cairnfield.core.task.Workers;
import org.cairnfield.exchange.internal.text.FloorNames;
import org.cairnfield.exchange.internal.text.NotHeard;

/**
 * What reading a wide, long or paired table has in common. Blocks of rows are taken apart by all workers at once; what
 * was made of them is joined in the order of the file, so that nothing depends on how many workers there are.
 *
 * @param <B> what is made of a block
 */
abstract class FileReader<B extends RowBatch> {

	private static final int BLOCKS_A_WORKER = 8;

	final FilePlan plan;
	final IntakeOptions options;
	final MapSink sink;
	final Quarantine quarantine;
	private final FloorNames floors;
	private final LevelReader levels;
	private final Workers workers;
	private Companions tables;
	private long told;
	private long rows;
	private long zoneless;
	long accepted;

	FileReader(FilePlan plan, IntakeOptions options, MapSink sink, FloorNames floors, Workers workers) {
		this.plan = plan;
		this.options = options;
		this.sink = sink;
		this.floors = floors;
		this.workers = workers;
		this.quarantine = new Quarantine(plan.file, options.limits().quarantineKept());
		this.levels = newLevels();
	}

	/**
	 * Reads the file to its end.
	 *
	 * @throws Fallback.Amended where the plan was changed and all must be read again
	 */
	abstract void read() throws IntakeException, Fallback.Amended;

	abstract B newBatch(LevelReader itsLevels, PlaceReader itsPlaces);

	/** Adds a row to a batch; on any thread. */
	abstract void take(JoinedRows row, B batch) throws IntakeException;

	/** False where the rows before decide about some of the batch, so that each row must wait for its turn. */
	boolean fits(B batch) {
		return true;
	}

	/** Has the last word on a batch of one row whose turn has come. */
	void decide(JoinedRows row, B batch) {
	}

	/** Puts into the map what was made of rows. */
	abstract void join(B batch) throws IntakeException;

	final void readRows() throws IntakeException {
		try (Companions opened = new Companions(plan, options.limits())) {
			tables = opened;
			int most = workers.width() * BLOCKS_A_WORKER;
			List<List<Block>> round = new ArrayList<>();
			do {
				IntakeException failure = gather(round, most);
				List<B> batches = parse(round);
				for (int i = 0; i < batches.size(); i++) {
					takeTurn(round.get(i), batches.get(i));
				}
				if (failure != null) {
					throw failure;
				}
			} while (round.size() == most);
		}
		if (zoneless > 0) {
			plan.note(Messages.FileReader_timesWithoutAZoneAre);
		}
	}

	/** The next blocks of all tables, as many as there are and at most {@code most}; what ended them early, or null. */
	private IntakeException gather(List<List<Block>> round, int most) {
		round.clear();
		try {
			while (round.size() < most) {
				List<Block> blocks = tables.next();
				if (blocks == null) {
					break;
				}
				round.add(blocks);
			}
			return null;
		} catch (IntakeException e) {
			return e;
		}
	}

	private List<B> parse(List<List<Block>> round) {
		List<B> batches = new ArrayList<>(Collections.nCopies(round.size(), null));
		workers.quietly().forRanges(round.size(), () -> (from, to) -> {
			for (int i = from; i < to; i++) {
				batches.set(i, parseBlocks(round.get(i)));
			}
		});
		return batches;
	}

	private B parseBlocks(List<Block> blocks) {
		B batch = newBatch(floors::settled);
		try {
			JoinedRows row = tables.rows(blocks);
			while (!batch.place.isUnsettled() && row.next()) {
				batch.rows++;
				take(row, batch);
			}
		} catch (IntakeException e) {
			batch.failure = e;
		}
		return batch;
	}

	private B newBatch(ToIntFunction<String> floorNames) {
		FilePlan positions = plan.coordinates == null ? plan : plan.coordinates;
		Map<ColumnRole, Integer> columns = tables.columns();
		return newBatch(newLevels(), new PlaceReader(columns, positions, plan.site, options, floorNames));
	}

	private LevelReader newLevels() {
		return new LevelReader(plan.notHeard, plan.dialect.decimalComma());
	}

	private void takeTurn(List<Block> blocks, B batch) throws IntakeException {
		if (batch.place.isUnsettled() || !fits(batch)) {
			JoinedRows row = tables.rows(blocks);
			while (row.next()) {
				B one = newBatch(floors::level);
				one.rows++;
				take(row, one);
				decide(row, one);
				settle(one);
			}
		} else {
			settle(batch);
		}
		long consumed = blocks.stream().mapToLong(Block::consumed).sum();
		workers.progress().advance(consumed - told);
		told = consumed;
		if (workers.progress().isCancelled()) {
			throw new CancellationException(Messages.FileReader_intakeCancelled);
		}
	}

	private void settle(B batch) throws IntakeException {
		rows += batch.rows;
		accepted += batch.accepted;
		zoneless += batch.place.zoneless();
		levels.add(batch.levels);
		batch.refused.forEach(quarantine::add);
		join(batch);
		if (batch.failure != null) {
			throw batch.failure;
		}
	}

	/** Bytes told to the progress so far. */
	final long told() {
		return told;
	}

	/** Takes a number that nearly all bad cells agree on for not heard, where nothing was known before. */
	final void learnNotHeard() throws Fallback.Amended {
		String sign = levels.unknownSign();
		if (sign != null && !plan.notHeardSure && options.notHeard().isEmpty()) {
			plan.notHeard = NotHeard.of(sign);
			plan.notHeardSure = true;
			plan.guess(new Guess(Messages.FileReader_notHeard, sign, Messages.FileReader_nearlyAllValuesOutside120));
			throw new Fallback.Amended();
		}
	}

	final void noteLevels() {
		levels.note(plan);
	}

	final FileReport report(int firstSample) {
		return new FileReport(plan.file, plan.layout, plan.part.word(), rows, accepted, quarantine.size(), firstSample,
				sink.size() - firstSample, plan.notHeard.toString(), List.copyOf(plan.notes));
	}
}
