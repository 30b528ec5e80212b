package org.cairnfield.curation.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.NearestLabelled;
import org.cairnfield.core.cluster.PointSet;
import org.cairnfield.core.health.SampleHealth;
import org.cairnfield.core.stats.Percentile;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;

/**
 * The evidence on all noise samples of a split, computed at once so that looking at one costs nothing: one pass of
 * the health signals over the map, one row of distances a noise sample and query. Immutable, for any thread.
 */
public final class EvidenceTable {

	private final List<Evidence> all;
	private final Map<SampleKey, Evidence> bySample = new HashMap<>();
	private final String basis;
	private final double farMetres;
	private final AdviceRates rates;

	private EvidenceTable(List<Evidence> all, String basis, double farMetres, AdviceRates rates) {
		this.all = List.copyOf(all);
		this.basis = basis;
		this.farMetres = farMetres;
		this.rates = rates;
		all.forEach(evidence -> bySample.put(evidence.sample(), evidence));
	}

	/**
	 * @param split whose proposals were made
	 */
	public static EvidenceTable of(SplitOnMap split, Workers workers) {
		Clustering clustering = split.clustering();
		SampleHealth health = SampleHealth.of(split.map(), workers);
		FloorNearness floors = new FloorNearness(split.map(), clustering);
		Map<Integer, Integer> target = new HashMap<>();
		for (int s = 0; s < clustering.size(); s++) {
			Optional<Proposal> proposal = clustering.isNoise(s) ? split.proposals().of(split.key(s)) : Optional.empty();
			if (proposal.isPresent() && isThere(proposal.get().cluster(), clustering)) {
				target.put(s, proposal.get().cluster());
			}
		}
		NearestLabelled nearest = NearestLabelled.of(PointSet.of(split.signals()), clustering, workers);
		Outlooks outlooks = Outlooks.of(split, target, nearest, workers);
		double tight = tightMargin(split.proposals());
		List<Evidence> all = new ArrayList<>();
		for (int s = 0; s < clustering.size(); s++) {
			if (clustering.isNoise(s)) {
				all.add(evidence(split, s, split.proposals().of(split.key(s)), nearest, floors, health, outlooks,
						tight));
			}
		}
		return new EvidenceTable(all, outlooks.basis(), floors.farMetres(), AdviceRates.of(all, outlooks));
	}

	private static double tightMargin(Proposals proposals) {
		double[] margins = proposals.all().stream().mapToDouble(Proposal::margin).filter(m -> !Double.isNaN(m))
				.toArray();
		return margins.length == 0 ? 0
				: Math.min(Warning.TIGHT_MARGIN_R, Percentile.of(margins, Warning.TIGHTEST_PERCENT));
	}

	private static boolean isThere(int cluster, Clustering clustering) {
		return cluster < clustering.clusters();
	}

	private static Evidence evidence(SplitOnMap split, int s, Optional<Proposal> proposal, NearestLabelled nearest,
			FloorNearness floors, SampleHealth health, Outlooks outlooks, double tight) {
		int cluster = proposal.map(Proposal::cluster).orElse(Clustering.NOISE);
		boolean there = cluster >= 0 && isThere(cluster, split.clustering());
		FloorNearness.Near near = there ? floors.nearest(cluster, s) : new FloorNearness.Near(-1, Double.NaN);
		int carrier = proposal.map(p -> split.index(p.carrier())).orElse(-1);
		int closest = nearest.sample(s);
		int voters = Math.min(SampleHealth.SIGNAL_NEIGHBOURS, split.map().size() - 1);
		Evidence plain = new Evidence(split.key(s), s,
				proposal.filter(p -> p.strengthR() >= split.threshold()).isPresent(),
				cluster, proposal.map(Proposal::strengthR).orElse(Double.NaN),
				proposal.map(Proposal::margin).orElse(Double.NaN),
				proposal.map(Proposal::carrier).orElse(null), closest < 0 ? null : split.key(closest),
				nearest.distance(s),
				closest < 0 ? Clustering.NOISE : split.clustering().label(closest), near.metres(),
				near.sample() < 0 ? null : split.key(near.sample()),
				carrier >= 0 && !Double.isInfinite(split.map().metresApart(s, carrier)),
				there ? floors.shareOnFloor(cluster, s) : Double.NaN,
				(int) Math.round(voters * (1 - health.floorDisagreement(s))), voters, health.medianErrorMetres(s),
				health.placeScore(s), health.overlap(s), health.levelDeficitDb(s), health.levelScatterDb(s),
				health.readingsScore(s), outlooks.of(s), Set.of());
		return withWarnings(plain, floors.farMetres(), tight);
	}

	private static Evidence withWarnings(Evidence e, double farMetres, double tight) {
		Set<Warning> warnings = EnumSet.noneOf(Warning.class);
		if (e.cluster() >= 0) {
			add(warnings, Warning.NEAREST_DIFFERS, !e.agrees());
			add(warnings, Warning.OTHER_FLOOR, Double.isNaN(e.floorMetres()));
			add(warnings, Warning.FAR, e.floorMetres() > farMetres);
			add(warnings, Warning.TIGHT_MARGIN, e.margin() <= tight);
		}
		add(warnings, Warning.PLACE_DOUBTFUL, e.floorVotes() < Math.min(Warning.FLOOR_VOTES, e.floorVoters())
				|| e.placeScore() >= Warning.DOUBTFUL_SCORE);
		add(warnings, Warning.READINGS_DOUBTFUL, e.readingsScore() >= Warning.DOUBTFUL_READINGS_SCORE);
		return new Evidence(e.sample(), e.index(), e.made(), e.cluster(), e.strengthR(), e.margin(), e.carrier(),
				e.nearest(),
				e.nearestDistance(), e.nearestCluster(), e.floorMetres(), e.floorMember(), e.carrierOnFloor(),
				e.clusterFloorShare(), e.floorVotes(), e.floorVoters(), e.placeErrorMetres(), e.placeScore(),
				e.overlap(),
				e.levelDeficitDb(), e.levelScatterDb(), e.readingsScore(), e.outlook(),
				Collections.unmodifiableSet(warnings));
	}

	private static void add(Set<Warning> warnings, Warning warning, boolean given) {
		if (given) {
			warnings.add(warning);
		}
	}

	/** Of all noise samples, proposals and unplaced, in the order of the map. */
	public List<Evidence> all() {
		return all;
	}

	/** Of one noise sample. */
	public Optional<Evidence> of(SampleKey sample) {
		return Optional.ofNullable(bySample.get(sample));
	}

	/** What effects are computed from, for a person. */
	public String basis() {
		return basis;
	}

	/** From how many metres a cluster counts as far: 99 % of clustered samples have a fellow at another point within it. */
	public double farMetres() {
		return farMetres;
	}

	/** How often advice is right on this map. */
	public AdviceRates rates() {
		return rates;
	}
}
