package org.cairnfield.model.values;

import java.util.Arrays;
import java.util.Objects;

import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;

/**
 * Cluster and role of each sample of a split, in columns, sorted by survey, then by sample. Immutable. About 20 bytes a
 * sample beside its id, which is shared with the survey's table where it came from there.
 */
public final class Labels {

	/** What {@link #cluster} answers for noise. */
	public static final int NOISE = Clustering.NOISE;
	/** Nothing labelled. */
	public static final Labels NONE = new Labels(new String[0], new String[0], new int[0], new byte[0]);

	private static final Role[] ROLES = Role.values();

	private final String[] surveys;
	private final String[] samples;
	private final int[] clusters;
	private final byte[] roles;

	/** Takes the arrays, which are sorted, as its own. */
	Labels(String[] surveys, String[] samples, int[] clusters, byte[] roles) {
		this.surveys = surveys;
		this.samples = samples;
		this.clusters = clusters;
		this.roles = roles;
	}

	/** Labels to be filled. */
	public static LabelsBuilder builder() {
		return new LabelsBuilder();
	}

	/** How many samples are labelled. */
	public int size() {
		return clusters.length;
	}

	/** Id of the survey of a row. */
	public String survey(int row) {
		return surveys[row];
	}

	/** Id of the sample of a row, within its survey. */
	public String sample(int row) {
		return samples[row];
	}

	/** The sample of a row. */
	public SampleKey key(int row) {
		return new SampleKey(surveys[row], samples[row]);
	}

	/** Number of the cluster, or {@link #NOISE}. */
	public int cluster(int row) {
		return clusters[row];
	}

	/** What the sample is to DBSCAN. */
	public Role role(int row) {
		return ROLES[roles[row]];
	}

	/** The row of a sample, or −1 where it has no label. */
	public int row(SampleKey key) {
		int low = 0;
		int high = size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int order = surveys[middle].compareTo(key.survey());
			order = order != 0 ? order : samples[middle].compareTo(key.sample());
			if (order == 0) {
				return middle;
			} else if (order < 0) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return -1;
	}

	/** Samples of each cluster, core and border, by its number. */
	public int[] clusterSizes() {
		int[] sizes = new int[Arrays.stream(clusters).max().orElse(NOISE) + 1];
		for (int cluster : clusters) {
			if (cluster != NOISE) {
				sizes[cluster]++;
			}
		}
		return sizes;
	}

	/** How many samples are noise. */
	public int noise() {
		return (int) Arrays.stream(clusters).filter(c -> c == NOISE).count();
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Labels l && Arrays.equals(surveys, l.surveys) && Arrays.equals(samples, l.samples)
				&& Arrays.equals(clusters, l.clusters) && Arrays.equals(roles, l.roles);
	}

	@Override
	public int hashCode() {
		return Objects.hash(size(), Arrays.hashCode(samples), Arrays.hashCode(clusters));
	}

	/** The number of samples, clusters, and samples that are noise. */
	@Override
	public String toString() {
		return size() + " samples, " + clusterSizes().length + " clusters, " + noise() + " noise";
	}
}
