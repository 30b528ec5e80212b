package org.cairnfield.curation.propose;

import java.util.Locale;

import org.cairnfield.core.text.Words;

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
		case APPROVE -> Words.bind(Messages.Advice_approve,
				e.effect().isMeasurable() ? Messages.Advice_positionsGetMeasurablyBetter
						: e.effect().affected() == 0 ? Messages.Advice_noPositionChanges
								: Messages.Advice_nothingMeasurableSpeaksAgainstIt);
		case MOVE -> Words.bind(Messages.Advice_moveToClusterPositionsAre, e.nearestCluster(), e.cluster());
		case LEAVE_OUT -> String.format(Locale.ROOT, Messages.Advice_leaveItOutItMakes,
				e.effect().affected(),
				e.effect().changeWhereAffectedMetres());
		case NONE -> Messages.Advice_noneNoClusterIsProposed;
		};
	}
}
