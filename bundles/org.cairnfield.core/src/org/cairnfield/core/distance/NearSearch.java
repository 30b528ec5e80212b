package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * Finds the points near a fingerprint. Exact: what is not looked at is proved to be too far. With r the reach,
 * <ul>
 * <li>the distances to the centres of all leaves are one pass over their lists; of a leaf whose centre is at d, with points from
 * r₁ to r₂ around it, none can be near if d − r₂ &gt; r or r₁ − d &gt; r, and no point if its own distance to the centre differs
 * from d by more than r (triangle inequality);
 * <li>what is left is compared reading by reading until it is too far: with S the sums of the values,
 * d(i, j) = S<sub>i</sub> − S<sub>j</sub> + 2·Σ of what j has more, over what j heard.
 * </ul>
 * Points of components that the fingerprint does not hear are near only if both are quiet, S<sub>i</sub> + S<sub>j</sub> ≤ r.
 *
 * <p>Medians as centres are sparse and lie amid the scatter of their points, so that their distances to far points are larger than
 * those of any point of the leaf. Holds scratch space; one per thread.
 */
public final class NearSearch {

	/** Receives what is found. */
	@FunctionalInterface
	public interface Taker {
		/**
		 * @param distance at most {@code reach}
		 * @return the reach within which more are wanted, at most {@code reach}
		 */
		int take(int point, int distance, int reach);
	}

	/** A reach that no distance exceeds. */
	private static final int ANY = 1 << 29;

	private final SignalIndex index;
	private final Points points;
	private final Leaves leaves;
	/** Values of the fingerprint by access point; all 0 between fingerprints. */
	private final int[] value;
	/** By leaf: overlap of its centre with the fingerprint; all 0 between fingerprints. */
	private final int[] overlap;

	/** The fingerprint: its point, or −1 where it is none of the map; its sum and its entries. */
	private int own;
	private int sum;
	private int[] entries;
	private int from;
	private int to;
	private int[] written = new int[64];
	/** Components of which it heard something. */
	private int[] heard = new int[4];
	private int heardCount;

	private int reach;
	private Taker taker;

	NearSearch(SignalIndex index) {
		this.index = index;
		points = index.points;
		leaves = index.leaves;
		value = new int[leaves.listStart.length - 1];
		overlap = new int[leaves.sum.length];
	}

	/** Every other point within reach of a point. */
	public void around(int point, double within, Taker into) {
		start(point, within, into);
		addOverlaps();
		int component = heard[0];
		scan(index.componentLeaf[component], index.componentLeaf[component + 1]);
		scanQuiet(points.size());
		end();
	}

	/** Those of them that have a smaller number. */
	public void before(int point, double within, Taker into) {
		start(point, within, into);
		int leaf = leaves.leafOf[point];
		addOverlapsUpTo(leaf);
		scan(index.componentLeaf[heard[0]], leaf);
		compare(leaves.start[leaf], point, leaves.toCentre[point]);
		scanQuiet(point);
		end();
	}

	/** The points nearest to a point, itself left out: as {@link #around}, its own leaf and that of the nearest centre first. */
	public void nearest(int point, Taker into) {
		start(point, ANY, into);
		addOverlaps();
		scanFrom(heard[0], leaves.leafOf[point]);
		scanQuiet(points.size());
		end();
	}

	/** Every point within reach of a fingerprint that {@link Signals#align} gave, its own included if it has one. */
	public void nearest(SignalRows rows, int row, Taker into) {
		int length = rows.end(row) - rows.start(row);
		if (written.length < length) {
			written = new int[2 * length];
		}
		Points.write(index.signals, rows, row, written, 0);
		own = -1;
		sum = (int) rows.magnitude(row);
		entries = written;
		from = 0;
		to = length;
		heardCount = 0;
		for (int k = from; k < to; k++) {
			hear(index.signals.componentOfColumn(entries[k] >>> Points.VALUE_BITS));
		}
		begin(ANY, into);
		addOverlaps();
		for (int i = 0; i < heardCount; i++) {
			scanFrom(heard[i], -1);
		}
		scanQuiet(points.size());
		end();
	}

	private void hear(int component) {
		for (int i = 0; i < heardCount; i++) {
			if (heard[i] == component) {
				return;
			}
		}
		if (component >= 0) {
			if (heardCount == heard.length) {
				heard = Arrays.copyOf(heard, 2 * heardCount);
			}
			heard[heardCount++] = component;
		}
	}

	private void start(int point, double within, Taker into) {
		own = point;
		sum = points.sum[point];
		entries = points.entry;
		from = points.start[point];
		to = points.start[point + 1];
		heard[0] = index.componentOf(index.member(point, 0));
		heardCount = 1;
		begin(within >= ANY ? ANY : (int) Math.floor(within), into); // all distances are whole
	}

