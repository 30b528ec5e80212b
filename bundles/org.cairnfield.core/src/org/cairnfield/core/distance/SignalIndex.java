package org.cairnfield.core.distance;

import java.util.Arrays;

/**
 * The samples of a map laid out so that those near a fingerprint are found without looking at all of them: see
 * {@link NearSearch}. For city-block distance of whole values from 0 to 255 only.
 *
 * <p>Samples with equal readings are one <em>point</em>. Points are numbered component by component, within a component by
 * their sum S = Σ v, quietest first. Access points are ranked by how many heard them, rarest first; the entries of a point and
 * the list of an access point are in these orders.
 *
 * <p>Memory: 12 bytes a reading of a point, about 24 a sample.
 */
public final class SignalIndex {

	static final int VALUE_BITS = 8;
	static final int VALUE = (1 << VALUE_BITS) - 1;
	/** Ranks and sums stay below, so that they fit beside a value. */
	private static final int MOST = 1 << 31 - VALUE_BITS;

	final Signals signals;
	/** By column. */
	final int[] rank;
	/** By sample. */
	final int[] pointOf;
	/** By point: its samples, ascending. */
	final int[] memberStart;
	final int[] member;
	/** By point: S. */
	final int[] sum;
	/** All points, quietest first. */
	final int[] quietestFirst;
	/** By point: rank and value of what it heard, rarest first. */
	final int[] entryStart;
	final int[] entry;
	/** By rank: the points that heard it, ascending, and the sum of what they heard that is more common, beside the value. */
	final int[] listStart;
	final int[] listPoint;
	final int[] listRest;

	private SignalIndex(Signals signals) {
		this.signals = signals;
		rank = ranks(signals);
		int[] order = quietestFirst(signals);
		pointOf = new int[order.length];
		int points = number(byComponent(signals, order));
		memberStart = new int[points + 1];
		member = members(order.length);
		sum = new int[points];
		entryStart = new int[points + 1];
		entry = entries();
		listStart = new int[rank.length + 1];
		listPoint = new int[entry.length];
		listRest = new int[entry.length];
		fillLists();
		quietestFirst = Arrays.stream(order).filter(s -> member[memberStart[pointOf[s]]] == s).map(s -> pointOf[s]).toArray();
	}

	/** Null where distance or representation of the signals do not allow one. */
	static SignalIndex of(Signals signals) {
		boolean fits = signals.distance() == Distance.CITY_BLOCK && signals.postingStart.length <= MOST;
		for (int step = 0; step < signals.steps(); step++) {
			fits &= signals.value(step) == Math.rint(signals.value(step)) && signals.value(step) <= VALUE;
		}
		for (double sum : signals.rows.magnitude) {
			fits &= sum < MOST;
		}
		return fits ? new SignalIndex(signals) : null;
	}

	/** The number of points. */
	public int size() {
		return sum.length;
	}

	/** The number of samples. */
	public int samples() {
		return pointOf.length;
	}

	/** The point of a sample. */
	public int pointOf(int sample) {
		return pointOf[sample];
	}

	/** How many samples have the readings of a point. */
	public int weight(int point) {
		return memberStart[point + 1] - memberStart[point];
	}

	/** The samples of a point, ascending. */
	public int member(int point, int i) {
		return member[memberStart[point] + i];
	}

	/** Makes a search with scratch space of its own; one per thread. */
	public NearSearch search() {
		return new NearSearch(this);
	}

	private static int[] ranks(Signals signals) {
		int columns = signals.postingStart.length - 1;
		long[] byLength = new long[columns];
		for (int c = 0; c < columns; c++) {
			byLength[c] = (long) (signals.postingStart[c + 1] - signals.postingStart[c]) << 32 | c;
		}
		Arrays.sort(byLength);
		int[] rank = new int[columns];
		for (int r = 0; r < columns; r++) {
			rank[(int) byLength[r]] = r;
		}
		return rank;
	}

