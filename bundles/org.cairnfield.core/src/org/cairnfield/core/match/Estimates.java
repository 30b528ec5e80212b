package org.cairnfield.core.match;

import java.util.Arrays;
import java.util.List;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.measure.Positions;
import org.cairnfield.core.task.Workers;

/** Positions estimated for a list of queries, in columns, and what they cost. */
public final class Estimates {

	/** Where nothing was found. */
	public static final int UNKNOWN = Integer.MIN_VALUE;

	private final double[] x;
	private final double[] y;
	private final int[] floor;
	private final int[] site;
	private final int[] comparisons;

	Estimates(int n) {
		x = new double[n];
		y = new double[n];
		floor = new int[n];
		site = new int[n];
		comparisons = new int[n];
		Arrays.fill(x, Double.NaN);
		Arrays.fill(y, Double.NaN);
		Arrays.fill(floor, UNKNOWN);
		Arrays.fill(site, UNKNOWN);
	}

	/** Matches every query. */
	public static Estimates of(Matcher matcher, SignalRows queries, Workers workers) {
		return of(matcher, List.of(matcher.voting()), queries, workers).get(0);
	}

	/**
	 * Matches every query once and lets several votings decide.
	 *
	 * @param votings of k no larger than the matcher's own
	 */
	public static List<Estimates> of(Matcher matcher, List<Voting> votings, SignalRows queries, Workers workers) {
		if (votings.stream().anyMatch(v -> v.k() > matcher.voting().k())) {
			throw new IllegalArgumentException("the matcher finds only " + matcher.voting().k() + ": " + votings);
		}
		List<Estimates> out = votings.stream().map(v -> new Estimates(queries.size())).toList();
		workers.progress().begin("matching", queries.size());
		workers.forRanges(queries.size(), () -> {
			Matcher.Session session = matcher.session();
			return (from, to) -> {
				for (int q = from; q < to; q++) {
					Nearest nearest = session.nearest(queries, q);
					for (int v = 0; v < votings.size(); v++) {
						votings.get(v).vote(matcher.signals().map(), nearest, out.get(v), q);
						out.get(v).setComparisons(q, session.comparisons());
					}
				}
			};
		});
		return out;
	}

	void set(int query, int atSite, int onFloor, double xMetres, double yMetres) {
		site[query] = atSite;
		floor[query] = onFloor;
		x[query] = xMetres;
		y[query] = yMetres;
	}

	void setComparisons(int query, int fingerprints) {
		comparisons[query] = fingerprints;
	}

	public int size() {
		return x.length;
	}

	/** Metres, NaN where unknown. */
	public double x(int query) {
		return x[query];
	}

	/** Metres, NaN where unknown. */
	public double y(int query) {
		return y[query];
	}

	public int floor(int query) {
		return floor[query];
	}

	/** Index into the sites of the searched map. */
	public int site(int query) {
		return site[query];
	}

	/** The positions alone. */
	public Positions positions() {
		return new Positions(x, y, floor, site);
	}

	/** Fingerprints compared for one query. */
	public int comparisons(int query) {
		return comparisons[query];
	}

	/** Fingerprints compared per query, mean. */
	public double meanComparisons() {
		return Arrays.stream(comparisons).average().orElse(0);
	}
}
