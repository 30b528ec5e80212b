package org.cairnfield.exchange;

import java.util.List;

/** The rows of blocks of several tables side by side, as {@link Companions} cut them. */
final class JoinedRows implements Row {

	private final List<FilePlan> plans;
	private final int[] starts;
	private final BlockRows[] rows;

	JoinedRows(List<FilePlan> plans, int[] starts, List<Block> blocks) {
		this.plans = plans;
		this.starts = starts;
		rows = blocks.stream().map(Block::rows).toArray(BlockRows[]::new);
	}

	BlockRows signals() {
		return rows[0];
	}

	/** Moves all tables to their next rows; false at the end. */
	boolean next() throws IntakeException {
		boolean more = rows[0].next();
		for (int i = 1; i < rows.length && more; i++) {
			rows[i].next();
		}
		return more;
	}

	@Override
	public String get(int column) {
		int table = table(column);
		return rows[table].get(column - starts[table]);
	}

	/** Appends the bytes of a field to a key. */
	void appendTo(ByteKey key, int column) {
		int table = table(column);
		BlockRows row = rows[table];
		int at = column - starts[table];
		key.append(row.array(at), row.begin(at), row.end(at));
	}

	private int table(int column) {
		int table = starts.length - 1;
		while (starts[table] > column) {
			table--;
		}
		return table;
	}

	@Override
	public int size() {
		int size = 0;
		for (BlockRows row : rows) {
			size += row.size();
		}
		return size;
	}

	/** Where the partners' rows stand, for messages; empty where there are none. */
	String where() {
		StringBuilder out = new StringBuilder();
		for (int i = 1; i < rows.length; i++) {
			out.append(i == 1 ? " (" : ", ").append(plans.get(i).file.getFileName()).append(Messages.JoinedRows_line)
					.append(rows[i].line());
		}
		return out.append(rows.length > 1 ? ")" : "").toString();
	}

	/** What is wrong with the number of fields of a partner's row, or null. */
	String partnerTrouble() {
		for (int i = 1; i < rows.length; i++) {
			String trouble = Widths.trouble(rows[i], plans.get(i));
			if (trouble != null) {
				return plans.get(i).file.getFileName() + " " + trouble;
			}
		}
		return null;
	}
}
