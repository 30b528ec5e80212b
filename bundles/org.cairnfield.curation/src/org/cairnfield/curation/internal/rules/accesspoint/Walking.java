package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.standard;

import java.util.List;
import org.cairnfield.core.stats.Wilson;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;

/** Which access points of a unit come and go within a survey: left to {@link HotspotRule} by the other rules. */
final class Walking {

	private static final Threshold MOST = new Threshold(Messages.Walking_shareOfNeighboursThatMissed, 0.5,
			standard(Messages.Walking_moreThanHalf));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = Threshold.all(List.of(MOST), Absences.THRESHOLDS);

	private final Absences absences;

	private Walking(RuleInput input) {
		absences = new Absences(input, HotspotRule.WELL.usual(), HotspotRule.METRES.value());
	}

	static Walking of(RuleInput input) {
		return input.shared(Walking.class, () -> new Walking(input));
	}

	boolean is(int accessPoint) {
		return isGone(absences, accessPoint, HotspotRule.MISSED.usual(), HotspotRule.LATER.usual());
	}

	/**
	 * Whether more neighbours than that share miss it, beyond chance, and they do so because they came at another time;
	 * or most miss it whenever they came.
	 */
	static boolean isGone(Absences absences, int accessPoint, double share, double later) {
		int asked = absences.asked(accessPoint);
		double low = asked < HotspotRule.FEWEST_ASKED.count() ? 0
				: Wilson.interval(absences.missed(accessPoint), asked, 0.95).low();
		return low >= MOST.value() || low >= share && absences.wentAway(accessPoint) >= later;
	}
}
