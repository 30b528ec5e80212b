package org.cairnfield.core.health;

import java.io.Serializable;

import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/** Ranks the figures of all samples against each other and combines the ranks. */
final class HealthScores implements Serializable {

	/**
	 * What each neighbour in signal space on another floor adds, in metres of position error. Not critical:
	 * from 1 to 10 the area under the curve for planted faults changed by 0.02 at most.
	 */
	static final double METRES_A_FLOOR_VOTE = 5;

	private static final long serialVersionUID = 1;

	final double[] place;
	final double[] readings;

	HealthScores(HealthColumns columns) {
		int n = columns.overlap.length;
		double[] metres = new double[n];
		double[] apart = new double[n];
		for (int s = 0; s < n; s++) {
			metres[s] = columns.medianErrorMetres[s]
					+ METRES_A_FLOOR_VOTE * SampleHealth.SIGNAL_NEIGHBOURS * columns.floorDisagreement[s];
			apart[s] = 1 - columns.overlap[s];
		}
		place = ranks(metres);
		readings = ranks(apart);
		double[] deficit = ranks(columns.levelDeficitDb);
		double[] scatter = ranks(columns.levelScatterDb);
		for (int s = 0; s < n; s++) {
			readings[s] = Math.max(readings[s], Math.max(deficit[s], scatter[s]));
		}
	}

	/** Ranks as shares, 0 … 1, equal values sharing theirs; what is not a number ranks lowest. */
	static double[] ranks(double[] values) {
		int n = values.length;
		double[] ordered = new double[n];
		for (int i = 0; i < n; i++) {
			ordered[i] = Double.isNaN(values[i]) ? Double.NEGATIVE_INFINITY : values[i];
		}
		if (n == 0) {
			return ordered;
		}
		double[] ranks = new NaturalRanking(TiesStrategy.AVERAGE).rank(ordered);
		for (int i = 0; i < n; i++) {
			ranks[i] = n == 1 ? 0 : (ranks[i] - 1) / (n - 1);
		}
		return ranks;
	}
}
