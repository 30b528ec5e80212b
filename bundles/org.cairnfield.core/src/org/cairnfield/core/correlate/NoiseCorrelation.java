package org.cairnfield.core.correlate;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.Components;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.distance.StepLists;
import org.cairnfield.core.task.Workers;

/**
 * For every noise sample the labelled samples whose rows of the distance matrix correlate with its own
 * (Pearson), and the nearest labelled sample. The matrix is never held: a row product needs only what the
 * two samples heard, see {@link OverlapProducts}.
 *
 * <p>With R readings in the largest component and N noise samples: N·R steps for city-block, N·n² for a
 * distance that is no plain sum. Components out of earshot are bounded away, see {@link BeyondEarshot}, and so are most of the
 * labelled samples within earshot, see {@link PivotGroups}. With whole-number values
 * all sums are exact as long as n·d² stays under 2<sup>53</sup>.
 */
public final class NoiseCorrelation {

	/** Noise samples for which groups of the labelled ones are not worth while. */
	private static final int FEW = 200;

	private NoiseCorrelation() {
	}

	/**
	 * @return one entry a noise sample, ascending
	 */
	public static List<NoisePlacement> place(Signals signals, Clustering clustering, Workers workers) {
		return place(signals, clustering, FEW, workers);
	}

	/** @param few noise samples for which each labelled one is correlated */
	static List<NoisePlacement> place(Signals signals, Clustering clustering, int few, Workers workers) {
		return placeInPart(signals, clustering, SampleSums.NONE, few, workers).placements();
	}

	/**
	 * What part of a map tells of its noise: the best within the part, by rows of the whole distance matrix.
	 *
	 * @param placements       one entry a noise sample of the part, ascending
	 * @param runnerUpCarriers the sample with the next best r for each of these, or −1
	 * @param rows             of all samples of the part, to be correlated with rows elsewhere
	 */
	public record PartPlacements(List<NoisePlacement> placements, int[] runnerUpCarriers, List<RowSums> rows) {
	}

	/**
	 * Places the noise in part of a map that is spread over several machines.
	 *
	 * @param signals   of the part, in the values of the whole map; city-block
	 * @param elsewhere the rest of the map, out of earshot of the part
	 */
	public static PartPlacements placePart(Signals signals, Clustering clustering, SampleSums elsewhere,
			Workers workers) {
		if (!signals.distance().isSum()) {
			throw new IllegalArgumentException(
					"no closed form for samples elsewhere by " + signals.distance() + " distance");
		}
		Placed placed = placeInPart(signals, clustering, elsewhere, FEW, workers);
		List<RowSums> rows = IntStream.range(0, signals.size()).mapToObj(s -> placed.moments.row(signals, s)).toList();
		return new PartPlacements(placed.placements, placed.runnerUpCarriers, rows);
	}

	private record Placed(List<NoisePlacement> placements, int[] runnerUpCarriers, RowMoments moments) {
	}

	private static Placed placeInPart(Signals signals, Clustering clustering, SampleSums elsewhere, int few,
			Workers workers) {
		if (clustering.size() != signals.size()) {
			throw new IllegalArgumentException(
					"clustering of " + clustering.size() + " samples for a map of " + signals.size());
		}
		List<int[]> batches = SampleBatches.of(signals, clustering::isNoise);
		NoisePlacement[] placed = new NoisePlacement[signals.size()];
		int[] runnerUpCarriers = new int[signals.size()];
		StepLists lists = signals.stepLists();
		RowMoments moments = RowMoments.of(signals, lists, elsewhere, workers);
		BeyondEarshot beyond = new BeyondEarshot(signals, clustering, moments);
		int[][] labelled = SampleBatches.byComponent(signals, s -> !clustering.isNoise(s));
		Supplier<RowProducts> products = products(signals, lists, moments);
		PivotGroups groups = signals.index().isEmpty() || clustering.noise() < few ? null
				: PivotGroups.of(signals.index().get(), labelled, moments, products, workers);
		workers.progress().begin("correlation", batches.size());
		workers.forRanges(batches.size(), () -> {
			Placing placing = new Placing(signals, clustering, labelled, groups, moments, products.get(), beyond);
			return (from, to) -> {
				for (int i = from; i < to; i++) {
					placing.place(batches.get(i), placed, runnerUpCarriers);
				}
			};
		});
		int[] noise = IntStream.range(0, placed.length).filter(clustering::isNoise).toArray();
		return new Placed(Arrays.stream(noise).mapToObj(s -> placed[s]).toList(),
				Arrays.stream(noise).map(s -> runnerUpCarriers[s]).toArray(), moments);
	}

