package org.cairnfield.core.correlate;

import java.io.Serializable;

/**
 * Samples in sums: all that correlations have to know of those out of earshot.
 *
 * @param samples how many
 * @param sum     Σ magnitude
 * @param squares Σ magnitude²
 */
public record SampleSums(long samples, double sum, double squares) implements Serializable {

	/** No samples, such as out of earshot of a whole map. */
	public static final SampleSums NONE = new SampleSums(0, 0, 0);

	/** What is left without others of these samples. */
	public SampleSums without(SampleSums others) {
		return new SampleSums(samples - others.samples, sum - others.sum, squares - others.squares);
	}
}
