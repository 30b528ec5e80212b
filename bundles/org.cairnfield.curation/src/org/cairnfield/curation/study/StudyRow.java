package org.cairnfield.curation.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.cairnfield.core.choose.TrialScore;

/**
 * What a method came to on a map.
 *
 * @param map         name of the map
 * @param method      code of the method
 * @param samples     of the map
 * @param testSamples that it was measured with
 * @param heldOut     whether these are blocks of the map's own positions, for want of a test survey
 * @param setAside    samples that were left out of the map
 * @param budgetShare comparisons that a query may cost, as a share of plain matching
 * @param figures     on the test samples; null where the method was skipped
 * @param how         what it does with the map, for a person; empty where it was skipped
 * @param shape       of the split; null where nothing is split
 * @param tried       on held-out training positions: settings of a method, methods of the choice; best first
 * @param best        this method in its best setting and search, as the choice may take it; null where it may not
 * @param offlineS    seconds that making the map searchable takes with the setting taken
 * @param choiceS     seconds that finding the setting took
 * @param skipped     why there are no figures; null where there are
 * @param limitS      seconds that it might take
 */
public record StudyRow(String map, String method, int samples, int testSamples, boolean heldOut, int setAside,
		double budgetShare, Figures figures,
		String how, Shape shape, List<Tried> tried, Tried best, double offlineS, double choiceS, String skipped,
		double limitS) {

	/**
	 * Figures of a run, and what only a study has.
	 *
	 * @param toPlain        mean error to that of plain matching, and its 95 % interval, paired by test sample
	 * @param toPlain3w      likewise to the three nearest, weighted
	 * @param bytesPerQuery  that a device reads, mean
	 * @param matchTimeRatio processor time of a match to that of plain matching, one thread, in turns
	 */
	public record Figures(double meanErrorM, double meanLowM, double meanHighM, double medianErrorM, double rmseM,
			double p75M, double p90M, double p95M,
			double ce50M, double ce95M, double floorHitRate, double siteHitRate, double toPlain, double toPlainLow,
			double toPlainHigh, double toPlain3w,
			double toPlain3wLow, double toPlain3wHigh, double comparisonsPerQuery, double comparisonShare,
			double bytesPerQuery, double byteShare,
			double matchTimeRatio, double matchTimeToPlain3w) {
	}

	/**
	 * Sizes of the clusters that are searched.
	 *
	 * @param sizes samples of each, largest first
	 * @param noise samples in none
	 */
	public record Shape(List<Integer> sizes, int noise) {
	}

	/**
	 * Something that was tried on held-out training positions.
	 *
	 * @param search how its split was searched, as files have it
	 */
	public record Tried(String method, String setting, String search, double meanErrorM, double comparisonShare,
			double sampleShare) {

		TrialScore score() {
			return new TrialScore(meanErrorM, comparisonShare, sampleShare);
		}
	}

	/** Whether there are figures. */
	public boolean isMeasured() {
		return figures != null;
	}

	/** Whether it costs no more comparisons than a query may; plain matching never does. */
	public boolean isWithinBudget() {
		return isMeasured() && figures.comparisonShare <= budgetShare;
	}

	/** All that is one number or text, by the names that files have for them, in order; null where there is none. Names are a contract. */
	public Map<String, Object> fields() {
		Map<String, Object> fields = new LinkedHashMap<>();
		fields.put("map", map);
		fields.put("method", method);
		fields.put("samples", samples);
		fields.put("testSamples", testSamples);
		fields.put("heldOut", heldOut);
		fields.put("setAside", setAside);
		figure(fields, "meanErrorM", Figures::meanErrorM);
		figure(fields, "meanLowM", Figures::meanLowM);
		figure(fields, "meanHighM", Figures::meanHighM);
		figure(fields, "medianErrorM", Figures::medianErrorM);
		figure(fields, "rmseM", Figures::rmseM);
		figure(fields, "p75M", Figures::p75M);
		figure(fields, "p90M", Figures::p90M);
		figure(fields, "p95M", Figures::p95M);
		figure(fields, "ce50M", Figures::ce50M);
		figure(fields, "ce95M", Figures::ce95M);
		figure(fields, "floorHitRate", Figures::floorHitRate);
		figure(fields, "siteHitRate", Figures::siteHitRate);
		figure(fields, "toPlain", Figures::toPlain);
		figure(fields, "toPlainLow", Figures::toPlainLow);
		figure(fields, "toPlainHigh", Figures::toPlainHigh);
		figure(fields, "toPlain3w", Figures::toPlain3w);
		figure(fields, "toPlain3wLow", Figures::toPlain3wLow);
		figure(fields, "toPlain3wHigh", Figures::toPlain3wHigh);
		figure(fields, "comparisonsPerQuery", Figures::comparisonsPerQuery);
		figure(fields, "comparisonShare", Figures::comparisonShare);
		fields.put("budgetShare", budgetShare);
		fields.put("withinBudget", isMeasured() ? Boolean.valueOf(isWithinBudget()) : null);
		figure(fields, "bytesPerQuery", Figures::bytesPerQuery);
		figure(fields, "byteShare", Figures::byteShare);
		figure(fields, "matchTimeRatio", Figures::matchTimeRatio);
		figure(fields, "matchTimeToPlain3w", Figures::matchTimeToPlain3w);
		figure(fields, "offlineS", f -> offlineS);
		figure(fields, "choiceS", f -> choiceS);
		fields.put("clusters", shape == null ? null : Integer.valueOf(shape.sizes().size()));
		fields.put("noise", shape == null ? null : Integer.valueOf(shape.noise()));
		fields.put("how", how);
		fields.put("skipped", skipped);
		return fields;
	}

	private void figure(Map<String, Object> fields, String name, ToDoubleFunction<Figures> of) {
		fields.put(name, figures == null ? null : Double.valueOf(of.applyAsDouble(figures)));
	}
}
