package org.cairnfield.curation.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.PositionBlocks;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitStudy;
import org.cairnfield.curation.split.Trial;

/**
 * What a split comes to, searched as published: the nearest cluster, and the nearest sample in it.
 *
 * @param samples             of the map
 * @param largest             samples of the largest cluster
 * @param comparisonsPerQuery fingerprints compared, centroids included, mean; NaN where there is no cluster
 * @param comparisonShare     of those that plain matching compares
 * @param meanErrorMetres     on training positions that were held out, noise left out of the search; NaN where there are none
 * @param plainErrorMetres    of plain matching likewise
 * @param basis               what the errors are computed from, for a person
 */
public record SplitFacts(int samples, int clusters, int noise, double noiseShare, int largest,
		double comparisonsPerQuery,
		double comparisonShare, double meanErrorMetres, double plainErrorMetres, String basis) {

	private static final int MOST_QUERIES = 2000;
	private static final double HELD_OUT = 0.2;
	private static final long SEED = 1;

	/** Of a trial that is not kept yet. */
	public static SplitFacts of(SplitStudy study, Trial trial, Workers workers) {
		return of(study.signals(), trial.clustering(), workers);
	}

	/** Of a kept split. */
	public static SplitFacts of(SplitOnMap split, Workers workers) {
		return of(split.signals(), split.clustering(), workers);
	}

	private static SplitFacts of(Signals signals, Clustering clustering, Workers workers) {
		int largest = Arrays.stream(clustering.sizes()).max().orElse(0);
		if (clustering.clusters() == 0) {
			return new SplitFacts(signals.size(), 0, clustering.noise(), clustering.noiseShare(), largest, Double.NaN,
					Double.NaN,
					Double.NaN, Double.NaN, Messages.SplitFacts_noClusterToSearch);
		}
		RadioMap map = signals.map();
		RadioMap own = map.view(some(IntStream.range(0, map.size()).toArray()));
		double comparisons = TestRun
				.of(TestRun.split(TestRun.clusters(signals, clustering)), signals.align(own), own, workers)
				.comparisons();
		double[] errors = heldOut(signals, clustering, workers);
		return new SplitFacts(signals.size(), clustering.clusters(), clustering.noise(), clustering.noiseShare(),
				largest, comparisons,
				comparisons / signals.size(), errors[0], errors[1],
				Words.bind(Messages.SplitFacts_trainingSamplesBlocksOfPositions, (int) errors[2]));
	}

	/** Mean error of split and of plain matching on blocks of positions that are left out of both, and how many were asked. */
	private static double[] heldOut(Signals signals, Clustering clustering, Workers workers) {
		RadioMap map = signals.map();
		boolean[] out = PositionBlocks.of(map).holdOut(HELD_OUT, SEED);
		int[] rest = IntStream.range(0, out.length).filter(s -> !out[s]).toArray();
		int[] asked = some(IntStream.range(0, out.length).filter(s -> out[s]).toArray());
		Clustering kept = new Clustering(Arrays.stream(rest).map(clustering::label).toArray(), null);
		if (asked.length == 0 || kept.clusters() == 0) {
			return new double[] { Double.NaN, Double.NaN, 0 };
		}
		Signals fewer = Signals.of(map.view(rest), signals.representation(), signals.distance());
		RadioMap questions = map.view(asked);
		SignalRows queries = fewer.align(questions);
		return new double[] {
				mean(TestRun.of(TestRun.split(TestRun.clusters(fewer, kept)), queries, questions, workers)),
				mean(TestRun.of(TestRun.plain(new Neighbours(fewer)), queries, questions, workers)), asked.length };
	}

	private static int[] some(int[] samples) {
		int step = Math.max(1, (samples.length + MOST_QUERIES - 1) / MOST_QUERIES);
		return IntStream.range(0, samples.length).filter(i -> i % step == 0).map(i -> samples[i]).toArray();
	}

	private static double mean(TestRun run) {
		return Arrays.stream(run.errors().errorsMetres()).average().orElse(Double.NaN);
	}

	/** Mean error to that of plain matching; NaN where nothing could be held out. */
	public double errorRatio() {
		return meanErrorMetres / plainErrorMetres;
	}

	/** One line, for a person. */
	@Override
	public String toString() {
		return String.format(Locale.ROOT,
				Messages.SplitFacts_clustersNoiseFingerprintsCompared, clusters,
				100 * noiseShare, comparisonsPerQuery, 100 * comparisonShare,
				Double.isNaN(meanErrorMetres) ? ""
						: String.format(Locale.ROOT, Messages.SplitFacts_meanErrorMToM, meanErrorMetres,
								plainErrorMetres));
	}
}
