package org.cairnfield.core.distance;

/** Of any distances. */
final class PlainDistanceRows implements DistanceRows {

	private final Signals signals;
	private final StepLists lists;
	private final DistanceKernel kernel;
	private final double[] row;
	/** By member, then by place in the batch. */
	private final double[] rows;
	private int component;

	PlainDistanceRows(Signals signals, StepLists lists) {
		this.signals = signals;
		this.lists = lists;
		kernel = signals.kernel();
		row = new double[signals.components.largest()];
		rows = new double[row.length * BATCH];
	}

	@Override
	public void begin(int[] samples) {
		component = signals.components.componentOf(samples[0]);
		int members = signals.components.size(component);
		for (int i = 0; i < samples.length; i++) {
			kernel.row(samples[i], row);
			for (int member = 0; member < members; member++) {
				rows[member * BATCH + i] = row[member];
			}
		}
	}

	@Override
	public double distance(int i, int member) {
		return rows[member * BATCH + i];
	}

	@Override
	public void sum(int column, int step, double[] sums, int at) {
		for (int i = 0; i < BATCH; i++) {
			sums[at + i] = 0;
		}
		for (int p = lists.from(column, step), end = lists.to(column, step); p < end; p++) {
			int from = lists.member(p) * BATCH;
			for (int i = 0; i < BATCH; i++) {
				sums[at + i] += rows[from + i];
			}
		}
	}

	@Override
	public void moments(double[] plain, double[] squares, double[] weighted) {
		int members = signals.components.size(component);
		for (int i = 0; i < BATCH; i++) {
			plain[i] = 0;
			squares[i] = 0;
			weighted[i] = 0;
			for (int member = 0; member < members; member++) {
				double d = rows[member * BATCH + i];
				plain[i] += d;
				squares[i] += d * d;
				weighted[i] += d * signals.magnitudeAt(component, member);
			}
		}
	}
}
