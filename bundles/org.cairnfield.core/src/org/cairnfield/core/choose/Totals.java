package org.cairnfield.core.choose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cairnfield.core.choose.AutomaticChoice.Tried;
import org.cairnfield.core.match.Search;

/** What each combination came to, mean over the hold-outs in which it was tried, weighted by the samples that these stand for. */
final class Totals {

	/**
	 * Of one combination in one hold-out.
	 *
	 * @param meanErrorMetres of the samples asked about
	 * @param comparisonShare fingerprints compared, as a share of the hold-out's map
	 * @param cells           centroids of cells and groups
	 * @param size            samples of the hold-out's map
	 */
	record Outcome(double meanErrorMetres, double comparisonShare, CellCount cells, int size) {

		/** Samples compared, as a share of the map: what is left without centroids. */
		private double samples(Search search, CellCount counted) {
			return comparisonShare - counted.compared(search) / size;
		}

		/** As if groups were of one size. */
		TrialScore score(Search search) {
			return new TrialScore(meanErrorMetres, comparisonShare, samples(search, cells.even()));
		}
	}

	private static final class Sums {
		private double weight;
		private double error;
		private double comparisons;
		private double samples;
		private double samplesOfWhole;
		private double cells;
		private double unevenness;
	}

	private final int size;
	private final Map<Combination, Sums> sums = new LinkedHashMap<>();

	/** @param size samples of the whole map */
	Totals(int size) {
		this.size = size;
	}

	boolean isEmpty() {
		return sums.isEmpty();
	}

	/**
	 * Takes the outcomes of one hold-out.
	 *
	 * @param partSize samples of the part of the map that the hold-out is of
	 * @param holdOuts of that part in all
	 */
	void add(Map<Combination, Outcome> outcomes, int partSize, int holdOuts) {
		double part = (double) partSize / size;
		double weight = part / holdOuts;
		outcomes.forEach((combination, outcome) -> {
			Sums of = sums.computeIfAbsent(combination, c -> new Sums());
			of.weight += weight;
			of.error += weight * outcome.meanErrorMetres;
			of.comparisons += weight * outcome.comparisonShare;
			of.samples += weight * outcome.samples(combination.search(), outcome.cells.even());
			of.samplesOfWhole += weight * part * outcome.samples(combination.search(), outcome.cells);
			of.cells += weight * outcome.cells.cells() / outcome.size;
			of.unevenness += weight * outcome.cells.unevenness();
		});
	}

	/** Of a map that was judged as a whole. */
	List<Tried> measured(int minPts) {
		return sums.entrySet().stream()
				.map(e -> new Tried(e.getKey().epsilon(), minPts, e.getKey().search(),
						e.getValue().error / e.getValue().weight,
						e.getValue().comparisons / e.getValue().weight, e.getValue().samples / e.getValue().weight))
				.toList();
	}

	/**
	 * Of a map that was judged in parts: a query compares samples of one part, as measured, and centroids of all, as reckoned
	 * from the cells of those judged.
	 */
	List<Tried> reckoned(int minPts) {
		return sums.entrySet().stream().map(e -> reckoned(e.getKey(), e.getValue(), minPts)).toList();
	}

	private Tried reckoned(Combination combination, Sums of, int minPts) {
		double cells = of.cells / of.weight * size;
		Search search = combination.search();
		double samples = of.samplesOfWhole / of.weight;
		CellCount whole = new CellCount(cells, search.twoLevels() ? Math.round(Math.sqrt(cells)) : 0,
				of.unevenness / of.weight);
		return new Tried(combination.epsilon(), minPts, search, of.error / of.weight,
				samples + whole.compared(search) / size, samples);
	}
}
