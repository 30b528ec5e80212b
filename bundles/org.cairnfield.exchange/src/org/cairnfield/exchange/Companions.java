package org.cairnfield.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Several tables whose rows belong together, cut into blocks alike: signals first, then coordinates, ids and times. */
final class Companions implements AutoCloseable {

	private final List<Blocks> files = new ArrayList<>();
	private final List<FilePlan> plans = new ArrayList<>();
	private int[] starts = {};
	private final Map<ColumnRole, Integer> columns = new EnumMap<>(ColumnRole.class);

	/** Passes over the headers; closes everything where one cannot be opened. */
	Companions(FilePlan signals, Limits limits) throws IntakeException {
		try {
			for (FilePlan plan : new FilePlan[] { signals, signals.coordinates, signals.ids, signals.times }) {
				if (plan != null) {
					open(plan, limits);
				}
			}
		} catch (IntakeException e) {
			close();
			throw e;
		}
	}

	private void open(FilePlan plan, Limits limits) throws IntakeException {
		int start = plans.isEmpty() ? 0 : starts[starts.length - 1] + plans.get(plans.size() - 1).width;
		starts = Arrays.copyOf(starts, starts.length + 1);
		starts[starts.length - 1] = start;
		plans.add(plan);
		Blocks blocks = new Blocks(plan.file, plan.dialect, limits);
		files.add(blocks);
		for (ColumnRole role : ColumnRole.values()) {
			if (plan.has(role)) {
				columns.putIfAbsent(role, start + plan.column(role));
			}
		}
		if (plan.dialect.header()) {
			Block header = blocks.next(1);
			if (header != null) {
				header.rows().next();
			}
		}
	}

	/** The first column of each role, in the joined row. */
	Map<ColumnRole, Integer> columns() {
		return columns;
	}

	/** The next block of each table, of as many rows; null at the end. */
	List<Block> next() throws IntakeException {
		List<Block> blocks = new ArrayList<>();
		Block signals;
		int rows;
		do {
			signals = files.get(0).next();
			rows = signals == null ? 0 : files.size() == 1 ? 1 : signals.count();
		} while (signals != null && rows == 0);
		blocks.add(signals);
		for (int i = 1; i < files.size(); i++) {
			Block block = files.get(i).next(Math.max(1, rows));
			if ((block == null ? 0 : block.count()) != rows) {
				if (block != null) {
					// tells where reading failed
					files.get(i).next(1);
				}
				throw new IntakeException(plans.get(i).file, 0, Messages.Companions_itsRowsChangedInNumber,
						Messages.Companions_takeTheFilesInAgain);
			}
			blocks.add(block);
		}
		return signals == null ? null : blocks;
	}

	/** The rows of blocks that {@link #next} gave. */
	JoinedRows rows(List<Block> blocks) {
		return new JoinedRows(plans, starts, blocks);
	}

	@Override
	public void close() {
		files.forEach(Blocks::close);
	}
}
