package org.cairnfield.curation.propose;

import java.util.Locale;

import org.cairnfield.core.text.Words;

/** What a reviewer should look at before approving, in the order of weight. */
public enum Warning {
	/** The nearest labelled sample is in another cluster than the most correlated one. */
	NEAREST_DIFFERS,
	/** The target cluster has no sample on the floor where the sample is said to be. */
	OTHER_FLOOR,
	/** The cluster's nearest sample on the floor is farther than samples of a cluster usually are. */
	FAR,
	/** What hears the same stands elsewhere: the place may be wrong. */
	PLACE_DOUBTFUL,
	/** What stands around hears something else: the readings may be wrong. */
	READINGS_DOUBTFUL,
	/** Another cluster fits almost as well. */
	TIGHT_MARGIN;

	/** A sample whose margin is below this may fit two clusters about as well … */
	static final double TIGHT_MARGIN_R = 0.02;
	/** … if it is among this per cent of the tightest: on some maps most margins are small. */
	static final double TIGHTEST_PERCENT = 10;
	/** Rank scores of doubt from which a person should look: the worst twentieth. */
	static final double DOUBTFUL_SCORE = 0.95;
	/** For readings the score is the largest of three ranks, so the same share of samples lies higher. */
	static final double DOUBTFUL_READINGS_SCORE = 0.98;
	/** So many of the five nearest in signal space have to be on the sample's floor. */
	static final int FLOOR_VOTES = 3;

	/**
	 * Whether it marks a sample as one to look at. Only what tells faulty samples from sound ones does: on five simulated surveys
	 * the area under its ROC curve was 0.85 and more. The others say where a sample fits, and foretell neither faults nor what
	 * approving costs; docs/doubts.md has the figures.
	 */
	public boolean isMark() {
		return this == PLACE_DOUBTFUL || this == READINGS_DOUBTFUL;
	}

	/** In a word or two. */
	public String word() {
		return switch (this) {
		case NEAREST_DIFFERS -> "differs";
		case OTHER_FLOOR -> Messages.Warning_otherFloor;
		case FAR -> "far";
		case PLACE_DOUBTFUL -> "place";
		case READINGS_DOUBTFUL -> "readings";
		case TIGHT_MARGIN -> "tight";
		};
	}

	/** For a person, with the numbers. */
	public String text(Evidence e) {
		return switch (this) {
		case NEAREST_DIFFERS -> e.nearestCluster() < 0 ? Messages.Warning_noLabelledSampleIsNear
				: Words.bind(Messages.Warning_itsNearestLabelledSampleIs, e.nearestCluster(), e.cluster());
		case OTHER_FLOOR -> Words.bind(Messages.Warning_clusterHasNoSampleOn, e.cluster());
		case FAR ->
			String.format(Locale.ROOT, Messages.Warning_theClusterSNearestSample, e.floorMetres());
		case PLACE_DOUBTFUL -> String.format(Locale.ROOT,
				Messages.Warning_itsPlaceMayBeWrong,
				e.placeErrorMetres(),
				e.floorVotes(), e.floorVoters());
		case READINGS_DOUBTFUL -> String.format(Locale.ROOT,
				Messages.Warning_itsReadingsMayBeWrong,
				e.overlap(),
				e.levelDeficitDb());
		case TIGHT_MARGIN -> String.format(Locale.ROOT, Messages.Warning_anotherClusterFitsAlmostAs, e.margin());
		};
	}
}
