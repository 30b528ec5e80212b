package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * The samples of a map laid out so that those near a fingerprint are found without looking at all of them: see
 * {@link NearSearch}. For city-block distance of whole values from 0 to 255 only.
 *
 * <p>Samples with equal readings are one <em>point</em>. The points of a component are split into leaves of near ones
 * ({@link Leaves}), each with a centre, and are numbered leaf by leaf.
 *
 * <p>Memory: 4 bytes a reading of a point, about 32 a sample.
 */
public final class SignalIndex {

	/** Access point indexes and sums stay below, so that they fit beside a value. */
	private static final int MOST = 1 << 31 - Points.VALUE_BITS;

	final Signals signals;
	/** By sample. */
	final int[] pointOf;
	final Points points;
	final Leaves leaves;
	/** By point: its samples, ascending. */
	private final int[] memberStart;
	private final int[] member;
	/** Components of the map, and behind them one of those that heard nothing: their first leaf. */
	final int[] componentLeaf;
	/** All points, quietest first; none where there is but one component. */
	final int[] quietestFirst;

	private SignalIndex(Signals signals) {
		this.signals = signals;
		DistinctRows distinct = DistinctRows.of(signals);
		Points unordered = Points.of(signals, distinct.first());
		LeafSplit split = new LeafSplit(unordered, signals.map().accessPointCount());
		int components = signals.components.count() + 1;
		componentLeaf = new int[components + 1];
		int from = 0;
		for (int c = 0; c < components; c++) {
			int to = from;
			while (to < unordered.size() && distinct.component()[to] == c) {
				to++;
			}
			split.split(from, to);
			componentLeaf[c + 1] = split.leaves();
			from = to;
		}
		points = unordered.inOrder(split.order());
		leaves = new Leaves(points, split.starts(), signals.map().accessPointCount());
		int[] numberOf = new int[points.size()];
		for (int p = 0; p < numberOf.length; p++) {
			numberOf[split.order()[p]] = p;
		}
		pointOf = Arrays.stream(distinct.rowOf()).map(row -> numberOf[row]).toArray();
		memberStart = new int[points.size() + 1];
		member = members();
		quietestFirst = components <= 2 ? new int[0] : points.quietestFirst();
	}

	/** Null where distance or representation of the signals do not allow one. */
	static SignalIndex of(Signals signals) {
		boolean fits = signals.distance() == Distance.CITY_BLOCK && signals.map().accessPointCount() < MOST;
		for (int step = 0; step < signals.steps(); step++) {
			fits &= signals.value(step) == Math.rint(signals.value(step)) && signals.value(step) <= Points.VALUE;
		}
		for (double sum : signals.rows.magnitude) {
			fits &= sum < MOST;
		}
		return fits ? new SignalIndex(signals) : null;
	}

	/** The number of points. */
	public int size() {
		return points.size();
	}

	/** The number of samples. */
	public int samples() {
		return pointOf.length;
	}

	/** The point of a sample. */
	public int pointOf(int sample) {
		return pointOf[sample];
	}

	/** The leaf of a sample: samples of one leaf are near each other. */
	public int leafOf(int sample) {
		return leaves.leafOf[pointOf[sample]];
	}

	/** Distance of a sample to the centre of its leaf. */
	public int toCentre(int sample) {
		return leaves.toCentre[pointOf[sample]];
	}

	/** How many samples have the readings of a point. */
	public int weight(int point) {
		return memberStart[point + 1] - memberStart[point];
	}

	/** The i-th sample of a point, ascending. */
	public int member(int point, int i) {
		return member[memberStart[point] + i];
	}

	/** Makes a search with scratch space of its own; one per thread. */
	public NearSearch search() {
		return new NearSearch(this);
	}

	/** The component of a sample, or that of those that heard nothing. */
	int componentOf(int sample) {
		return signals.rows.magnitude[sample] == 0 ? signals.components.count()
				: signals.components.componentOf(sample);
	}

	private int[] members() {
		for (int p : pointOf) {
			memberStart[p + 1]++;
		}
		for (int p = 0; p < memberStart.length - 1; p++) {
			memberStart[p + 1] += memberStart[p];
		}
		int[] next = memberStart.clone();
		int[] members = new int[pointOf.length];
		for (int s = 0; s < pointOf.length; s++) {
			members[next[pointOf[s]]++] = s;
		}
		return members;
	}
}
