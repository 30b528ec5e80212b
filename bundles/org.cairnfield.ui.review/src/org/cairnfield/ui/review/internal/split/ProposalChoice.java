package org.cairnfield.ui.review.internal.split;

/**
 * When proposals are made.
 *
 * @param gate      noise share from which on they are made, 0 … 1
 * @param threshold smallest r
 */
record ProposalChoice(double gate, double threshold) {

	/** As published: a tenth of noise, r from 0.1. */
	static final ProposalChoice USUAL = new ProposalChoice(0.1, 0.1);
}
