package org.cairnfield.core.match;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.LargeClusters;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * How a split map is searched for a position.
 *
 * @param cut         whether large clusters are cut into cells first, see {@link LargeClusters}
 * @param groupProbes groups of cells entered in a search of two levels, 0 for one level, at most {@value #MOST}
 * @param cellProbes  cells searched, 1 … {@value #MOST}
 * @param relative    whether the coarse search goes by relative distances, see {@link SplitMatcher}
 * @param voting      of k up to {@value #MOST}
 */
public record Search(boolean cut, int groupProbes, int cellProbes, boolean relative, Voting voting)
		implements Serializable {

	/** The published method: the nearest cluster, and the nearest sample in it. */
	public static final Search PUBLISHED = new Search(false, 0, 1, false, Voting.NEAREST);
	/** For a map whose split knows no better: the three nearest clusters, three samples weighted. */
	public static final Search USUAL = new Search(false, 0, 3, true, Voting.THREE_WEIGHTED);
	/** Largest number of probes and of voters. */
	public static final int MOST = 100;

	private static final Pattern CODE = Pattern
			.compile("(cut )?(?:groups (\\d{1,3}) )?cells (\\d{1,3}) (plain|relative) k (\\d{1,3})( weighted)?");

	/** @throws IllegalArgumentException for a number out of range */
	public Search {
		if (groupProbes < 0 || groupProbes > MOST || cellProbes < 1 || cellProbes > MOST || voting.k() > MOST) {
			throw new IllegalArgumentException(
					"a search has at most " + MOST + " groups, 1 to " + MOST + " cells and 1 to " + MOST
							+ " voters, not " + groupProbes + ", " + cellProbes + " and " + voting.k());
		}
	}

	/** Whether groups of cells come first. */
	public boolean twoLevels() {
		return groupProbes > 0;
	}

	/** The same with other numbers of cells and voters. */
	public Search with(int cells, Voting others) {
		return new Search(cut, groupProbes, cells, relative, others);
	}

	/**
	 * The cells to be searched: those of a clustering, cut where this search wants it.
	 *
	 * @param seed chooses the first centres of 2-means
	 */
	public Clustering cells(Signals signals, Clustering clustering, long seed, Workers workers) {
		return cut ? LargeClusters.cut(signals, clustering, LargeClusters.usualLimit(signals.size()), seed, workers)
				: clustering;
	}

	/**
	 * A map made ready for this search; noise is left out.
	 *
	 * @param cells of {@link #cells}
	 * @param seed  chooses the first centres of groups
	 */
	public SplitMap map(Signals signals, Clustering cells, long seed, Workers workers) {
		return map(signals, cells, new int[0], seed, workers);
	}

	/**
	 * The same with a pool that every query searches.
	 *
	 * @param pool noise samples of the cells, ascending
	 */
	public SplitMap map(Signals signals, Clustering cells, int[] pool, long seed, Workers workers) {
		SplitMap split = SplitMap.of(signals, cells, Centroids.Kind.MEAN, pool);
		return twoLevels() ? split.inTwoLevels(seed, workers) : split;
	}

	/** Searches a map that was made ready by {@link #map}. */
	public SplitMatcher matcher(SplitMap split) {
		return new SplitMatcher(split, Math.max(1, groupProbes), cellProbes, relative, voting);
	}

	/** As files have it, such as "cut groups 3 cells 4 relative k 5 weighted". */
	public String code() {
		return (cut ? "cut " : "") + (twoLevels() ? "groups " + groupProbes + ' ' : "") + "cells " + cellProbes
				+ (relative ? " relative" : " plain") + " k " + voting.k() + (voting.weighted() ? " weighted" : "");
	}

	/** @throws IllegalArgumentException for a text that {@link #code} never gives */
	public static Search parse(String code) {
		Matcher found = CODE.matcher(code);
		if (!found.matches()) {
			throw new IllegalArgumentException("no search: '" + code + "'; write for instance '" + USUAL.code() + "'");
		}
		return new Search(found.group(1) != null, found.group(2) == null ? 0 : Integer.parseInt(found.group(2)),
				Integer.parseInt(found.group(3)), found.group(4).equals("relative"),
				new Voting(Integer.parseInt(found.group(5)), found.group(6) != null));
	}

	/** For a person. */
	@Override
	public String toString() {
		if (equals(PUBLISHED)) {
			return "nearest cluster, nearest sample in it";
		}
		return (cut ? "large clusters cut, " : "")
				+ (twoLevels() ? "two levels, " + number(groupProbes, "group") + " and " : "")
				+ number(cellProbes, "cell") + ", by " + (relative ? "relative" : "plain") + " distance, " + voting;
	}

	private static String number(int n, String what) {
		return n + " " + what + (n == 1 ? "" : "s");
	}
}
