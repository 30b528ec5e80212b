package org.cairnfield.exchange.pack;

import java.util.stream.IntStream;

import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.text.Words;
import org.cairnfield.exchange.export.Pseudonyms;

/**
 * A split map made ready for a device, and the workbench's matcher over the same numbers. The same map, split and settings
 * give the same bytes.
 */
public final class DevicePack {

	/** Of one unit of level that values of centroids count. */
	public static final int CENTROID_PARTS = 16;

	private final PackedMap packed;
	private final SplitMap split;
	private final PackSettings settings;

	private DevicePack(PackedMap packed, SplitMap split, PackSettings settings) {
		this.packed = packed;
		this.split = split;
		this.settings = settings;
	}

	/**
	 * The same cells, pool and groups on the map as a pack holds it. A device compares positive levels by city-block
	 * distance, whatever the split was made with.
	 *
	 * @param split    of at least one sample, made ready for the search of the settings by {@link Search#map}
	 * @throws PackLimitException       for a map that a pack cannot hold
	 * @throws IllegalArgumentException for a map of no sample, and for one in two levels that is to be searched in one
	 */
	public static DevicePack of(SplitMap split, PackSettings settings) {
		RadioMap map = split.signals().map();
		if (map.size() == 0) {
			throw new IllegalArgumentException("no sample to pack");
		}
		if (split.groups() > 0 && !settings.search().twoLevels()) {
			throw new IllegalArgumentException("the map has groups of cells, which a search in one level does not use: "
					+ settings.search());
		}
		for (int s = 0; s < map.size(); s++) {
			if (map.floor(s) != (byte) map.floor(s)) {
				throw new PackLimitException(Words.bind(Messages.DevicePack_aDevicePackHoldsFloors, map.floor(s)));
			}
		}
		PackedMap packed = PackedMap.of(split, settings.levelStepDb());
		return new DevicePack(packed, split.rounded(Signals.of(packed.map()), CENTROID_PARTS), settings);
	}

	/** Positions and levels as the pack has them. */
	public PackedMap packed() {
		return packed;
	}

	/** The workbench's search of the same samples by the same rules; queries are {@link PackedMap#queries}. */
	public SplitMatcher matcher() {
		return settings.search().matcher(split);
	}

	/** The clusters that are in the pack, and their samples. */
	public SplitMap split() {
		return split;
	}

	/** Samples in the pack. */
	public int samples() {
		return split.samples();
	}

	/** Bytes of a sample in a pack: its place, and three for each access point heard. */
	public static int sampleBytes(RadioMap map, int sample) {
		return 12 + 3 * map.heard(sample);
	}

	/** Bytes of all centroids in a pack. */
	public static long centroidBytes(Centroids centroids) {
		return IntStream.range(0, centroids.size()).mapToLong(c -> centroidBytes(centroids, c)).sum();
	}

	private static long centroidBytes(Centroids centroids, int c) {
		return 6 + 4L * (centroids.end(c) - centroids.start(c));
	}

	/** Bytes of a group's list of cells. */
	static long listBytes(SplitMap split, int group) {
		return 2 + 2L * split.cellsOf(group).length;
	}

	/**
	 * Bytes of a pack that a device reads for one query, on average: centroids, and the samples compared, each of the mean
	 * length. In one level it reads all centroids. In two levels it reads those of all groups and of the cells in the groups
	 * that it enters; these are reckoned as if queries were spread like the samples. The list of access points is left out.
	 *
	 * @param search      that the split was made ready for
	 * @param comparisons fingerprints compared a query, centroids included
	 * @return 0 where there is no sample
	 */
	public static double queryBytes(SplitMap split, Search search, double comparisons) {
		RadioMap map = split.signals().map();
		double sample = IntStream.rangeClosed(0, split.cells()).flatMap(cell -> IntStream.of(split.members(cell)))
				.map(s -> sampleBytes(map, s)).average().orElse(0);
		double centroids = split.cells();
		double bytes = centroidBytes(split.centroids());
		if (split.groups() > 0) {
			centroids = split.groups();
			bytes = centroidBytes(split.groupCentroids());
			double inCells = IntStream.range(0, split.cells()).map(cell -> split.members(cell).length).sum();
			for (int g = 0; g < split.groups(); g++) {
				int[] cells = split.cellsOf(g);
				double entered = IntStream.of(cells).map(cell -> split.members(cell).length).sum() / inCells
						* Math.min(search.groupProbes(), split.groups());
				centroids += entered * cells.length;
				bytes += entered * (listBytes(split, g)
						+ IntStream.of(cells).mapToLong(c -> centroidBytes(split.centroids(), c)).sum());
			}
		}
		return Math.max(0, comparisons - centroids) * sample + bytes;
	}

	/**
	 * The bytes of the pack.
	 *
	 * @param pseudonyms in place of addresses, or null
	 * @param source     SHA-256 of the content that it was made from, in hexadecimal digits; may be empty
	 */
	public byte[] bytes(Pseudonyms pseudonyms, String source) {
		return new PackWriter(packed, split, settings.search(), pseudonyms).write(source);
	}
}
