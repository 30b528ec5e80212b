package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Of distances that are whole numbers, plain sums, and below 2<sup>16</sup>: four of them share a long, so that one addition does
 * for all four. Where they are added up two sums share a long, and stay below 2<sup>32</sup>. Exact.
 */
final class WholeDistanceRows implements DistanceRows {

	private static final int LONGS = BATCH / 4;
	private static final int BITS = 16;
	private static final long LOWEST = 0xffffL;
	private static final long HALF = 0xffff_ffffL;
	/** One in each of four. */
	private static final long ALL = 0x0001_0001_0001_0001L;
	/** The first and the third of four. */
	private static final long EVEN = 0x0000_ffff_0000_ffffL;

	private final Signals signals;
	private final StepLists lists;
	private final int steps;
	private final Components components;
	/** By member, then by place in the batch, four to a long. */
	private final long[] rows;
	/** Four times the magnitude of each sample in a long, in the order of the components' members. */
	private final long[] magnitudes;
	/** Overlap of two steps, as whole numbers. */
	private final long[][] overlap;
	/** What the batch heard: the access points, for each where it is among them, and at which step each of the batch heard it. */
	private int[] columns = new int[64];
	private final int[] slot;
	private byte[] heard = new byte[columns.length * BATCH];
	private int count;
	private int component;

	/** For signals that {@link #fits fit}. */
	WholeDistanceRows(Signals signals, StepLists lists) {
		this.signals = signals;
		this.lists = lists;
		steps = signals.steps();
		components = signals.components;
		rows = new long[components.largest() * LONGS];
		magnitudes = Arrays.stream(signals.memberMagnitude).mapToLong(m -> (long) m * ALL).toArray();
		overlap = new long[steps][steps];
		for (int a = 0; a < steps; a++) {
			for (int b = 0; b < steps; b++) {
				overlap[a][b] = (long) signals.overlap[a][b];
			}
		}
		slot = new int[signals.map().accessPointCount()];
		Arrays.fill(slot, -1);
	}

	/** Whether distances are whole numbers and small enough. */
	static boolean fits(Signals signals) {
		boolean whole = signals.distance().isSum();
		for (int step = 0; step < signals.steps(); step++) {
			whole &= signals.value(step) == Math.rint(signals.value(step));
		}
		double most = 2 * Arrays.stream(signals.memberMagnitude).max().orElse(0);
		return whole && most <= LOWEST && most * signals.components.largest() < 1L << 2 * BITS;
	}

	@Override
	public void begin(int[] samples) {
		component = components.componentOf(samples[0]);
		int members = components.size(component);
		Arrays.fill(rows, 0, members * LONGS, 0);
		collect(samples);
		for (int c = 0; c < count; c++) {
			addOverlaps(columns[c], c * BATCH);
			slot[columns[c]] = -1;
		}
		finish(samples, members);
	}

	private void collect(int[] samples) {
		SignalRows all = signals.rows;
		count = 0;
		for (int i = 0; i < samples.length; i++) {
			for (int k = all.start[samples[i]]; k < all.start[samples[i] + 1]; k++) {
				int column = all.column[k];
				if (slot[column] < 0) {
					if (count == columns.length) {
						columns = Arrays.copyOf(columns, 2 * count);
						heard = Arrays.copyOf(heard, 2 * count * BATCH);
					}
					columns[count] = column;
					slot[column] = count++;
					Arrays.fill(heard, slot[column] * BATCH, count * BATCH, (byte) 0);
				}
				heard[slot[column] * BATCH + i] = all.step[k];
			}
		}
	}

	/** Of one access point, step by step: all that heard it at a step add the same. */
	private void addOverlaps(int column, int by) {
		for (int step = 1; step < steps; step++) {
			int from = lists.from(column, step);
			int to = lists.to(column, step);
			if (from < to) {
				long first = four(overlap[step], by);
				long second = four(overlap[step], by + 4);
				for (int p = from; p < to; p++) {
					int at = lists.member(p) * LONGS;
					rows[at] += first;
					rows[at + 1] += second;
				}
			}
		}
	}

	private long four(long[] with, int by) {
		return with[heard[by]] | with[heard[by + 1]] << BITS | with[heard[by + 2]] << 2 * BITS
				| with[heard[by + 3]] << 3 * BITS;
	}

	private void finish(int[] samples, int members) {
		long first = 0;
		long second = 0;
		for (int i = 3; i >= 0; i--) {
			first = first << BITS | magnitude(samples, i);
			second = second << BITS | magnitude(samples, i + 4);
		}
		int base = components.firstMember(component);
		for (int member = 0; member < members; member++) {
			rows[member * LONGS] = first + magnitudes[base + member] - 2 * rows[member * LONGS];
			rows[member * LONGS + 1] = second + magnitudes[base + member] - 2 * rows[member * LONGS + 1];
		}
	}

	private long magnitude(int[] samples, int i) {
		return i < samples.length ? (long) signals.rows.magnitude[samples[i]] : 0;
	}

	@Override
	public double distance(int i, int member) {
		return rows[member * LONGS + i / 4] >>> i % 4 * BITS & LOWEST;
	}

	@Override
	public void sum(int column, int step, double[] sums, int at) {
		long even = 0;
		long odd = 0;
		long secondEven = 0;
		long secondOdd = 0;
		for (int p = lists.from(column, step), end = lists.to(column, step); p < end; p++) {
			long first = rows[lists.member(p) * LONGS];
			long second = rows[lists.member(p) * LONGS + 1];
			even += first & EVEN;
			odd += first >>> BITS & EVEN;
			secondEven += second & EVEN;
			secondOdd += second >>> BITS & EVEN;
		}
		put(even, odd, sums, at);
		put(secondEven, secondOdd, sums, at + 4);
	}

	private static void put(long even, long odd, double[] sums, int at) {
		sums[at] = even & HALF;
		sums[at + 1] = odd & HALF;
		sums[at + 2] = even >>> 2 * BITS;
		sums[at + 3] = odd >>> 2 * BITS;
	}

	@Override
	public void moments(double[] plain, double[] squares, double[] weighted) {
		for (int i = 0; i < BATCH; i += 4) {
			moments(i, plain, squares, weighted);
		}
	}

	/** Of four samples that share a long. */
	private void moments(int i, double[] plain, double[] squares, double[] weighted) {
		long even = 0;
		long odd = 0;
		long square0 = 0;
		long square1 = 0;
		long square2 = 0;
		long square3 = 0;
		long times0 = 0;
		long times1 = 0;
		long times2 = 0;
		long times3 = 0;
		int base = components.firstMember(component);
		for (int member = 0, members = components.size(component); member < members; member++) {
			long four = rows[member * LONGS + i / 4];
			long magnitude = magnitudes[base + member] & LOWEST;
			even += four & EVEN;
			odd += four >>> BITS & EVEN;
			long d0 = four & LOWEST;
			long d1 = four >>> BITS & LOWEST;
			long d2 = four >>> 2 * BITS & LOWEST;
			long d3 = four >>> 3 * BITS;
			square0 += d0 * d0;
			square1 += d1 * d1;
			square2 += d2 * d2;
			square3 += d3 * d3;
			times0 += d0 * magnitude;
			times1 += d1 * magnitude;
			times2 += d2 * magnitude;
			times3 += d3 * magnitude;
		}
		put(even, odd, plain, i);
		squares[i] = square0;
		squares[i + 1] = square1;
		squares[i + 2] = square2;
		squares[i + 3] = square3;
		weighted[i] = times0;
		weighted[i + 1] = times1;
		weighted[i + 2] = times2;
		weighted[i + 3] = times3;
	}
}