	private static int[] quietestFirst(Signals signals) {
		int n = signals.size();
		int[] key = new int[n];
		int loudest = 0;
		for (int s = 0; s < n; s++) {
			key[s] = (int) signals.rows.magnitude[s];
			loudest = Math.max(loudest, key[s]);
		}
		int[] order = new int[n];
		Arrays.setAll(order, s -> s);
		return sorted(order, key, loudest + 1);
	}

	/** Those that heard nothing become one group behind all components. */
	private static int[] byComponent(Signals signals, int[] order) {
		int[] key = new int[order.length];
		int none = signals.components.count();
		for (int s = 0; s < key.length; s++) {
			key[s] = signals.rows.magnitude[s] == 0 ? none : signals.components.componentOf(s);
		}
		return sorted(order, key, none + 1);
	}

	/** Stable, by counting. */
	private static int[] sorted(int[] order, int[] key, int keys) {
		int[] next = new int[keys + 1];
		for (int k : key) {
			next[k + 1]++;
		}
		for (int k = 0; k < keys; k++) {
			next[k + 1] += next[k];
		}
		int[] sorted = new int[order.length];
		for (int s : order) {
			sorted[next[key[s]]++] = s;
		}
		return sorted;
	}

	/** Gives samples of equal readings one number; by hash among those of one component and sum. */
	private int number(int[] order) {
		SignalRows rows = signals.rows;
		int points = 0;
		long[] run = new long[16];
		for (int from = 0, to; from < order.length; from = to) {
			to = from + 1;
			while (to < order.length && rows.magnitude[order[to]] == rows.magnitude[order[from]]
					&& (rows.magnitude[order[from]] == 0 || signals.components.componentOf(order[to]) == signals.components.componentOf(order[from]))) {
				to++;
			}
			if (run.length < to - from) {
				run = new long[Math.max(to - from, 2 * run.length)];
			}
			for (int i = from; i < to; i++) {
				run[i - from] = (long) rows.hash(order[i]) << 32 | order[i];
			}
			Arrays.sort(run, 0, to - from);
			for (int i = 0; i < to - from; i++) {
				if (i == 0 || !rows.same((int) run[i - 1], (int) run[i])) {
					points++;
				}
				pointOf[(int) run[i]] = points - 1;
			}
		}
		return points;
	}

	private int[] members(int n) {
		for (int p : pointOf) {
			memberStart[p + 1]++;
		}
		for (int p = 0; p < memberStart.length - 1; p++) {
			memberStart[p + 1] += memberStart[p];
		}
		int[] next = memberStart.clone();
		int[] members = new int[n];
		for (int s = 0; s < n; s++) {
			members[next[pointOf[s]]++] = s;
		}
		return members;
	}

	private int[] entries() {
		SignalRows rows = signals.rows;
		for (int p = 0; p < sum.length; p++) {
			int sample = member(p, 0);
			sum[p] = (int) rows.magnitude[sample];
			entryStart[p + 1] = entryStart[p] + rows.end(sample) - rows.start(sample);
		}
		int[] entries = new int[entryStart[sum.length]];
		for (int p = 0; p < sum.length; p++) {
			write(rows, member(p, 0), entries, entryStart[p]);
		}
		return entries;
	}

	/** Writes the entries of a row in the frame of the signals, rarest first. */
	void write(SignalRows rows, int row, int[] into, int at) {
		int to = at;
		for (int k = rows.start(row); k < rows.end(row); k++) {
			into[to++] = rank[rows.column(k)] << VALUE_BITS | (int) signals.value(rows.step(k));
		}
		Arrays.sort(into, at, to);
	}

	private void fillLists() {
		for (int e : entry) {
			listStart[(e >>> VALUE_BITS) + 1]++;
		}
		for (int r = 0; r < rank.length; r++) {
			listStart[r + 1] += listStart[r];
		}
		int[] next = listStart.clone();
		for (int p = 0; p < sum.length; p++) {
			int rest = sum[p];
			for (int k = entryStart[p]; k < entryStart[p + 1]; k++) {
				rest -= entry[k] & VALUE;
				int at = next[entry[k] >>> VALUE_BITS]++;
				listPoint[at] = p;
				listRest[at] = rest << VALUE_BITS | entry[k] & VALUE;
			}
		}
	}
}
