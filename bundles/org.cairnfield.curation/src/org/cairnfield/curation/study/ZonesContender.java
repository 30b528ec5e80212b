package org.cairnfield.curation.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cairnfield.core.choose.HeldOut;
import org.cairnfield.core.choose.TrialScore;
import org.cairnfield.core.cluster.OverlappingZones;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.task.Workers;

/**
 * k-means whose clusters are widened to zones that overlap.
 *
 * @param means of the clusters
 * @param tau   how much farther than its nearest centre another one may be from a sample whose zone has it
 */
record ZonesContender(KMeansContender means, double tau) implements Contender {

	private static final double[] FACTORS = { 0.5, 1, 2 };
	private static final double[] TAUS = { 0.05, 0.1, 0.2 };

	static List<Contender> all(long seed) {
		List<Contender> all = new ArrayList<>();
		for (double factor : FACTORS) {
			for (double tau : TAUS) {
				all.add(new ZonesContender(new KMeansContender(factor, seed), tau));
			}
		}
		return all;
	}

	@Override
	public String setting() {
		return means.setting() + String.format(Locale.ROOT, ", τ = %.2f", tau);
	}

	@Override
	public Optional<Searchable> build(Signals map, Shared shared, Workers workers) {
		return Optional.of(new Zones(map,
				OverlappingZones.of(KMeansContender.points(map), means.cells(map, shared, workers), tau, workers)));
	}

	/** A map in zones. A query searches one of them; how many vote can be chosen. */
	private record Zones(Signals signals, OverlappingZones zones) implements Searchable {

		private static final List<Search> SEARCHES = List.of(Search.PUBLISHED,
				Search.PUBLISHED.with(1, Voting.THREE_WEIGHTED),
				Search.PUBLISHED.with(1, new Voting(5, true)), new Search(false, 0, 1, true, Voting.THREE_WEIGHTED),
				new Search(false, 0, 1, true, new Voting(5, true)));

		@Override
		public Map<Search, TrialScore> tried(HeldOut heldOut, int samples, long seed, Workers workers) {
			SplitMap split = SplitMap.of(signals, zones);
			Map<Search, TrialScore> scores = new LinkedHashMap<>();
			SEARCHES.forEach(
					search -> scores.put(search, heldOut.score(search.matcher(split), split.cells(), workers)));
			return scores;
		}

		@Override
		public Searched ready(Search search, long seed, Workers workers) {
			return new SplitSearchable.Ready(SplitMap.of(signals, zones), search, UnaryOperator.identity());
		}

		@Override
		public StudyRow.Shape shape() {
			return SplitSearchable.shape(zones.clustering());
		}

		@Override
		public String note() {
			return String.format(Locale.ROOT, Messages.ZonesContender_aSampleIsInZones, zones.zonesPerSample());
		}
	}
}
