package org.cairnfield.curation.measure;

import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.exchange.pack.DevicePack;

/**
 * What a device pays for a position: the bytes of its pack that it reads to answer one query, see
 * {@link DevicePack#queryBytes}. Plain matching has no centroids and reads every sample. Ways that no pack holds are counted as
 * if one did. The list of access points is left out: it is read for each level of a scan, and the same in all ways.
 */
public final class PackCost {

	private PackCost() {
	}

	/** Of plain matching. */
	public static double plain(RadioMap map) {
		return IntStream.range(0, map.size()).mapToLong(s -> DevicePack.sampleBytes(map, s)).sum();
	}

	/**
	 * Of a split.
	 *
	 * @param search      that the split was made ready for
	 * @param comparisons fingerprints compared a query, centroids included
	 * @return bytes a query; 0 where there is no cluster
	 */
	public static double split(SplitMap split, Search search, double comparisons) {
		return DevicePack.queryBytes(split, search, comparisons);
	}
}