	private void begin(int within, Taker into) {
		reach = within;
		taker = into;
		for (int k = from; k < to; k++) {
			value[entries[k] >>> Points.VALUE_BITS] = entries[k] & Points.VALUE;
		}
	}

	private void end() {
		for (int k = from; k < to; k++) {
			value[entries[k] >>> Points.VALUE_BITS] = 0;
		}
		taker = null;
	}

	private void addOverlaps() {
		int[] list = leaves.list;
		for (int k = from; k < to; k++) {
			int v = entries[k] & Points.VALUE;
			int at = entries[k] >>> Points.VALUE_BITS;
			for (int x = leaves.listStart[at], last = leaves.listStart[at + 1]; x < last; x++) {
				overlap[list[x] >>> Points.VALUE_BITS] += Math.min(v, list[x] & Points.VALUE);
			}
		}
	}

	/** For leaves before one only. */
	private void addOverlapsUpTo(int leaf) {
		int[] list = leaves.list;
		int end = leaf << Points.VALUE_BITS;
		for (int k = from; k < to; k++) {
			int v = entries[k] & Points.VALUE;
			int at = entries[k] >>> Points.VALUE_BITS;
			for (int x = leaves.listStart[at], last = leaves.listStart[at + 1]; x < last && list[x] < end; x++) {
				overlap[list[x] >>> Points.VALUE_BITS] += Math.min(v, list[x] & Points.VALUE);
			}
		}
	}

	/** Scans the leaves of a component, likely ones first. @param likely a leaf, or −1 */
	private void scanFrom(int component, int likely) {
		int first = index.componentLeaf[component];
		int end = index.componentLeaf[component + 1];
		int nearest = likely;
		int least = Integer.MAX_VALUE;
		for (int leaf = first; leaf < end; leaf++) {
			int d = leaves.sum[leaf] - 2 * overlap[leaf];
			if (d < least) {
				least = d;
				nearest = leaf;
			}
		}
		if (likely >= 0 && likely != nearest) {
			compare(leaves.start[likely], leaves.start[likely + 1], sum + leaves.sum[likely] - 2 * overlap[likely]);
		}
		if (nearest >= 0) {
			compare(leaves.start[nearest], leaves.start[nearest + 1], sum + least);
		}
		for (int leaf = first; leaf < end; leaf++) {
			int d = sum + leaves.sum[leaf] - 2 * overlap[leaf];
			overlap[leaf] = 0;
			if (leaf != nearest && leaf != likely
					&& Math.max(d - leaves.outer[leaf], leaves.inner[leaf] - d) <= reach) {
				compare(leaves.start[leaf], leaves.start[leaf + 1], d);
			}
		}
	}

	private void scan(int first, int end) {
		for (int leaf = first; leaf < end; leaf++) {
			int d = sum + leaves.sum[leaf] - 2 * overlap[leaf];
			overlap[leaf] = 0;
			if (Math.max(d - leaves.outer[leaf], leaves.inner[leaf] - d) <= reach) {
				compare(leaves.start[leaf], leaves.start[leaf + 1], d);
			}
		}
	}

	/** Compares points of a leaf whose centre is at a distance. */
	private void compare(int first, int end, int centre) {
		for (int p = first; p < end; p++) {
			if (Math.max(Math.abs(centre - leaves.toCentre[p]), Math.abs(sum - points.sum[p])) <= reach && p != own) {
				compare(p);
			}
		}
	}

	private void compare(int other) {
		int apart = sum - points.sum[other];
		int allowed = (reach - apart) >> 1;
		int more = 0;
		int[] all = points.entry;
		for (int k = points.start[other], end = points.start[other + 1]; k < end; k++) {
			more += Math.max(0, (all[k] & Points.VALUE) - value[all[k] >>> Points.VALUE_BITS]);
			if (more > allowed) {
				return;
			}
		}
		reach = taker.take(other, apart + 2 * more, reach);
	}

	/** Points out of earshot. @param end numbers below only */
	private void scanQuiet(int end) {
		for (int other : index.quietestFirst) {
			int d = sum + points.sum[other];
			if (d > reach) {
				return;
			}
			if (other < end && !isHeard(index.componentOf(index.member(other, 0)))) {
				reach = taker.take(other, d, reach);
			}
		}
	}

	private boolean isHeard(int component) {
		for (int i = 0; i < heardCount; i++) {
			if (heard[i] == component) {
				return true;
			}
		}
		return false;
	}
}
