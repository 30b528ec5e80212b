package org.cairnfield.core.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.cluster.AffinityPropagation;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Dbscan;
import org.cairnfield.core.cluster.KDistances;
import org.cairnfield.core.cluster.KMeans;
import org.cairnfield.core.cluster.LargeClusters;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.cluster.OverlappingZones;
import org.cairnfield.core.cluster.Sweep;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.RegressedPositions;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.reduce.KernelReduction;
import org.cairnfield.core.reduce.OrthogonalSearch;
import org.cairnfield.core.reduce.PlaceOutputs;
import org.cairnfield.core.reduce.Reduction;
import org.cairnfield.core.reduce.SignalMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** All long work tells how far it is, to the end, and stops soon once it is cancelled. */
class LongWorkTest {

	private static final int SAMPLES = 320;
	private static final Signals SIGNALS = Signals.of(ScatteredMap.of(14, SAMPLES));
	private static final Signals EUCLIDEAN = Signals.of(ScatteredMap.of(14, SAMPLES), Representation.positive(),
			Distance.EUCLIDEAN);
	private static final int[] ALL = IntStream.range(0, SAMPLES).toArray();
	private static final Clustering CLUSTERING = Dbscan.cluster(SIGNALS, 12, 3, Workers.inline());

	private static final Reduction REDUCTION = reduction(Workers.inline());

	private static Reduction reduction(Workers workers) {
		return KernelReduction.of(new SignalMatrix(SIGNALS), PlaceOutputs.of(SIGNALS.map()),
				KernelReduction.Settings.usual(1), workers);
	}

	enum Work {
		DBSCAN(w -> Dbscan.cluster(SIGNALS, 20, 3, w)), //
		K_DISTANCES(w -> KDistances.of(SIGNALS, w, 3)), //
		SWEEP(w -> Sweep.run(SIGNALS, new double[] { 10, 20 }, new int[] { 3, 5 }, w)), //
		NEAREST_LABELLED(w -> NearestLabelled.labels(SIGNALS, List.of(CLUSTERING), w)), //
		K_MEANS(w -> KMeans.cluster(KMeans.points(SIGNALS, ALL), 10, 1, w)), //
		K_MEANS_SPREAD(w -> KMeans.cluster(KMeans.points(SIGNALS, ALL), 10, KMeans.Start.SPREAD, 1, w)), //
		ZONES(w -> OverlappingZones.of(KMeans.points(SIGNALS, ALL), CLUSTERING, 0.5, w)), //
		AFFINITY(w -> AffinityPropagation.cluster(SIGNALS, AffinityPropagation.Settings.usual(1), w)), //
		AFFINITY_BY_LANDMARKS(w -> AffinityPropagation.cluster(EUCLIDEAN,
				new AffinityPropagation.Settings(Double.NaN, 0.7, 15, 60, 40, 1), w)), //
		ORTHOGONAL_SEARCH(w -> OrthogonalSearch.of(new SignalMatrix(SIGNALS), PlaceOutputs.of(SIGNALS.map()), 6, 1, w)), //
		KERNEL_REDUCTION(w -> reduction(w)), //
		REGRESSION(w -> RegressedPositions.of(SIGNALS, REDUCTION, 2, 200, 1, w).estimates(SIGNALS.rows(), w)), //
		LARGE_CLUSTERS(w -> LargeClusters.cut(SIGNALS, new Clustering(new int[SAMPLES], null), 40, 1, w)), //
		CORRELATION(w -> NoiseCorrelation.place(SIGNALS, CLUSTERING, w)), //
		CORRELATION_RECOMPUTED(w -> NoiseCorrelation.place(EUCLIDEAN, CLUSTERING, w)), //
		TWO_LEVELS(w -> SplitMap.of(SIGNALS, new Clustering(ALL, null), Centroids.Kind.MEAN, false).inTwoLevels(1, w)), //
		MATCHING(w -> Estimates.of(new PlainMatcher(new Neighbours(SIGNALS), Voting.NEAREST), SIGNALS.rows(), w)), //
		AUTOMATIC_CHOICE(w -> AutomaticChoice.choose(SIGNALS, 1, w));

		private final Consumer<Workers> run;

		Work(Consumer<Workers> run) {
			this.run = run;
		}
	}

	@ParameterizedTest
	@EnumSource
	void advancesEveryStepToItsEnd(Work work) {
		for (int count = 1; count <= 2; count++) {
			try (Threads threads = new Threads(count)) {
				Tally tally = Tally.neverCancelling();
				work.run.accept(threads.workers(tally));
				assertTrue(tally.steps() > 0 && tally.begun() > 0);
				assertEquals(tally.begun(), tally.advanced());
				assertEquals(0, tally.largestMismatch());
			}
		}
	}

	@ParameterizedTest
	@EnumSource
	void stopsSoonAfterItIsCancelled(Work work) {
		Tally whole = Tally.neverCancelling();
		work.run.accept(Workers.inline().reportingTo(whole));
		for (int count = 1; count <= 2; count++) {
			for (long after : new long[] { 0, 1, whole.advanced() / 3 }) {
				try (Threads threads = new Threads(count)) {
					Tally tally = Tally.cancellingAfter(after);
					Workers workers = threads.workers(tally);
					assertThrows(CancellationException.class, () -> work.run.accept(workers));
					assertTrue(tally.late() <= count, tally.late() + " ranges"); // those begun before
				}
			}
		}
	}
}