	private static Supplier<RowProducts> products(Signals signals, StepLists lists, RowMoments moments) {
		if (signals.distance() != Distance.CITY_BLOCK) {
			return () -> new RecomputedProducts(signals);
		}
		return () -> new OverlapProducts(signals, lists, moments);
	}

	/** One thread's work. */
	private static final class Placing {

		private final Components components;
		private final int[][] labelled;
		private final PivotGroups groups;
		private final RowMoments moments;
		private final BeyondEarshot beyond;
		private final RowProducts products;
		private final BestClusters[] best = new BestClusters[RowProducts.BATCH];
		private final double[] product = new double[RowProducts.BATCH];
		private final int[] nearest = new int[RowProducts.BATCH];
		private final double[] nearestDistance = new double[RowProducts.BATCH];
		/** r of the batch with the pivots of its component, by group and place in the batch. */
		private final double[] withPivot;

		Placing(Signals signals, Clustering clustering, int[][] labelled, PivotGroups groups, RowMoments moments,
				RowProducts products,
				BeyondEarshot beyond) {
			this.components = signals.components();
			this.labelled = labelled;
			this.groups = groups;
			this.moments = moments;
			withPivot = new double[groups == null ? 0 : groups.least.length * RowProducts.BATCH];
			this.products = products;
			this.beyond = beyond;
			Arrays.setAll(best, i -> new BestClusters(clustering, moments));
		}

		void place(int[] samples, NoisePlacement[] placed, int[] runnerUpCarriers) {
			int component = components.componentOf(samples[0]);
			products.begin(samples);
			for (int i = 0; i < samples.length; i++) {
				best[i].begin(samples[i]);
				nearest[i] = beyond.quietestElsewhere(component);
				nearestDistance[i] = nearest[i] < 0 ? Double.POSITIVE_INFINITY : products.distance(i, nearest[i]);
			}
			for (int i = 0; i < samples.length; i++) {
				findNearest(i, labelled[component]);
			}
			if (groups == null) {
				for (int other : labelled[component]) {
					take(samples.length, other);
				}
			} else {
				takeGroups(samples, groups.ofComponent[component], groups.ofComponent[component + 1]);
			}
			for (int i = 0; i < samples.length; i++) {
				int at = i;
				beyond.search(samples[i], best[i], other -> {
					products.with(other, product);
					best[at].take(other, product[at]);
				});
				placed[samples[i]] = best[i].placement(nearest[i], nearestDistance[i]);
				runnerUpCarriers[samples[i]] = best[i].runnerUpCarrier();
			}
		}

		/** Pivots first, then the groups of those that correlate best, then those of the rest that may hold something better. */
		private void takeGroups(int[] samples, int from, int to) {
			int[] likely = new int[samples.length];
			Arrays.fill(likely, from);
			for (int g = from; g < to; g++) {
				int pivot = groups.sample[groups.start[g]];
				take(samples.length, pivot);
				for (int i = 0; i < samples.length; i++) {
					withPivot[g * RowProducts.BATCH + i] = moments.correlation(samples[i], pivot, product[i]);
					if (withPivot[g * RowProducts.BATCH + i] > withPivot[likely[i] * RowProducts.BATCH + i]) {
						likely[i] = g;
					}
				}
			}
			for (int i = 0; from < to && i < samples.length; i++) {
				takeGroup(i, likely[i]);
				for (int g = from; g < to; g++) {
					if (g != likely[i] && !groups.isBelow(g, withPivot[g * RowProducts.BATCH + i], best[i].least())) {
						takeGroup(i, g);
					}
				}
			}
		}

		private void takeGroup(int i, int group) {
			for (int place = groups.start[group] + 1; place < groups.start[group + 1]; place++) {
				if (!groups.isPlaceBelow(place, withPivot[group * RowProducts.BATCH + i], best[i].least())) {
					best[i].take(groups.sample[place], products.with(i, groups.sample[place]));
				}
			}
		}

		private void take(int count, int other) {
			products.with(other, product);
			for (int i = 0; i < count; i++) {
				best[i].take(other, product[i]);
			}
		}

		private void findNearest(int i, int[] others) {
			for (int other : others) {
				double d = products.distance(i, other);
				if (d < nearestDistance[i] || d == nearestDistance[i] && other < nearest[i]) {
					nearestDistance[i] = d;
					nearest[i] = other;
				}
			}
		}
	}
}
