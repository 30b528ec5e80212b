package org.cairnfield.curation.split;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;

/** What DBSCAN makes of a map with one ε and minPts. */
public record Trial(double epsilon, int minPts, Clustering clustering) {

	public int clusters() {
		return clustering.clusters();
	}

	/** Number of the cluster of a sample of the study's map, −1 for noise. */
	public int cluster(int sample) {
		return clustering.label(sample);
	}

	/** "core", "border" or "noise". */
	public String role(int sample) {
		return clustering.role(sample).toString();
	}

	/** Samples that are noise. */
	public int noise() {
		return clustering.noise();
	}

	/** Likewise as a share of all, 0 … 1. */
	public double noiseShare() {
		return clustering.noiseShare();
	}

	/** Samples of each cluster, by its number. */
	public int[] sizes() {
		return clustering.sizes();
	}

	/** Samples of the largest cluster as a share of all, 0 … 1: near 1 the split splits nothing. */
	public double largestShare() {
		return clustering.size() == 0 ? 0 : (double) Arrays.stream(sizes()).max().orElse(0) / clustering.size();
	}
}
