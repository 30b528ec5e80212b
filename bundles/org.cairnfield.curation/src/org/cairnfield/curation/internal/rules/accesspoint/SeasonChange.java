package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.curation.internal.rules.evidence.Epochs;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Threshold;

/** What became of the access points of a site from one epoch to the next: the comparison that its timeline shows, of whole epochs. */
final class SeasonChange {

	/** Fewer do not show what is usual. */
	static final Threshold FEWEST_PLACES = new Threshold(Messages.SeasonChange_placesSurveyedBothTimes, 20,
			judged(Messages.SeasonChange_fewerDoNotShowWhat));
	private static final Threshold METRES = new Threshold(Messages.SeasonChange_takenForTheSamePlace,
			ChangeLimits.SAME_PLACE_METRES,
			"m",
			judged(Messages.SeasonChange_twoWalksOnGridsOf));
	private static final Threshold FALSE_ONES = new Threshold(
			Messages.SeasonChange_wrongOnesAmongThoseSaid, ChangeLimits.FALSE_ONES, "",
			standard(Messages.SeasonChange_falseDiscoveryRateOfBenjamini));

	/** The numbers that it goes by. */
	static final List<Threshold> THRESHOLDS = Threshold.all(List.of(FEWEST_PLACES, METRES, FALSE_ONES),
			Epochs.THRESHOLDS, Walking.THRESHOLDS);

	/** Those made so far, for all rules that compare seasons. */
	private static final class Known {
		private final Map<Integer, SiteChange> changes = new ConcurrentHashMap<>();
	}

	private SeasonChange() {
	}

	/** @param later index of the later epoch; compared with the one before it */
	static SiteChange of(RuleInput input, int later) {
		return input.shared(Known.class, Known::new).changes.computeIfAbsent(later,
				l -> SiteChange.between(epoch(input, l - 1), epoch(input, l), ChangeLimits.SAME_PLACE_METRES));
	}

	private static RadioMap epoch(RuleInput input, int wanted) {
		Epochs epochs = Epochs.of(input);
		return input.map().map().where(s -> epochs.ofSurvey(input.map().survey(s)) == wanted);
	}
}
