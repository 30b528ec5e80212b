package org.cairnfield.core.cluster;

import java.util.Arrays;
import org.cairnfield.core.task.Workers;

/**
 * The clusters of k-means, widened to zones that overlap. A sample is in the zone of its own cluster and of every cluster whose centre
 * is at most (1 + τ) times as far as the nearest one. A query then searches only the zone of its nearest centre, yet finds neighbours
 * across the border. Common practice in fingerprint matching; no source.
 *
 * <p>τ = 0 gives the clusters themselves, provided that k-means has converged and no sample is equally near to two centres. An
 * infinite τ puts every sample into every zone, which amounts to plain matching. With any finite τ, a sample that lies exactly on a
 * centre stays in that zone alone.
 *
 * <p>Cost: n·k distances; memory grows with {@link #zonesPerSample}.
 */
public final class OverlappingZones {

	private final Clustering clustering;
	private final double tau;
	private final int[][] members;

	private OverlappingZones(Clustering clustering, double tau, int[][] members) {
		this.clustering = clustering;
		this.tau = tau;
		this.members = members;
	}

	/**
	 * @param clustering of the points; the means of its clusters are the centres
	 * @param tau        from 0 to positive infinity
	 */
	public static OverlappingZones of(KMeans.Points points, Clustering clustering, double tau, Workers workers) {
		if (!(tau >= 0)) {
			throw new IllegalArgumentException("tau must be at least 0: " + tau);
		}
		int n = points.size();
		int[][] zonesOf = new int[n][];
		KMeans.Centres centres = points.means(clustering.members());
		workers.progress().begin("zones", n);
		workers.forRanges(n, () -> {
			double[] distances = new double[centres.size()];
			int[] zones = new int[centres.size()];
			return (from, to) -> {
				for (int p = from; p < to; p++) {
					centres.distances(p, distances);
					zonesOf[p] = Arrays.copyOf(zones, within(distances, tau, clustering.label(p), zones));
				}
			};
		});
		return new OverlappingZones(clustering, tau, members(zonesOf, clustering.clusters()));
	}

	/** Writes the zones of a point, ascending; returns their number. */
	private static int within(double[] distances, double tau, int own, int[] zones) {
		double least = Arrays.stream(distances).min().orElse(0);
		double reach = Double.isInfinite(tau) ? tau : (1 + tau) * least;
		int count = 0;
		for (int c = 0; c < distances.length; c++) {
			if (c == own || distances[c] <= reach) {
				zones[count++] = c;
			}
		}
		return count;
	}

	private static int[][] members(int[][] zonesOf, int zones) {
		int[] sizes = new int[zones];
		for (int[] of : zonesOf) {
			for (int z : of) {
				sizes[z]++;
			}
		}
		int[][] members = new int[zones][];
		Arrays.setAll(members, z -> new int[sizes[z]]);
		int[] filled = new int[zones];
		for (int p = 0; p < zonesOf.length; p++) {
			for (int z : zonesOf[p]) {
				members[z][filled[z]++] = p;
			}
		}
		return members;
	}

	/** The clusters that were widened. */
	public Clustering clustering() {
		return clustering;
	}

	/** By how much a centre may be farther than the nearest one, as a share. */
	public double tau() {
		return tau;
	}

	/** Members of each zone, ascending, a copy; zones are numbered as the clusters are. */
	public int[][] members() {
		return Arrays.stream(members).map(int[]::clone).toArray(int[][]::new);
	}

	/** In how many zones a sample is on average, at least 1; NaN where there is no sample. */
	public double zonesPerSample() {
		return Arrays.stream(members).mapToLong(m -> m.length).sum() / (double) clustering.size();
	}
}
