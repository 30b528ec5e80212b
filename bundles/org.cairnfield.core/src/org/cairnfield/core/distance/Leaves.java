package org.cairnfield.core.distance;

import java.util.Arrays;

/** Points in leaves, each with its median as centre; by access point a list of the centres that hold it. Immutable. */
final class Leaves {

	/** First point of each leaf; then their number. */
	final int[] start;
	/** By point. */
	final int[] leafOf;
	/** By point: distance to the centre of its leaf. */
	final int[] toCentre;
	/** By leaf: S of the centre, and the smallest and largest distance to it. */
	final int[] sum;
	final int[] inner;
	final int[] outer;
	/** By access point: leaf, then the value of its centre in the lowest bits; ascending. */
	final int[] listStart;
	final int[] list;

	Leaves(Points points, int[] start, int accessPoints) {
		this.start = start;
		int leaves = start.length - 1;
		leafOf = new int[points.size()];
		toCentre = new int[points.size()];
		sum = new int[leaves];
		inner = new int[leaves];
		outer = new int[leaves];
		listStart = new int[accessPoints + 1];
		int[] all = new int[points.size()];
		Arrays.setAll(all, p -> p);
		Medians medians = new Medians(points, accessPoints);
		int[] value = new int[accessPoints];
		int[][] centres = new int[leaves][];
		for (int leaf = 0; leaf < leaves; leaf++) {
			centres[leaf] = medians.of(all, start[leaf], start[leaf + 1], 1);
			for (int e : centres[leaf]) {
				value[e >>> Points.VALUE_BITS] = e & Points.VALUE;
				sum[leaf] += e & Points.VALUE;
				listStart[(e >>> Points.VALUE_BITS) + 1]++;
			}
			measure(points, leaf, value);
			for (int e : centres[leaf]) {
				value[e >>> Points.VALUE_BITS] = 0;
			}
		}
		for (int a = 0; a < accessPoints; a++) {
			listStart[a + 1] += listStart[a];
		}
		list = new int[listStart[accessPoints]];
		int[] next = listStart.clone();
		for (int leaf = 0; leaf < leaves; leaf++) {
			for (int e : centres[leaf]) {
				list[next[e >>> Points.VALUE_BITS]++] = leaf << Points.VALUE_BITS | e & Points.VALUE;
			}
		}
	}

	private void measure(Points points, int leaf, int[] centre) {
		inner[leaf] = Integer.MAX_VALUE;
		for (int p = start[leaf]; p < start[leaf + 1]; p++) {
			int overlap = 0;
			for (int k = points.start[p]; k < points.start[p + 1]; k++) {
				overlap += Math.min(centre[points.entry[k] >>> Points.VALUE_BITS], points.entry[k] & Points.VALUE);
			}
			int d = points.sum[p] + sum[leaf] - 2 * overlap;
			leafOf[p] = leaf;
			toCentre[p] = d;
			inner[leaf] = Math.min(inner[leaf], d);
			outer[leaf] = Math.max(outer[leaf], d);
		}
	}
}
