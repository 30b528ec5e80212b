package org.cairnfield.core.distance;

/**
 * Finds the points near a fingerprint. Exact: what is not looked at is proved to be too far. With r the reach, S the sums of the
 * values of two fingerprints i and j and M = Σ min over what both heard, d = S<sub>i</sub> + S<sub>j</sub> − 2M ≤ r needs
 * M ≥ (S<sub>i</sub> + S<sub>j</sub> − r)/2. Hence
 * <ul>
 * <li>|S<sub>i</sub> − S<sub>j</sub>| ≤ r: each list is walked from the place of S<sub>i</sub> outwards and no farther;
 * <li>with access points ranked rarest first, the first that both heard is among those of i whose values, with all more common
 * ones, come to at least S<sub>i</sub> − r: the lists of the others are not opened;
 * <li>at that first one, M is at most the smaller value there plus the smaller of what is left of i and j.
 * </ul>
 * What is left is compared reading by reading until it is too far. Those without a common access point are near only if both are
 * quiet, S<sub>i</sub> + S<sub>j</sub> ≤ r.
 *
 * <p>Sources: prefix filter and verification as compared by W. Mann, N. Augsten, P. Bouros, "An empirical evaluation of set
 * similarity join techniques", PVLDB 9 (2016); positional filter by C. Xiao, W. Wang, X. Lin, J. X. Yu, "Efficient similarity
 * joins for near duplicate detection", WWW 2008; here for sums of minima instead of counts.
 *
 * <p>Holds scratch space; one per thread.
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
	public static final int ANY = 1 << 29;

	/** Points beside a sample in the map, on either side, which are looked at first: who walks a survey stays near. */
	private static final int BESIDE = 6;

	private final SignalIndex index;
	/** Values of the fingerprint by rank; all 0 between fingerprints. */
	private final int[] value;
	/** When each point was met last. */
	private final int[] met;
	private int now;

	/** The fingerprint: its point, or −1 where it is none of the map; its sum and its entries. */
	private int own;
	private int sum;
	private int[] entries;
	private int from;
	private int to;
	private int[] loaded = new int[64];

	private int reach;
	private Taker taker;

	NearSearch(SignalIndex index) {
		this.index = index;
		value = new int[index.rank.length];
		met = new int[index.size()];
	}

	/** Every other point within reach of a point. */
	public void around(int point, double within, Taker into) {
		of(point);
		run(whole(within), false, into);
	}

	/** Those of them that have a smaller number. */
	public void before(int point, double within, Taker into) {
		of(point);
		run(whole(within), true, into);
	}

	/** The points nearest to a point, itself left out: as {@link #around}, looking first where near ones are likely. */
	public void nearest(int point, Taker into) {
		of(point);
		start(ANY, into);
		int sample = index.member(point, 0);
		for (int s = Math.max(0, sample - BESIDE); s < Math.min(index.pointOf.length, sample + BESIDE + 1); s++) {
			int beside = index.pointOf[s];
			if (met[beside] != now && Math.abs(index.sum[beside] - sum) <= reach) {
				met[beside] = now;
				compare(beside);
			}
		}
		search(false);
		end();
	}

	/** Every point within reach of a fingerprint that {@link Signals#align} gave, its own included if it has one. */
	public void nearest(SignalRows rows, int row, Taker into) {
		int length = rows.end(row) - rows.start(row);
		if (loaded.length < length) {
			loaded = new int[2 * length];
		}
		index.write(rows, row, loaded, 0);
		own = -1;
		sum = (int) rows.magnitude(row);
		entries = loaded;
		from = 0;
		to = length;
		run(ANY, false, into);
	}

	private void of(int point) {
		own = point;
		sum = index.sum[point];
		entries = index.entry;
		from = index.entryStart[point];
		to = index.entryStart[point + 1];
	}

	/** All distances are whole. */
	private static int whole(double within) {
		return within >= ANY ? ANY : (int) Math.floor(within);
	}

	private void run(int within, boolean before, Taker into) {
		start(within, into);
		search(before);
		end();
	}

	private void start(int within, Taker into) {
		reach = within;
		taker = into;
		now++;
		if (own >= 0) {
			met[own] = now;
		}
		for (int k = from; k < to; k++) {
			value[entries[k] >>> SignalIndex.VALUE_BITS] = entries[k] & SignalIndex.VALUE;
		}
	}

	private void end() {
		for (int k = from; k < to; k++) {
			value[entries[k] >>> SignalIndex.VALUE_BITS] = 0;
		}
		taker = null;
	}

	private void search(boolean before) {
		int rest = sum;
		for (int k = from; k < to && rest >= sum - reach; k++) {
			int v = entries[k] & SignalIndex.VALUE;
			int list = entries[k] >>> SignalIndex.VALUE_BITS;
			rest -= v;
			int first = index.listStart[list];
			int end = index.listStart[list + 1];
			int middle = before ? placeOf(own, first, end) : placeOfSum(first, end);
			walk(middle - 1, first - 1, -1, v, rest);
			if (!before) {
				walk(middle, end, 1, v, rest);
			}
		}
		visitQuiet(before);
	}

	/** The first place in a list whose point is at least a point. */
	private int placeOf(int point, int first, int end) {
		int low = first;
		int high = end;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (index.listPoint[middle] < point) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	/** The first place in a list whose point is at least as loud as the fingerprint. */
	private int placeOfSum(int first, int end) {
		int low = first;
		int high = end;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (index.sum[index.listPoint[middle]] < sum) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	/** Walks a list until the sums are too far apart; v and rest are the fingerprint's value here and what is left of it. */
	private void walk(int start, int end, int step, int v, int rest) {
		int[] points = index.listPoint;
		int[] rests = index.listRest;
		int[] sums = index.sum;
		for (int at = start; at != end; at += step) {
			int other = points[at];
			int otherSum = sums[other];
			if ((otherSum - sum) * step > reach) {
				return;
			}
			if (met[other] != now) {
				met[other] = now;
				int packed = rests[at];
				int most = Math.min(v, packed & SignalIndex.VALUE) + Math.min(rest, packed >>> SignalIndex.VALUE_BITS);
				if (sum + otherSum - 2 * most <= reach) {
					compare(other);
				}
			}
		}
	}

	/** d = S − S(other) + 2·Σ of what the other has more, over what it heard. */
	private void compare(int other) {
		int apart = sum - index.sum[other];
		int allowed = (reach - apart) >> 1;
		int more = 0;
		int[] all = index.entry;
		for (int k = index.entryStart[other], end = index.entryStart[other + 1]; k < end; k++) {
			int gap = (all[k] & SignalIndex.VALUE) - value[all[k] >>> SignalIndex.VALUE_BITS];
			if (gap > 0) {
				more += gap;
				if (more > allowed) {
					return;
				}
			}
		}
		reach = taker.take(other, apart + 2 * more, reach);
	}

	/** Whatever has an access point in common has been met by now: a quiet fingerprint has opened all its lists. */
	private void visitQuiet(boolean before) {
		for (int other : index.quietestFirst) {
			int d = sum + index.sum[other];
			if (d > reach) {
				return;
			}
			if (met[other] != now && (!before || other < own)) {
				reach = taker.take(other, d, reach);
			}
		}
	}
}
