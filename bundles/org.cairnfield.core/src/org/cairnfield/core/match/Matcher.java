package org.cairnfield.core.match;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** A way to find the samples of a map that a fingerprint resembles most. */
public interface Matcher {

	/** The map that is searched; queries are aligned to it. */
	Signals signals();

	/** How a position follows from the samples found. */
	Voting voting();

	/** Makes a search with scratch space of its own; one per thread. */
	Session session();

	/** One thread's search. */
	interface Session {
		/** The nearest found, for the query of {@link Signals#align}; valid until the next call. */
		Nearest nearest(SignalRows queries, int query);

		/** Fingerprints compared for the last query: centroids and samples. */
		int comparisons();
	}
}
