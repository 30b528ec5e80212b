package org.cairnfield.curation.split;

/**
 * One pair of a sweep.
 *
 * @param noiseShare      0 … 1
 * @param largestShare    samples of the largest cluster as a share of all, 0 … 1
 * @param meanErrorMetres of held-out training samples; NaN where errors were not asked for, or nothing is clustered
 * @param comparisonShare fingerprints compared per query as a share of plain matching; NaN likewise
 */
public record SweepCell(double epsilon, int minPts, int clusters, double noiseShare, double largestShare,
		double meanErrorMetres, double comparisonShare) {
}
