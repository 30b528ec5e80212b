package org.cairnfield.curation.measure;

import java.util.List;
import org.cairnfield.core.cluster.Centroids;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.match.Matcher;
import org.cairnfield.core.match.Neighbours;
import org.cairnfield.core.match.PlainMatcher;
import org.cairnfield.core.match.SplitMap;
import org.cairnfield.core.match.SplitMatcher;
import org.cairnfield.core.match.Voting;
import org.cairnfield.core.measure.PositionErrors;
import org.cairnfield.core.measure.Positions;
import org.cairnfield.core.stats.Bootstrap;
import org.cairnfield.core.stats.Interval;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SplitOnMap;

/**
 * Test samples matched in one way; and the ways that every measurement has, under the names that it calls them by.
 *
 * @param estimates of each test sample
 * @param errors    of all of them
 * @param sites     names of the sites that estimates number
 */
public record TestRun(Estimates estimates, PositionErrors errors, List<String> sites) {

	/** The nearest sample of the whole map, by which all others are judged. */
	public static final String PLAIN = "plain";
	/** The three nearest, weighted. */
	public static final String PLAIN_3W = "plain-3w";
	/** A split as published, its noise left out. */
	public static final String SPLIT = "split";

	/** How the plain way is, for a person. */
	public static final String HOW_PLAIN = Messages.TestRun_nearestSampleOfTheWhole;
	/** Likewise of the weighted one. */
	public static final String HOW_PLAIN_3W = Messages.TestRun_threeNearestSamplesOfThe;
	/** Likewise of a split. */
	public static final String HOW_SPLIT = Messages.TestRun_nearestClusterNearestSampleIn;

	/** @param queries the test samples, aligned to the map that the matcher searches */
	public static TestRun of(Matcher matcher, SignalRows queries, RadioMap test, Workers workers) {
		return of(Estimates.of(matcher, queries, workers), matcher.signals().map(), test);
	}

	/** Of estimates. @param searched the map whose sites they number */
	public static TestRun of(Estimates estimates, RadioMap searched, RadioMap test) {
		return new TestRun(estimates, PositionErrors.of(estimates.positions(), truth(test, searched)),
				searched.sites());
	}

	/** The matcher of {@link #PLAIN}. */
	public static Matcher plain(Neighbours neighbours) {
		return new PlainMatcher(neighbours, Voting.NEAREST);
	}

	/** The matcher of {@link #PLAIN_3W}. */
	public static Matcher plainWeighted(Neighbours neighbours) {
		return new PlainMatcher(neighbours, Voting.THREE_WEIGHTED);
	}

	/** The matcher of {@link #SPLIT}, as published: the nearest centroid's cluster, then the nearest sample in it. */
	public static Matcher split(SplitMap split) {
		return new SplitMatcher(split, 1, 1, false, Voting.NEAREST);
	}

	/** A map in its clusters, each by its mean; clusters without a sample are passed over, noise is left out. */
	public static SplitMap clusters(Signals signals, Clustering clustering) {
		return clusters(signals, clustering, new int[0]);
	}

	/** The same with samples that every query searches. */
	public static SplitMap clusters(Signals signals, Clustering clustering, int[] pool) {
		return SplitMap.of(signals, SplitOnMap.dense(clustering), Centroids.Kind.MEAN, pool);
	}

	/** True positions, sites numbered as in the searched map. */
	private static Positions truth(RadioMap test, RadioMap searched) {
		int n = test.size();
		double[] x = new double[n];
		double[] y = new double[n];
		int[] floor = new int[n];
		int[] site = new int[n];
		for (int s = 0; s < n; s++) {
			x[s] = test.x(s);
			y[s] = test.y(s);
			floor[s] = test.floor(s);
			site[s] = searched.sites().indexOf(test.sites().get(test.site(s)));
		}
		return new Positions(x, y, floor, site);
	}

	/** 95 % bootstrap interval of the mean error, metres. */
	public Interval mean(long seed) {
		return Bootstrap.seeded(seed).mean(errors.errorsMetres());
	}

	/** Fingerprints compared a query, centroids included, mean. */
	public double comparisons() {
		return estimates.meanComparisons();
	}
}
