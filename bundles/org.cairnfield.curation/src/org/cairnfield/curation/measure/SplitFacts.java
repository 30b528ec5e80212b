package org.cairnfield.curation.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;

/**
 * What a split comes to.
 *
 * @param samples             of the map
 * @param largest             samples of the largest cluster
 * @param comparisonsPerQuery fingerprints compared, centroids included, mean; NaN where there is no cluster
 * @param comparisonShare     of those that plain matching compares
 * @param meanErrorMetres     with noise left out; NaN where no test survey tells
 * @param plainErrorMetres    of plain matching on the same test samples; NaN likewise
 * @param basis               what the last four are computed from, for a person
 */
public record SplitFacts(int samples, int clusters, int noise, double noiseShare, int largest, double comparisonsPerQuery,
		double comparisonShare, double meanErrorMetres, double plainErrorMetres, String basis) {

	private static final int MOST_QUERIES = 2000;

	/** Of a trial that is not kept yet. */
	public static SplitFacts of(SplitStudy study, Trial trial, RadioMap test, Workers workers) {
		return of(study.signals(), trial.clustering(), test, workers);
	}

	/** Of a kept split. */
	public static SplitFacts of(SplitOnMap split, RadioMap test, Workers workers) {
		return of(split.signals(), split.clustering(), test, workers);
	}

	private static SplitFacts of(Signals signals, Clustering clustering, RadioMap test, Workers workers) {
		boolean tested = test.size() > 0;
		RadioMap asked = tested ? test : some(signals.map());
		String basis = tested ? test.size() + " test samples"
				: asked.size() + " samples of the map itself, for want of a test survey; they tell the cost, not the error";
		int largest = Arrays.stream(clustering.sizes()).max().orElse(0);
		if (clustering.clusters() == 0) {
			return new SplitFacts(signals.size(), 0, clustering.noise(), clustering.noiseShare(), largest, Double.NaN, Double.NaN,
					Double.NaN, Double.NaN, basis);
		}
		SignalRows queries = signals.align(asked);
		TestRun found = TestRun.of(TestRun.split(TestRun.clusters(signals, clustering)), queries, asked, workers);
		double plain = tested ? mean(TestRun.of(TestRun.plain(new Neighbours(signals)), queries, asked, workers))
				: Double.NaN;
		return new SplitFacts(signals.size(), clustering.clusters(), clustering.noise(), clustering.noiseShare(), largest,
				found.comparisons(), found.comparisons() / signals.size(), tested ? mean(found) : Double.NaN, plain,
				basis);
	}

	private static RadioMap some(RadioMap map) {
		int step = Math.max(1, (map.size() + MOST_QUERIES - 1) / MOST_QUERIES);
		return map.view(IntStream.range(0, map.size()).filter(s -> s % step == 0).toArray());
	}

	private static double mean(TestRun run) {
		return Arrays.stream(run.errors().errorsMetres()).average().orElse(Double.NaN);
	}

	/** Mean error to that of plain matching; NaN where no test survey tells. */
	public double errorRatio() {
		return meanErrorMetres / plainErrorMetres;
	}

	/** One line, for a person. */
	@Override
	public String toString() {
		return String.format(Locale.ROOT, "%d clusters, %.1f %% noise, %.1f fingerprints compared per query (%.1f %%)%s", clusters,
				100 * noiseShare, comparisonsPerQuery, 100 * comparisonShare,
				Double.isNaN(meanErrorMetres) ? "" : String.format(Locale.ROOT, ", mean error %.3f m to %.3f m plain", meanErrorMetres,
						plainErrorMetres));
	}
}
