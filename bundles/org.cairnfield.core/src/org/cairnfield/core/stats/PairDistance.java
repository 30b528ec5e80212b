package org.cairnfield.core.stats;

/** A distance between two samples, by index: symmetric, 0 to itself, never negative. */
@FunctionalInterface
public interface PairDistance {

	/** Safe to call from several threads. */
	double between(int a, int b);
}
