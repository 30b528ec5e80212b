package org.cairnfield.curation.propose;

/**
 * What approving one proposal alone would do to its floor. A quick estimate, see {@link EffectTable}.
 *
 * @param errorChangeMetres change of the floor's mean position error, below 0 for better; NaN where the floor has no queries
 * @param affected          queries on the floor whose position would change
 * @param queries           queries on the floor that were looked at
 * @param comparisonsAdded  fingerprints compared more per query on the floor, mean; NaN where there are no queries
 */
public record Effect(double errorChangeMetres, int affected, int queries, double comparisonsAdded) {

	/** Nothing to tell it from. */
	public static final Effect UNKNOWN = new Effect(Double.NaN, 0, 0, Double.NaN);
}
