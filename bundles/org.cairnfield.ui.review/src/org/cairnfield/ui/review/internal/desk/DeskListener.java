package org.cairnfield.ui.review.internal.desk;

import org.cairnfield.curation.review.ReviewListener;

/** Hears what happens on the desk of the reviewer. All calls come on the user interface thread. */
public interface DeskListener extends ReviewListener {

	/** The person wants to say why. */
	default void reasonAsked() {
	}
}
