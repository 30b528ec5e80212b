package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.api.java.JavaRDD;
import org.cairnfield.core.correlate.SampleSums;
import scala.Tuple2;

/**
 * What the rest of the map has to know of a component.
 *
 * @param sums     of its samples
 * @param quietest its samples of least magnitude, quietest first, of equals the first in the map
 */
record ComponentFacts(SampleSums sums, List<Quiet> quietest) implements Serializable {

	/** A sample and its magnitude. */
	record Quiet(Fingerprint sample, double magnitude) implements Serializable {
		/** Quietest first, of equals the first in the map. */
		static final Comparator<Quiet> ORDER = Comparator.comparingDouble(Quiet::magnitude)
				.thenComparingInt(q -> q.sample().id());
	}

	/**
	 * By component.
	 *
	 * @param most quiet samples kept of each
	 */
	static Map<Integer, ComponentFacts> of(JavaRDD<Fingerprint> samples, Earshot earshot, int most) {
		return new HashMap<>(samples.mapPartitionsToPair(part -> {
			Map<Integer, Gathering> found = new HashMap<>();
			part.forEachRemaining(
					s -> found.computeIfAbsent(earshot.component(s), c -> new Gathering(most)).add(s,
							earshot.lowestRssiDbm()));
			return found.entrySet().stream().map(e -> new Tuple2<>(e.getKey(), e.getValue().done())).iterator();
		}).reduceByKey((a, b) -> a.with(b, most)).collectAsMap());
	}

	private ComponentFacts with(ComponentFacts other, int most) {
		List<Quiet> both = new ArrayList<>(quietest);
		both.addAll(other.quietest);
		return new ComponentFacts(
				new SampleSums(sums.samples() + other.sums.samples(), sums.sum() + other.sums.sum(),
						sums.squares() + other.sums.squares()),
				first(both, most));
	}

	private static List<Quiet> first(List<Quiet> quiet, int most) {
		return new ArrayList<>(quiet.stream().sorted(Quiet.ORDER).limit(most).toList());
	}

	/** All components together. */
	static SampleSums total(Iterable<ComponentFacts> components) {
		long n = 0;
		double sum = 0;
		double squares = 0;
		for (ComponentFacts facts : components) {
			n += facts.sums.samples();
			sum += facts.sums.sum();
			squares += facts.sums.squares();
		}
		return new SampleSums(n, sum, squares);
	}

	private static final class Gathering {
		private final int most;
		private final List<Quiet> quiet = new ArrayList<>();
		private long n;
		private double sum;
		private double squares;

		Gathering(int most) {
			this.most = most;
		}

		void add(Fingerprint sample, int lowestRssiDbm) {
			double m = sample.magnitude(lowestRssiDbm);
			n++;
			sum += m;
			squares += m * m;
			quiet.add(new Quiet(sample, m));
			if (quiet.size() > 2 * most + 64) { // now and then, which is cheaper than keeping them in order
				List<Quiet> kept = first(quiet, most);
				quiet.clear();
				quiet.addAll(kept);
			}
		}

		ComponentFacts done() {
			return new ComponentFacts(new SampleSums(n, sum, squares), first(quiet, most));
		}
	}
}
