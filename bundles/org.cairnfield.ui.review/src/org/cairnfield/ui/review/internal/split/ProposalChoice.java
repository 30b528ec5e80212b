package org.cairnfield.ui.review.internal.split;

import org.cairnfield.ui.review.internal.desk.ReviewNumber;
import org.cairnfield.ui.review.internal.desk.ReviewSettings;

/**
 * When proposals are made.
 *
 * @param gate      noise share from which on they are made, 0 … 1
 * @param threshold smallest r
 */
record ProposalChoice(double gate, double threshold) {

	/** As the preferences have it now. */
	static ProposalChoice set() {
		return new ProposalChoice(ReviewSettings.number(ReviewNumber.GATE),
				ReviewSettings.number(ReviewNumber.THRESHOLD));
	}
}
