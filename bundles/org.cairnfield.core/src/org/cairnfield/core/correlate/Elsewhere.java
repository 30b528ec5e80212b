package org.cairnfield.core.correlate;

import java.io.Serializable;

/**
 * Samples out of earshot of those at hand, in sums: all that correlations have to know of them.
 *
 * @param samples how many
 * @param sum     Σ magnitude
 * @param squares Σ magnitude²
 */
public record Elsewhere(long samples, double sum, double squares) implements Serializable {

	/** Where the samples at hand are the whole map. */
	public static final Elsewhere NONE = new Elsewhere(0, 0, 0);

	/** What is left without others of these samples. */
	public Elsewhere without(Elsewhere others) {
		return new Elsewhere(samples - others.samples, sum - others.sum, squares - others.squares);
	}
}
