package org.cairnfield.curation.study;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.SearchTrials;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.PackCost;

/**
 * A map that is split.
 *
 * @param signals of the map, or of what the method leaves of its readings
 * @param cells   cluster of each sample; noise is left out of the search
 * @param found   the same before noise was given back
 * @param heard   leaves of a query what the method looks at
 * @param note    for a person
 */
record SplitSearchable(Signals signals, Clustering cells, Clustering found, UnaryOperator<RadioMap> heard, String note)
		implements Searchable {

	/** All readings are looked at. */
	SplitSearchable(Signals signals, Clustering cells, Clustering found) {
		this(signals, cells, found, UnaryOperator.identity(), "");
	}

	@Override
	public Map<Search, TrialScore> tried(HeldOut heldOut, int samples, long seed, Workers workers) {
		HeldOut asked = signals == heldOut.signals() ? heldOut : heldOut.with(signals, heard.apply(heldOut.asked()));
		Map<Search, TrialScore> scores = new LinkedHashMap<>();
		SplitMap published = split(Search.PUBLISHED, seed, workers);
		scores.put(Search.PUBLISHED, asked.score(Search.PUBLISHED.matcher(published), published.cells(), workers));
		scores.putAll(SearchTrials.of(asked, signals, cells, samples, seed, workers));
		return scores;
	}

	private SplitMap split(Search search, long seed, Workers workers) {
		return search.map(signals, search.cells(signals, cells, seed, workers), seed, workers);
	}

	@Override
	public Searched ready(Search search, long seed, Workers workers) {
		return new Ready(split(search, seed, workers), search, heard);
	}

	@Override
	public StudyRow.Shape shape() {
		return shape(cells);
	}

	static StudyRow.Shape shape(Clustering cells) {
		List<Integer> sizes = IntStream.of(cells.sizes()).boxed().sorted(Comparator.reverseOrder()).toList();
		return new StudyRow.Shape(sizes, cells.noise());
	}

	/** A split and its search. */
	record Ready(SplitMap split, Search search, UnaryOperator<RadioMap> heard)
			implements Searched, StudyMeasure.Matching {

		@Override
		public Matcher matcher() {
			return search.matcher(split);
		}

		@Override
		public RadioMap asked(RadioMap test) {
			return heard.apply(test);
		}

		@Override
		public double bytes(double comparisons) {
			return PackCost.split(split, search, comparisons);
		}
	}
}
