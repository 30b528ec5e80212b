package org.cairnfield.curation.study;

import java.util.Map;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.RegressedPositions;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.measure.MatchTimes;
import org.cairnfield.curation.measure.TestRun;

/** Positions by regression: nothing is split, and every query is compared with all landmarks. */
record RegressedSearchable(Signals signals, RegressedPositions positions, int components) implements Searchable {

	/** Of a number as devices compute with it. */
	private static final int FLOAT = 4;

	@Override
	public Map<Search, TrialScore> tried(HeldOut heldOut, int samples, long seed, Workers workers) {
		return Map.of(Search.PUBLISHED, heldOut.score(positions.estimates(signals.align(heldOut.asked()), workers), 0));
	}

	@Override
	public Searched ready(Search search, long seed, Workers workers) {
		return new Ready(signals, positions, components);
	}

	@Override
	public StudyRow.Shape shape() {
		return null;
	}

	@Override
	public boolean isForDevices() {
		return false;
	}

	@Override
	public String note() {
		return Words.bind(Messages.RegressedSearchable_landmarksNothingIsSplitAnd, positions.landmarks());
	}

	/** What is asked. */
	private record Ready(Signals signals, RegressedPositions positions, int components) implements Searched {

		@Override
		public TestRun run(RadioMap test, Workers workers) {
			return TestRun.of(positions.estimates(signals.align(test), workers), signals.map(), test);
		}

		@Override
		public MatchTimes.Subject timed(RadioMap test) {
			SignalRows some = signals
					.align(test.view(IntStream.range(0, Math.min(MatchTimes.MOST_QUERIES, test.size())).toArray()));
			return queries -> positions.estimates(some, Workers.inline());
		}

		/** Coordinates of the landmarks, their weights for x, y and each floor, and the directions of what a sample hears on average. No pack has them. */
		@Override
		public double bytes(double comparisons) {
			RadioMap map = signals.map();
			long floors = IntStream.range(0, map.size()).mapToObj(s -> map.site(s) + " " + map.floor(s)).distinct()
					.count();
			return FLOAT
					* (comparisons * (components + 2 + floors) + components * (double) map.readingCount() / map.size());
		}
	}
}
