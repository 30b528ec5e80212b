package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.spark.HashPartitioner;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.storage.StorageLevel;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.SampleSums;
import org.cairnfield.core.correlate.NoiseCorrelation;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.correlate.RowSums;
import org.cairnfield.core.distance.Distance;
import org.cairnfield.core.distance.Representation;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.task.Workers;

/**
 * Where the noise of a map that is spread over machines could go, as core says it on one: rows of the distance matrix of the
 * whole map are correlated. A component is one task's; labelled samples of other tasks come in by the sums of their rows.
 */
final class SparkProposals {

	/** A noise sample with the best of its task. */
	private record Noise(int task, NoisePlacement placement, int runnerUpCarrier, RowSums row) implements Serializable {
	}

	/** What a task knows of its samples. */
	private record Part(List<Noise> noise, List<Candidates.Candidate> labelled) implements Serializable {
	}

	private SparkProposals() {
	}

	/** One entry a noise sample, ascending; none where the gate is not reached. */
	static List<NoisePlacement> place(JavaSparkContext spark, SpreadMap map, Clustering clustering, ProposalRule rule) {
		if (!rule.opens(clustering)) {
			return List.of();
		}
		Map<Integer, ComponentFacts> facts = ComponentFacts.of(map.samples(), map.earshot(), 0);
		SampleSums all = ComponentFacts.total(facts.values());
		TaskPlan plan = TaskPlan.of(map.earshot().costs(), facts.keySet(), map.tasks(), Map.of(), Integer.MAX_VALUE);
		Broadcast<TaskPlan> plans = spark.broadcast(plan);
		Broadcast<Earshot> earshot = spark.broadcast(map.earshot());
		Broadcast<int[]> labels = spark.broadcast(clustering.labels());
		JavaRDD<Part> parts = map.samples().keyBy(s -> plans.value().task(earshot.value().component(s)))
				.groupByKey(new HashPartitioner(Math.max(1, plan.tasks())))
				.map(group -> part(group._1, group._2, labels.value(), all, earshot.value().lowestRssiDbm()))
				.persist(StorageLevel.MEMORY_AND_DISK());
		Broadcast<Candidates> candidates = spark
				.broadcast(new Candidates(parts.flatMap(p -> p.labelled().iterator()).collect(), all));
		List<NoisePlacement> placed = new ArrayList<>(
				parts.flatMap(p -> p.noise().iterator()).map(n -> place(n, candidates.value())).collect());
		parts.unpersist();
		placed.sort(Comparator.comparingInt(NoisePlacement::sample));
		return placed;
	}

	private static Part part(int task, Iterable<Fingerprint> samples, int[] labels, SampleSums all, int lowestRssiDbm) {
		List<Fingerprint> members = new ArrayList<>();
		samples.forEach(members::add);
		members.sort(Comparator.comparingInt(Fingerprint::id));
		int[] ids = members.stream().mapToInt(Fingerprint::id).toArray();
		Signals signals = Signals.ofPart(Fingerprint.map(members, s -> "", Integer::toString),
				Representation.positive(), Distance.CITY_BLOCK,
				lowestRssiDbm);
		int[] global = new TreeSet<>(IntStream.of(ids).map(s -> labels[s]).filter(l -> l >= 0).boxed().toList())
				.stream().mapToInt(l -> l).toArray();
		Map<Integer, Integer> local = new HashMap<>();
		for (int c = 0; c < global.length; c++) {
			local.put(global[c], c);
		}
		Clustering own = new Clustering(
				IntStream.of(ids).map(s -> local.getOrDefault(labels[s], Clustering.NOISE)).toArray(), null);
		double sum = 0;
		double squares = 0;
		for (int s = 0; s < ids.length; s++) {
			double m = signals.rows().magnitude(s);
			sum += m;
			squares += m * m;
		}
		NoiseCorrelation.PartPlacements placed = NoiseCorrelation.placePart(signals, own,
				all.without(new SampleSums(ids.length, sum, squares)),
				Workers.inline());
		List<Noise> noise = new ArrayList<>();
		for (NoisePlacement p : placed.placements()) {
			noise.add(new Noise(task, named(p, ids, global), named(placed.runnerUpCarriers()[noise.size()], ids),
					placed.rows().get(p.sample())));
		}
		return new Part(noise, new ArrayList<>(IntStream.range(0, ids.length).filter(s -> !own.isNoise(s))
				.mapToObj(s -> new Candidates.Candidate(ids[s], labels[ids[s]], task, placed.rows().get(s))).toList()));
	}

	/** In the numbers of the whole map. */
	private static NoisePlacement named(NoisePlacement p, int[] ids, int[] clusters) {
		return new NoisePlacement(ids[p.sample()], named(p.cluster(), clusters), p.strength(), named(p.carrier(), ids),
				named(p.runnerUp(), clusters),
				p.runnerUpR(), named(p.nearest(), ids), p.nearestDistance(), named(p.nearestCluster(), clusters));
	}

	private static int named(int local, int[] names) {
		return local < 0 ? -1 : names[local];
	}

	private static NoisePlacement place(Noise noise, Candidates candidates) {
		NoisePlacement own = noise.placement;
		TwoBest best = new TwoBest();
		best.offer(own.cluster(), own.strength(), own.carrier());
		best.offer(own.runnerUp(), own.runnerUpR(), noise.runnerUpCarrier);
		candidates.offer(noise.row, noise.task, best);
		int nearest = own.nearest();
		double distance = own.nearestDistance();
		int cluster = own.nearestCluster();
		int beyond = candidates.nearest(noise.task);
		if (beyond >= 0) {
			double d = noise.row.magnitude() + candidates.magnitude(beyond);
			if (nearest < 0 || d < distance || d == distance && candidates.id(beyond) < nearest) {
				nearest = candidates.id(beyond);
				distance = d;
				cluster = candidates.cluster(beyond);
			}
		}
		return new NoisePlacement(own.sample(), best.cluster(), best.r(), best.carrier(), best.secondCluster(),
				best.secondR(), nearest, distance,
				cluster);
	}
}
