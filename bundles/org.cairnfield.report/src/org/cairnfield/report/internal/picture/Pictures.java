package org.cairnfield.report.internal.picture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.core.cluster.Kneedle.Knee;
import org.cairnfield.core.series.Curve;
import org.cairnfield.core.series.Series;

/**
 * Draws the pictures of reports. Each answers a complete SVG document as text, to be written as UTF-8; the
 * same numbers give the same text. {@code source} is a sentence or two for the caption, saying what the
 * numbers were computed from, such as "Tide House, spring survey, 611 samples; split of 12 March."
 */
public final class Pictures {

	/** How many clusters have a bar of their own unless said otherwise. */
	public static final int USUAL_CLUSTERS = 20;

	private Pictures() {
	}

	/**
	 * The sorted k-distance curve with its elbow and the chosen ε.
	 *
	 * @param curve   ascending, over the rank: {@link Curve#ascending}; at least one point
	 * @param k       which nearest neighbour
	 * @param elbow   on that curve, x its rank; empty where there is none
	 * @param epsilon chosen, in the curve's unit
	 * @param unit    of the distance, such as "dB"
	 */
	public static String kDistance(Series curve, int k, Optional<Knee> elbow, double epsilon, String unit,
			String source) {
		return new KDistancePicture(curve, k, elbow, epsilon, unit).svg(source);
	}

	/** The {@link #USUAL_CLUSTERS} largest clusters before and after reassignment, and all samples in sum. */
	public static String clusterSizes(ClusterSizes sizes, String source) {
		return clusterSizes(sizes, USUAL_CLUSTERS, source);
	}

	/**
	 * Cluster sizes before and after reassignment.
	 *
	 * @param most how many of the largest clusters have bars of their own; the others are gathered in one
	 */
	public static String clusterSizes(ClusterSizes sizes, int most, String source) {
		return new ClusterSizesPicture(sizes, most).svg(source);
	}

	/**
	 * Errors of older maps over time.
	 *
	 * @param curves x in months, y in metres; at least one point
	 * @param start  day from which months are counted
	 */
	public static String ageing(List<Series> curves, String start, String source) {
		return new AgeingPicture(curves, start).svg(source);
	}

	/**
	 * Cumulative curves of position errors, at least one; with more than seven, colours repeat.
	 */
	public static String errorDistribution(List<ErrorCurve> curves, String source) {
		return new ErrorDistributionPicture(curves).svg(source);
	}

	/** Methods by match time and error; at least one. */
	public static String methods(List<MethodPoints> methods, String source) {
		return new MethodPicture(methods).svg(source);
	}

	/** Sizes of clusters of several splits of each map, by name of the map; at least one map. */
	public static String splitShapes(Map<String, List<SplitShape>> maps, String source) {
		return new SplitShapesPicture(maps).svg(source);
	}
}
