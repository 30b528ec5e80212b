package org.cairnfield.core.change;

/**
 * An access point that hangs elsewhere than before.
 *
 * @param places    that both surveys visited and one of them heard it well at
 * @param changeDb  middle change of its level there
 * @param usualDb   the same of all access points of the site
 * @param statistic of the test of Kolmogorov and Smirnov, its changes against all
 * @param then      where it was loudest
 */
public record Move(String address, int places, double changeDb, double usualDb, double statistic, Loudest then,
		Loudest now) {

	/** The centre of its loud places on the floor where it is loudest, by amplitude; metres in the frame of the floor. */
	public record Loudest(int floor, double x, double y) {
	}

	/** How far, in the plane. */
	public double metres() {
		return Math.hypot(now.x - then.x, now.y - then.y);
	}

	/** By how many floors, upwards. */
	public int floors() {
		return now.floor - then.floor;
	}
}
