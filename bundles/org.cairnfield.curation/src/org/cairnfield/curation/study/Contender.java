package org.cairnfield.curation.study;

import java.util.Optional;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/** A method with one setting, which can be applied to the whole map or to what a hold-out leaves of it. */
interface Contender {

	/** What is set, for a person; no two of a method are equal. */
	String setting();

	/**
	 * Makes a map searchable.
	 *
	 * @param shared what other settings have asked of the same map
	 * @return empty where nothing is dense enough to be a cluster
	 */
	Optional<Searchable> build(Signals map, Shared shared, Workers workers);
}
