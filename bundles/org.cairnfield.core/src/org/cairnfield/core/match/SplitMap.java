package org.cairnfield.core.match;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.cluster.OverlappingZones;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * A map split into cells for a coarse search among centroids and a fine one inside. Samples without a
 * cluster are left out, or kept in a pool that every query searches.
 */
public final class SplitMap {

	final Signals signals;
	final int[] rank;
	final int[][] cells;
	final int[] pool;
	final PackedCells packed;
	/** By cell: the samples whose mean stands for it; its members unless zones overlap. */
	private final int[][] centred;
	final Centroids centroids;
	/** Null for a search in one level. */
	final Centroids groups;
	final int[][] cellsOfGroup;

	private SplitMap(Signals signals, int[] rank, int[][] cells, int[] pool, PackedCells packed, int[][] centred,
			Centroids centroids, Centroids groups, int[][] cellsOfGroup) {
		this.signals = signals;
		this.rank = rank;
		this.cells = cells;
		this.pool = pool;
		this.packed = packed;
		this.centred = centred;
		this.centroids = centroids;
		this.groups = groups;
		this.cellsOfGroup = cellsOfGroup;
	}

	/**
	 * @param kind     what stands for a cell
	 * @param keepPool whether noise is searched with every query, else it is left out
	 */
	public static SplitMap of(Signals signals, Clustering clustering, Centroids.Kind kind, boolean keepPool) {
		return of(signals, clustering, kind,
				keepPool ? IntStream.range(0, clustering.size()).filter(clustering::isNoise).toArray() : new int[0]);
	}

	/**
	 * @param pool noise that is searched with every query, ascending; the rest of the noise is left out
	 * @throws IllegalArgumentException where a sample of the pool has a cluster
	 */
	public static SplitMap of(Signals signals, Clustering clustering, Centroids.Kind kind, int[] pool) {
		for (int s : pool) {
			if (!clustering.isNoise(s)) {
				throw new IllegalArgumentException(
						"sample " + s + " is in the pool and in cluster " + clustering.label(s));
			}
		}
		int[][] cells = clustering.members();
		return new SplitMap(signals, Neighbours.rankByPlace(signals.map()), cells, pool.clone(),
				new PackedCells(signals, cells, pool), cells, Centroids.of(signals, cells, kind), null, null);
	}

	/**
	 * Zones as cells, each with the mean of its own cluster for a centroid: a query searches the zone of its nearest cluster only.
	 * Time and memory of the fine search grow with {@link OverlappingZones#zonesPerSample}.
	 */
	public static SplitMap of(Signals signals, OverlappingZones zones) {
		int[][] cells = zones.members();
		int[][] clusters = zones.clustering().members();
		return new SplitMap(signals, Neighbours.rankByPlace(signals.map()), cells, new int[0],
				new PackedCells(signals, cells, new int[0]),
				clusters, Centroids.of(signals, clusters, Centroids.Kind.MEAN), null, null);
	}

	/** Whether a sample may be in several cells. */
	boolean overlaps() {
		return centred != cells;
	}

	/**
	 * The same cells and groups on other signals of the same samples, with all centroids rounded, as a device pack holds them;
	 * see {@link Centroids#rounded}. Centroids are means.
	 */
	public SplitMap rounded(Signals others, int parts) {
		Centroids exact = Centroids.of(others, centred, Centroids.Kind.MEAN);
		return new SplitMap(others, Neighbours.rankByPlace(others.map()), cells, pool,
				new PackedCells(others, cells, pool), centred,
				exact.rounded(parts), groups == null ? null : exact.grouped(cellsOfGroup).rounded(parts), cellsOfGroup);
	}

	/** What stands for each group of cells in a search of two levels; null in one level. */
	public Centroids groupCentroids() {
		return groups;
	}

	/** The cells of a group, ascending, a copy. */
	public int[] cellsOf(int group) {
		return cellsOfGroup[group].clone();
	}

	/** What stands for each cell in the coarse search. */
	public Centroids centroids() {
		return centroids;
	}

	/** The samples of a cell, a copy; cell {@link #cells} is the pool that every query searches. */
	public int[] members(int cell) {
		return (cell < cells.length ? cells[cell] : pool).clone();
	}

	/** Rank of each sample by place, by which equally near samples are told apart; a copy. */
	public int[] ranks() {
		return rank.clone();
	}

	/**
	 * The same with centroids of centroids above: about √cells of them, made by k-means.
	 *
	 * @param seed chooses the first centres
	 */
	public SplitMap inTwoLevels(long seed, Workers workers) {
		int wanted = (int) Math.round(Math.sqrt(cells.length));
		if (wanted < 2) {
			return this;
		}
		int[][] inGroups = KMeans.cluster(KMeans.points(centroids), wanted, seed, workers).members();
		return new SplitMap(signals, rank, cells, pool, packed, centred, centroids, centroids.grouped(inGroups),
				inGroups);
	}

	public Signals signals() {
		return signals;
	}

	/** The number of cells. */
	public int cells() {
		return cells.length;
	}

	/** The number of groups of cells, 0 in one level. */
	public int groups() {
		return groups == null ? 0 : groups.size();
	}

	/** The number of samples in cells and pool; one in several zones counts in each. */
	public int samples() {
		return Arrays.stream(cells).mapToInt(c -> c.length).sum() + pool.length;
	}
}
