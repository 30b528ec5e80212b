package org.cairnfield.core.cluster;

import org.cairnfield.core.distance.Signals;

/** What is clustered by density: numbered points, each able to visit those near it. */
public interface PointSet {

	int size();

	/** Makes a search with scratch space of its own; one per thread. */
	Surroundings surroundings();

	/** One thread's search. */
	interface Surroundings {
		/** Visits every other point within {@code reach} (closed), which the visitor may shrink as it goes. */
		void visit(int point, double reach, Visitor visitor);
	}

	/** Receives a point nearby. */
	@FunctionalInterface
	interface Visitor {
		/** @return the reach within which more are wanted */
		double visit(int other, double distance);
	}

	/** The samples of a map, in signal space. */
	static PointSet of(Signals signals) {
		return new SignalPoints(signals);
	}
}
