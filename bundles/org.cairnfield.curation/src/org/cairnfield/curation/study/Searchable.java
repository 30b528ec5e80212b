package org.cairnfield.curation.study;

import java.util.Map;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;

/** What a method makes of a map. */
interface Searchable {

	/**
	 * Tries the published search, and all others that a device may use, on the questions of a hold-out.
	 *
	 * @param heldOut whose map it was made of
	 * @param samples of the whole map
	 */
	Map<Search, TrialScore> tried(HeldOut heldOut, int samples, long seed, Workers workers);

	/** Made ready for one of these. */
	Searched ready(Search search, long seed, Workers workers);

	/** Sizes of the clusters; null where nothing is split. */
	StudyRow.Shape shape();

	/** Whether a device pack holds it, so that a release may have it. */
	default boolean isForDevices() {
		return true;
	}

	/** What a person should know of it; empty for nothing. */
	default String note() {
		return "";
	}

	/** A map that is ready to be searched. */
	interface Searched extends StudyMeasure.Subject {

		/** Bytes that a device reads a query, mean. @param comparisons a query, mean */
		double bytes(double comparisons);
	}
}
