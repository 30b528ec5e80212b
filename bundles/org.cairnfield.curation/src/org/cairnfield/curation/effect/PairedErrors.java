package org.cairnfield.curation.effect;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;

/** Adds up the answers to the same questions before and after a change. */
final class PairedErrors {

	/** Any number; a fixed one, so that the same archive gives the same figures. */
	private static final long SEED = 20_181;

	/** Changes of the questions of one block. */
	private static final class Sums {
		private double error;
		private int located;
		private int floor;
		private int asked;
	}

	/** Sorted, so that the order of questions makes no difference. */
	private final Map<Integer, Sums> blocks = new TreeMap<>();
	private double errorBefore;
	private double errorAfter;
	private int located;
	private int floorBefore;
	private int floorAfter;
	private int asked;

	/**
	 * One question.
	 *
	 * @param block those of one block are drawn together for the interval, since neighbours err alike
	 */
	void add(int block, Answer before, Answer after) {
		Sums sums = blocks.computeIfAbsent(block, b -> new Sums());
		asked++;
		sums.asked++;
		floorBefore += before.rightFloor() ? 1 : 0;
		floorAfter += after.rightFloor() ? 1 : 0;
		sums.floor += (after.rightFloor() ? 1 : 0) - (before.rightFloor() ? 1 : 0);
		// across sites, whose frames may differ, there is no distance
		if (before.isAtSite() && after.isAtSite()) {
			located++;
			sums.located++;
			errorBefore += before.metres();
			errorAfter += after.metres();
			sums.error += after.metres() - before.metres();
		}
	}

	/** What came of it. */
	MapEffect effect() {
		return new MapEffect(asked, errorBefore / located, errorAfter / located, (double) floorBefore / asked,
				(double) floorAfter / asked, interval(sums -> sums.error, sums -> sums.located),
				interval(sums -> sums.floor, sums -> sums.asked));
	}

	private Interval interval(ToDoubleFunction<Sums> sum, ToDoubleFunction<Sums> count) {
		List<Sums> counted = blocks.values().stream().filter(sums -> count.applyAsDouble(sums) > 0).toList();
		return Bootstrap.seeded(SEED).ratioOfMeans(counted.stream().mapToDouble(sum).toArray(),
				counted.stream().mapToDouble(count).toArray());
	}
}
