package org.cairnfield.curation.propose;

import org.cairnfield.core.match.HomeEffects;

/**
 * What it would do to positions where one noise sample went to one home, compared with leaving it out of the map; judged alone,
 * on held-out training positions, see {@link HomeEffects}.
 *
 * @param errorChangeMetres change of the mean position error, below 0 for better; NaN where nothing could be asked
 * @param halfWidthMetres   half of its 95 % interval
 * @param affected          training positions whose estimate would change
 * @param queries           training positions asked
 * @param floorsWon         of those, how many more are put on their own floor
 * @param comparisonsAdded  fingerprints compared more per query, mean; NaN where nothing could be asked
 */
public record Effect(double errorChangeMetres, double halfWidthMetres, int affected, int queries, int floorsWon,
		double comparisonsAdded) {

	/** Nothing to tell it from. */
	public static final Effect UNKNOWN = new Effect(Double.NaN, Double.NaN, 0, 0, 0, Double.NaN);

	static Effect of(HomeEffects.Effect effect) {
		return new Effect(effect.changeMetres(), effect.halfWidthMetres(), effect.affected(), effect.asked(),
				effect.floorsWon(),
				effect.comparisonsAdded());
	}

	/** Whether the change is more than chance would make, at 95 %. */
	public boolean isMeasurable() {
		return affected > 0 && Math.abs(errorChangeMetres) > halfWidthMetres;
	}

	/** Change of the error where it changes at all, mean; NaN where it changes nowhere. */
	public double changeWhereAffectedMetres() {
		return affected == 0 ? Double.NaN : errorChangeMetres * queries / affected;
	}
}
