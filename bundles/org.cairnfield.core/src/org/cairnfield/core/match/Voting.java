package org.cairnfield.core.match;

import java.io.Serializable;
import org.cairnfield.core.map.RadioMap;

/**
 * Position from the k nearest samples: site and floor by the sum of weights (of equals the one whose sample
 * is nearer), then the weighted mean of the positions at that site.
 *
 * @param k        how many samples vote
 * @param weighted weights 1/(d + 1), d in the signals' units; else all alike
 */
public record Voting(int k, boolean weighted) implements Serializable {

	/** The nearest sample alone. */
	public static final Voting NEAREST = new Voting(1, false);
	/** Three samples, weighted. */
	public static final Voting THREE_WEIGHTED = new Voting(3, true);

	public Voting {
		if (k < 1) {
			throw new IllegalArgumentException("k must be at least 1: " + k);
		}
	}

	/** Writes the position of query {@code query}; nothing is written where nothing was found. */
	void vote(RadioMap map, Nearest nearest, Estimates out, int query) {
		int voters = Math.min(k, nearest.size());
		if (voters == 0) {
			return;
		}
		int winner = winner(map, nearest, voters);
		int site = map.site(winner);
		double weights = 0;
		double x = 0;
		double y = 0;
		for (int i = 0; i < voters; i++) {
			int s = nearest.sample(i);
			if (map.site(s) == site) {
				double w = weight(nearest, i);
				weights += w;
				x += w * map.x(s);
				y += w * map.y(s);
			}
		}
		out.set(query, site, map.floor(winner), x / weights, y / weights);
	}

	private double weight(Nearest nearest, int i) {
		return weighted ? 1 / (nearest.distance(i) + 1) : 1;
	}

	private int winner(RadioMap map, Nearest nearest, int voters) {
		int best = -1;
		double most = 0;
		for (int i = 0; i < voters; i++) {
			int candidate = nearest.sample(i);
			double sum = 0;
			for (int j = 0; j < voters; j++) {
				int other = nearest.sample(j);
				if (map.site(other) == map.site(candidate) && map.floor(other) == map.floor(candidate)) {
					sum += weight(nearest, j);
				}
			}
			if (best < 0 || sum > most) {
				most = sum;
				best = candidate;
			}
		}
		return best;
	}

	@Override
	public String toString() {
		return "k " + k + (weighted ? " weighted" : "");
	}
}
