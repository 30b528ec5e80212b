package org.cairnfield.core.change;

import java.util.Collection;

/**
 * How likely a survey hears an access point at a place where so many samples of another survey did, judged by the access points
 * that both heard somewhere. It is learnt from the very pair of surveys, so a device that hears less, or a place that is met less
 * exactly, makes it smaller and does not look as if access points were gone.
 */
final class Rehearing {

	/** Lower ends of the classes of shares above none: up to a tenth, a third, a half, nine tenths, all. */
	private static final double[] FROM = { 0, 0.11, 0.31, 0.5, 0.71, 0.91 };

	private final double[] probability = new double[FROM.length];
	private final boolean forwards;

	private Rehearing(boolean forwards) {
		this.forwards = forwards;
	}

	/** @param forwards whether the later survey is to hear what the earlier one did; else the other way round */
	static Rehearing of(Collection<Presence> all, boolean forwards) {
		int[] places = new int[FROM.length];
		int[] heard = new int[FROM.length];
		for (Presence one : all) {
			for (int i = 0; i < one.size() && one.stayed(); i++) {
				if (one.share(i, forwards) > 0) {
					int c = at(one.share(i, forwards));
					places[c]++;
					heard[c] += one.share(i, !forwards) > 0 ? 1 : 0;
				}
			}
		}
		Rehearing found = new Rehearing(forwards);
		for (int c = 0; c < FROM.length; c++) {
			found.probability[c] = (heard[c] + 0.5) / (places[c] + 1); // the estimate of Jeffreys' prior: never 0, never 1
		}
		return found;
	}

	private static int at(double share) {
		int c = 0;
		while (c + 1 < FROM.length && share >= FROM[c + 1]) {
			c++;
		}
		return c;
	}

	/** How likely it is that one which is still there is heard nowhere; 1 for one that is heard. */
	double silence(Presence one) {
		double silence = 1;
		for (int i = 0; i < one.size(); i++) {
			if (one.share(i, !forwards) > 0) {
				return 1;
			}
			silence *= 1 - probability[at(one.share(i, forwards))];
		}
		return silence;
	}
}
