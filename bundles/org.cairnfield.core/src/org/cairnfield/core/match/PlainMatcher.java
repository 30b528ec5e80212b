package org.cairnfield.core.match;

import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;

/** Compares a fingerprint with every sample of the map. */
public final class PlainMatcher implements Matcher {

	private final Neighbours neighbours;
	private final Voting voting;

	public PlainMatcher(Neighbours neighbours, Voting voting) {
		this.neighbours = neighbours;
		this.voting = voting;
	}

	@Override
	public Signals signals() {
		return neighbours.signals();
	}

	@Override
	public Voting voting() {
		return voting;
	}

	@Override
	public Session session() {
		Neighbours.Search search = neighbours.search();
		return new Session() {
			@Override
			public Nearest nearest(SignalRows queries, int query) {
				return search.of(queries, query, voting.k());
			}

			@Override
			public int comparisons() {
				return signals().size();
			}
		};
	}
}
