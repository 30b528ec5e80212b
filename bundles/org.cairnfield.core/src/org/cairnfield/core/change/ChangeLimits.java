package org.cairnfield.core.change;

/** The numbers by which two surveys are compared. */
public final class ChangeLimits {

	/** How far apart samples of one place may be, in metres: two walks on grids of three metres, one between the other, still share places. */
	public static final double SAME_PLACE_METRES = 2.5;
	/** Of the access points said to be gone or new, so many may be wrong. */
	public static final double FALSE_ONES = 0.01;
	/** One counts as gone or new only if it was so loud, in dBm, at {@link #LOUD_PLACES}: what is fainter may be just too faint for another device. */
	public static final double TOLD_DBM = -80;
	/** A place where at least such a share of the samples hears an access point counts as one of its own. */
	public static final double STEADY = 0.5;
	/** An access point counts for whether a site has changed where it has so many places of its own. */
	public static final int STEADY_PLACES = 4;
	/**
	 * Where more of those are gone or new, by the lower end of the interval, the site has changed. On an open set of twelve surveys of
	 * one floor the lower ends were 0.15 and more at the three changes, 0.08 and less otherwise.
	 */
	public static final double CHANGED_SHARE = 0.12;

	/** The level that stands for not heard, in dBm. */
	public static final double UNHEARD_DBM = -92;
	/** A change of level counts where it was that strong at one of the two times: what is cut off below hides little then. */
	public static final double WELL_DBM = -75;
	/** So many places where it changed are needed to call an access point moved. */
	public static final int FEWEST_CHANGES = 8;
	/** Level of the test for a move: in one site of a thousand an access point is named by chance. */
	public static final double MOVED_LEVEL = 0.001;
	/** Its levels changed by so many dB in the middle … */
	public static final double MOVED_DB = 7;
	/** … and by so many times what is usual at the site … */
	public static final double MOVED_TIMES_USUAL = 1.5;
	/** … and where it is loudest lies so many metres away, or on another floor. */
	public static final double MOVED_METRES = 8;
	/** So far below its loudest level it is still near where it hangs, in dB. */
	public static final double NEAR_LOUDEST_DB = 12;
	/** So many loud places: one sample with a wrong floor must not decide where it is loudest. */
	public static final int LOUD_PLACES = 3;

	private ChangeLimits() {
	}
}
