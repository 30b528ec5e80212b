package org.cairnfield.core.cluster;

/**
 * Which cluster each sample is in. Clusters are 0 … clusters() − 1; DBSCAN and k-means number them by their first
 * core sample, {@link LargeClusters} adds new numbers behind. {@link #NOISE} means none.
 */
public final class Clustering {

	/** The label of a sample in no cluster. */
	public static final int NOISE = -1;

	private final int[] label;
	private final Role[] role;
	private final int clusters;
	private final int noise;

	/**
	 * @param label a cluster or {@link #NOISE} per sample
	 * @param role  per sample, or null where the method knows no roles: labelled samples are then core
	 */
	public Clustering(int[] label, Role[] role) {
		this.label = label.clone();
		this.role = role == null ? null : role.clone();
		int top = -1;
		int none = 0;
		for (int l : label) {
			top = Math.max(top, l);
			none += l == NOISE ? 1 : 0;
		}
		clusters = top + 1;
		noise = none;
	}

	public int size() {
		return label.length;
	}

	/** The number of clusters. */
	public int clusters() {
		return clusters;
	}

	public int label(int sample) {
		return label[sample];
	}

	public boolean isNoise(int sample) {
		return label[sample] == NOISE;
	}

	public Role role(int sample) {
		if (role != null) {
			return role[sample];
		}
		return label[sample] == NOISE ? Role.NOISE : Role.CORE;
	}

	/** The number of noise samples. */
	public int noise() {
		return noise;
	}

	/** Noise samples as a share of all, 0 … 1; 0 where there is no sample. */
	public double noiseShare() {
		return label.length == 0 ? 0 : (double) noise / label.length;
	}

	/** Labels, a copy. */
	public int[] labels() {
		return label.clone();
	}

	/** Samples per cluster. */
	public int[] sizes() {
		int[] sizes = new int[clusters];
		for (int l : label) {
			if (l != NOISE) {
				sizes[l]++;
			}
		}
		return sizes;
	}

	/** Members of each cluster, ascending. */
	public int[][] members() {
		int[] sizes = sizes();
		int[][] members = new int[clusters][];
		for (int c = 0; c < clusters; c++) {
			members[c] = new int[sizes[c]];
		}
		int[] filled = new int[clusters];
		for (int s = 0; s < label.length; s++) {
			if (label[s] != NOISE) {
				members[label[s]][filled[label[s]]++] = s;
			}
		}
		return members;
	}

	/** The same with other labels; a noise sample that gains one becomes a border sample. */
	public Clustering relabelled(int[] labels) {
		Role[] roles = new Role[labels.length];
		for (int s = 0; s < labels.length; s++) {
			roles[s] = labels[s] == NOISE ? Role.NOISE : isNoise(s) ? Role.BORDER : role(s);
		}
		return new Clustering(labels, roles);
	}
}
