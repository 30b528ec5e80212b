package org.cairnfield.curation.release;

/** A condition that a map must meet before it is released. */
public enum Gate {

	/** Findings of severity error that nobody has waived. */
	FINDINGS("findings-error", "open findings of severity error", true, 0),
	/** Proposals of which nobody has said the last word. */
	PROPOSALS("proposals-open", "proposals undecided, deferred, disputed or stale", true, 0),
	/** Verdicts that still need a second reviewer. */
	SECOND_REVIEW("second-review-open", "verdicts that await a second reviewer", true, 0),
	/** Mean error as released, over that of the plain nearest sample. */
	ERROR("error-to-plain", "mean error, ratio to plain nearest neighbour", true, 1.05),
	/** Share of test samples put on the right floor of the right site. */
	FLOOR("floor-hit-rate", "share on the right floor of the right site", false, 0.9),
	/** Fingerprints compared, over those of plain matching. */
	COST("cost-to-plain", "fingerprints compared, ratio to plain matching", true, 0.25),
	/** Mean error over the upper bound of the last release's 95 % interval, on the same test samples. */
	REGRESSION("error-to-last", "mean error, ratio to the upper 95 % bound of the last release", true, 1);

	private final String key;
	private final String title;
	private final boolean atMost;
	private final double usual;

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

	/** The bound where the archive names none. */
	public double usualBound() {
		return usual;
	}

	/** Whether a figure meets a bound; NaN, which nobody could measure, never does. */
	public boolean meets(double figure, double bound) {
		return atMost ? figure <= bound : figure >= bound;
	}
}
