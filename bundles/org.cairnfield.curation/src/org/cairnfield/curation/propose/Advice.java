package org.cairnfield.curation.propose;

import java.util.Locale;

/**
 * Where a noise sample had best go: to the cluster that was proposed, unless training positions that were held out are measurably
 * better with it in the cluster of its nearest labelled sample, or measurably worse with it than without it. Followed for every
 * proposal, it was on no set worse than approving all, and better on average; the tests hold it to that.
 */
public enum Advice {
	/** To the proposed cluster. */
	APPROVE,
	/** To the cluster of the nearest labelled sample. */
	MOVE,
	/** Out of the map. */
	LEAVE_OUT,
	/** Nothing is proposed. */
	NONE;

	/** By the outlook of one proposal. */
	static Advice of(Outlook outlook, boolean made, boolean agrees) {
		if (!made) {
			return NONE;
		}
		Effect own = outlook.proposed();
		Effect nearest = outlook.nearest();
		if (!agrees && nearest.errorChangeMetres() + nearest.halfWidthMetres() < own.errorChangeMetres()
				- own.halfWidthMetres()) {
			return MOVE;
		}
		return own.isMeasurable() && own.errorChangeMetres() > 0 ? LEAVE_OUT : APPROVE;
	}

	/** In a word or two. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/** For a person, with the reason. */
	public String text(Evidence e) {
		return switch (this) {
		case APPROVE -> "approve; " + (e.effect().isMeasurable() ? "positions get measurably better"
				: e.effect().affected() == 0 ? "no position changes" : "nothing measurable speaks against it");
		case MOVE -> "move to cluster " + e.nearestCluster() + "; positions are measurably better than with cluster "
				+ e.cluster();
		case LEAVE_OUT -> String.format(Locale.ROOT, "leave it out; it makes %d positions worse, by %.2f m on average",
				e.effect().affected(),
				e.effect().changeWhereAffectedMetres());
		case NONE -> "none; no cluster is proposed";
		};
	}
}
