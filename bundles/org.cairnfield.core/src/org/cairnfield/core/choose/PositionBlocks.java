package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.cairnfield.core.map.RadioMap;

/**
 * Samples in square blocks of the plane, so that a hold-out takes whole places away: repeated scans of one
 * point never stand on both sides, and close neighbours only across the edge of a block.
 */
public final class PositionBlocks {

	private static final int FEWEST_BLOCKS = 100;
	private static final int MOST_HALVINGS = 12;
	/** Keeps a place on the edge of a block on one side of it, however far the frame's origin is. */
	private static final double ROUNDING = 1e-6;

	private final int[] block;
	private final int blocks;
	private final double sideMetres;

	private PositionBlocks(int[] block, int blocks, double sideMetres) {
		this.block = block;
		this.blocks = blocks;
		this.sideMetres = sideMetres;
	}

	/** Blocks small enough that there are about a hundred or more, where the positions allow it. */
	public static PositionBlocks of(RadioMap map) {
		double side = Math.max(1e-6, extentMetres(map));
		PositionBlocks best = withSide(map, side);
		for (int i = 0; i < MOST_HALVINGS && best.blocks < FEWEST_BLOCKS; i++) {
			side /= 2;
			best = withSide(map, side);
		}
		return best;
	}

	/** @param sideMetres above 0 */
	public static PositionBlocks withSide(RadioMap map, double sideMetres) {
		if (!(sideMetres > 0)) {
			throw new IllegalArgumentException("side must be above 0 m: " + sideMetres);
		}
		double[][] corner = corners(map);
		Map<List<Long>, Integer> index = new HashMap<>();
		int[] block = new int[map.size()];
		for (int s = 0; s < block.length; s++) {
			List<Long> cell = List.of((long) map.site(s), (long) map.floor(s),
					along(map.x(s) - corner[map.site(s)][0], sideMetres),
					along(map.y(s) - corner[map.site(s)][1], sideMetres));
			Integer known = index.putIfAbsent(cell, index.size());
			block[s] = known == null ? index.size() - 1 : known;
		}
		return new PositionBlocks(block, index.size(), sideMetres);
	}

	/** Blocks are laid from the corner of each site's samples, so that a map in another frame has the same ones. */
	private static double[][] corners(RadioMap map) {
		double[][] corner = new double[map.sites().size()][];
		for (int s = 0; s < map.size(); s++) {
			double[] known = corner[map.site(s)];
			corner[map.site(s)] = known == null ? new double[] { map.x(s), map.y(s) }
					: new double[] { Math.min(known[0], map.x(s)), Math.min(known[1], map.y(s)) };
		}
		return corner;
	}

	private static long along(double metres, double sideMetres) {
		return (long) Math.floor(metres / sideMetres + ROUNDING);
	}

	private static double extentMetres(RadioMap map) {
		double left = Double.POSITIVE_INFINITY;
		double right = Double.NEGATIVE_INFINITY;
		double bottom = Double.POSITIVE_INFINITY;
		double top = Double.NEGATIVE_INFINITY;
		for (int s = 0; s < map.size(); s++) {
			left = Math.min(left, map.x(s));
			right = Math.max(right, map.x(s));
			bottom = Math.min(bottom, map.y(s));
			top = Math.max(top, map.y(s));
		}
		return map.size() == 0 ? 1 : Math.max(right - left, top - bottom);
	}

	/** The number of blocks with a sample in them. */
	public int count() {
		return blocks;
	}

	public double sideMetres() {
		return sideMetres;
	}

	/** The block of a sample, from 0. */
	public int block(int sample) {
		return block[sample];
	}

	/** Fold of each sample, 0 … folds − 1; a block is in one fold. */
	public int[] folds(int folds, long seed) {
		if (folds < 2) {
			throw new IllegalArgumentException("at least 2 folds: " + folds);
		}
		int[] order = shuffled(seed);
		int[] foldOfBlock = new int[blocks];
		for (int i = 0; i < blocks; i++) {
			foldOfBlock[order[i]] = i % folds;
		}
		return Arrays.stream(block).map(b -> foldOfBlock[b]).toArray();
	}

	/**
	 * Which samples are held out: blocks drawn by seed until their samples reach {@code share} of all.
	 *
	 * @param share 0 … 1
	 */
	public boolean[] holdOut(double share, long seed) {
		int[] size = new int[blocks];
		for (int b : block) {
			size[b]++;
		}
		boolean[] taken = new boolean[blocks];
		int held = 0;
		for (int b : shuffled(seed)) {
			if (held >= share * block.length) {
				break;
			}
			taken[b] = true;
			held += size[b];
		}
		boolean[] out = new boolean[block.length];
		for (int s = 0; s < out.length; s++) {
			out[s] = taken[block[s]];
		}
		return out;
	}

	private int[] shuffled(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		List<Integer> order = new ArrayList<>();
		for (int b = 0; b < blocks; b++) {
			order.add(random.nextInt(b + 1), b);
		}
		return order.stream().mapToInt(Integer::intValue).toArray();
	}
}
