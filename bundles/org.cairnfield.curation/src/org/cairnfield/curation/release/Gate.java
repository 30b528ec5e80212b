package org.cairnfield.curation.release;

import java.util.OptionalDouble;

/** A condition that a map must meet before it is released. */
public enum Gate {

	/** Findings of severity error that nobody has waived. */
	FINDINGS("findings-error", Messages.Gate_openFindingsOfSeverityError, true, 0),
	/** Proposals of which nobody has said the last word. */
	PROPOSALS("proposals-open", Messages.Gate_proposalsUndecidedDeferredDisputed, true, 0),
	/** Verdicts that still need a second reviewer. */
	SECOND_REVIEW("second-review-open", Messages.Gate_verdictsThatAwaitASecond, true, 0),
	/** Mean error as released, over that of the plain nearest sample. */
	ERROR("error-to-plain", Messages.Gate_meanErrorRatioToPlain, true, 1.05),
	/** Share of test samples put on the right floor of the right site. */
	FLOOR("floor-hit-rate", Messages.Gate_shareOnTheRightFloor, false, 0.9),
	/** Fingerprints compared, over those of plain matching. */
	COST("cost-to-plain", Messages.Gate_fingerprintsComparedRatioToPlain, true, 0.25),
	/** Mean error over the upper bound of the last release's 95 % interval, on the same test samples. */
	REGRESSION("error-to-last", Messages.Gate_meanErrorRatioToThe, true, 1),
	/** Mean error as released. */
	MEAN("mean-error-m", Messages.Gate_meanErrorInMetres, true),
	/** 95 % of the test samples are put nearer than this. */
	P95("p95-error-m", Messages.Gate_95OfTheErrorsIn, true),
	/** Mean error on the floor that has the largest. */
	FLOOR_MEAN("floor-mean-error-m", Messages.Gate_meanErrorOfTheWorst, true),
	/** Likewise of 95 % of the test samples. */
	FLOOR_P95("floor-p95-error-m", Messages.Gate_95OfTheErrorsOn, true),
	/** Share put on the right floor, on the floor that has the smallest. */
	FLOOR_HITS("floor-hit-rate-each", Messages.Gate_shareOnTheRightFloor2, false),
	/** Mean error at the site that has the largest. */
	SITE_MEAN("site-mean-error-m", Messages.Gate_meanErrorOfTheWorst2, true),
	/** Likewise of 95 % of the test samples. */
	SITE_P95("site-p95-error-m", Messages.Gate_95OfTheErrorsAt, true),
	/** Share put on the right floor, at the site that has the smallest. */
	SITE_HITS("site-hit-rate-each", Messages.Gate_shareOnTheRightFloor3, false),
	/** Sites whose map the latest survey contradicts so that a remedy for its age helps, see {@link org.cairnfield.curation.timeline.AgeRemedies}. */
	AGE("contradicted-sites", Messages.Gate_sitesWhoseMapTheLatest, true);

	private final String key;
	private final String title;
	private final boolean atMost;
	private final double usual;

	/** A gate that is asked only where the archive names it: its bound depends on what the map is for. */
	Gate(String key, String title, boolean atMost) {
		this(key, title, atMost, Double.NaN);
	}

	Gate(String key, String title, boolean atMost, double usual) {
		this.key = key;
		this.title = title;
		this.atMost = atMost;
		this.usual = usual;
	}

	/** As the archive's file names it. */
	public String key() {
		return key;
	}

	/** What its figure is. */
	public String title() {
		return title;
	}

	/** Whether the bound is the largest figure that meets it; otherwise the smallest. */
	public boolean atMost() {
		return atMost;
	}

	/** The bound where the archive names no gates at all; empty for a gate that is not asked then. */
	public OptionalDouble usualBound() {
		return Double.isNaN(usual) ? OptionalDouble.empty() : OptionalDouble.of(usual);
	}

	/** A line of the archive's file that asks this gate. */
	String example() {
		return key + (atMost ? Messages.Gate_atMost : Messages.Gate_atLeast)
				+ GateSet.number(usualBound().orElse(this == AGE ? 0 : atMost ? 5 : 0.8));
	}

	/** Whether a figure meets a bound; NaN, which nobody could measure, never does. */
	public boolean meets(double figure, double bound) {
		return atMost ? figure <= bound : figure >= bound;
	}
}
