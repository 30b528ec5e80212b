package org.cairnfield.core.change;

import java.util.Collection;

/**
 * How likely a survey hears an access point at a place where so many samples of another survey did, so strongly, judged by the
 * access points that both heard somewhere. It is learnt from the very pair of surveys, so a device that hears less, or a place
 * that is met less exactly, makes it smaller and does not look as if access points were gone.
 */
final class Rehearing {

	/** Lower ends of the classes of shares above none. */
	private static final double[] SHARES = { 0, 0.31, 0.71 };
	/** Lower ends of the classes of levels, in dBm. */
	private static final double[] LEVELS = { Double.NEGATIVE_INFINITY, -92, -88, -84, -80, -75, -70, -60 };

	private final double[][] probability = new double[SHARES.length][LEVELS.length];
	private final boolean forwards;

	private Rehearing(boolean forwards) {
		this.forwards = forwards;
	}

	/** @param forwards whether the later survey is to hear what the earlier one did; else the other way round */
	static Rehearing of(Collection<Presence> all, boolean forwards) {
		int[][] places = new int[SHARES.length][LEVELS.length];
		int[][] heard = new int[SHARES.length][LEVELS.length];
		for (Presence one : all) {
			for (int i = 0; i < one.size() && one.stayed(); i++) {
				if (one.share(i, forwards) > 0) {
					int s = at(SHARES, one.share(i, forwards));
					int l = at(LEVELS, one.level(i, forwards));
					places[s][l]++;
					heard[s][l] += one.share(i, !forwards) > 0 ? 1 : 0;
				}
			}
		}
		Rehearing found = new Rehearing(forwards);
		for (int s = 0; s < SHARES.length; s++) {
			for (int l = 0; l < LEVELS.length; l++) {
				found.probability[s][l] = (heard[s][l] + 0.5) / (places[s][l] + 1); // the estimate of Jeffreys' prior: never 0, never 1
			}
		}
		return found;
	}

	private static int at(double[] from, double value) {
		int c = 0;
		while (c + 1 < from.length && value >= from[c + 1]) {
			c++;
		}
		return c;
	}

	/** How likely it is that one which is still there is heard nowhere; 1 for one that is heard, or was never loud. */
	double silence(Presence one) {
		if (!one.isLoud(forwards)) {
			return 1;
		}
		double silence = 1;
		for (int i = 0; i < one.size(); i++) {
			if (one.share(i, !forwards) > 0) {
				return 1;
			}
			silence *= 1 - probability[at(SHARES, one.share(i, forwards))][at(LEVELS, one.level(i, forwards))];
		}
		return silence;
	}
}
