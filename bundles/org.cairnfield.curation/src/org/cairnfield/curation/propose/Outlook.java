package org.cairnfield.curation.propose;

/**
 * What each home of a noise sample would do, compared with leaving it out of the map.
 *
 * @param proposed the cluster that was proposed
 * @param nearest  the cluster of the nearest labelled sample; equal to the one before where both are one cluster
 * @param pool     searched by every query
 */
public record Outlook(Effect proposed, Effect nearest, Effect pool) {

	/** Nothing is known. */
	public static final Outlook UNKNOWN = new Outlook(Effect.UNKNOWN, Effect.UNKNOWN, Effect.UNKNOWN);
}
