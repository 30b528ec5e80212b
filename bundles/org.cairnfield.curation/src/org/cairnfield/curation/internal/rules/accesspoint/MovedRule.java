package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.change.ChangeLimits;
import org.cairnfield.core.change.Move;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.internal.rules.evidence.Epochs;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.Topic;

/**
 * Access points that hang elsewhere than in the campaign before, as the timeline tells them, see {@link SiteChange}.
 * <p>
 * No remedy is offered. On five simulated campuses neither leaving out the readings from before the move nor setting
 * the access point aside made a position better; the former made one campus 0.03 m of 3.21 m worse, since its old
 * samples then seem not to hear what stands near them now.
 */
public final class MovedRule extends DescribedRule {

	private static final Threshold LEVEL = new Threshold("level of the test, over all access points of a site",
			ChangeLimits.MOVED_LEVEL, "",
			standard(
					"one site in a thousand has an access point named by chance; half and double find the same on simulated campuses"));
	private static final Threshold CHANGE = new Threshold("middle change of level at the same places",
			ChangeLimits.MOVED_DB, "dB",
			onCampuses("3.5 and 14 find the same"));
	private static final Threshold TIMES = new Threshold("times the change of the site's access points",
			ChangeLimits.MOVED_TIMES_USUAL,
			onCampuses("1 and 3 find the same"));
	private static final Threshold METRES = new Threshold("how far its loudest place has moved",
			ChangeLimits.MOVED_METRES, "m",
			onCampuses("4 and 16 find the same"));
	private static final Threshold FEWEST_PLACES = new Threshold("places surveyed both times that heard it",
			ChangeLimits.FEWEST_CHANGES,
			judged("fewer differences tell little"));
	private static final Threshold FEWEST_LOUD = new Threshold("loud places", ChangeLimits.LOUD_PLACES,
			judged("one misplaced sample must not decide"));
	private static final Threshold WITHIN_DB = new Threshold("below its loudest level, and still where it hangs",
			ChangeLimits.NEAR_LOUDEST_DB, "dB",
			judged("some four times the distance in free space"));
	private static final Threshold WELL_DBM = new Threshold("level from which a change counts", ChangeLimits.WELL_DBM,
			"dBm",
			judged("well above what is cut off, so that what is no longer heard hides little"));
	private static final Threshold UNHEARD_DBM = new Threshold("level that stands for not heard",
			ChangeLimits.UNHEARD_DBM, "dBm",
			judged("about the weakest that handsets report"));

	public MovedRule() {
		super("moved-access-point", "An access point that was moved",
				"Samples from before the move contradict those from after it. Survey again where it was and where it is now, and"
						+ " set the old samples aside then; to leave out its old readings alone helps nobody.",
				Severity.WARNING, Topic.ACCESS_POINT, RuleScope.SITE);
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(
				List.of(LEVEL, CHANGE, TIMES, METRES, FEWEST_PLACES, FEWEST_LOUD, WITHIN_DB, WELL_DBM, UNHEARD_DBM),
				SeasonChange.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Epochs epochs = Epochs.of(input);
		if (epochs.all().size() < 2) {
			return RuleOutcome.notApplicable(input.unit() + " has no surveys of two dates weeks apart");
		}
		Walking walking = Walking.of(input);
		List<Finding> findings = new ArrayList<>();
		int places = 0;
		for (int later = 1; later < epochs.all().size(); later++) {
			SiteChange change = SeasonChange.of(input, later);
			places = Math.max(places, change.places());
			if (change.places() >= SeasonChange.FEWEST_PLACES.count()) {
				for (Move move : change.moves()) {
					if (!walking.is(input.map().map().accessPoints().indexOf(move.address()))) {
						findings.add(finding(input, epochs, later, move));
					}
				}
			}
		}
		return places < SeasonChange.FEWEST_PLACES.count()
				? RuleOutcome.notApplicable("hardly a place of " + input.unit() + " was surveyed at two dates")
				: RuleOutcome.found(findings);
	}

	private Finding finding(RuleInput input, Epochs epochs, int later, Move move) {
		SurveyedMap map = input.map();
		String message = String.format(Locale.ROOT,
				"%s was loudest at %s on %s and at %s on %s; at %d places surveyed both times its level changed by %s in"
						+ " the middle, that of others by %s.",
				move.address(), words(move.then()), epochs.all().get(later - 1).last(), words(move.now()),
				epochs.all().get(later).first(),
				move.places(), RuleWords.decibels(move.changeDb()), RuleWords.decibels(move.usualDb()));
		return Finding.of(this).message(message)
				.about(new Subject.OfAccessPoint(move.address()), map.siteNamed(input.unit()))
				.figure("places", move.places(), "").figure("change", move.changeDb(), "dB")
				.figure("usual change", move.usualDb(), "dB")
				.figure("moved", move.metres(), "m").figure("floors", move.floors(), "")
				.figure("statistic", move.statistic(), "").build();
	}

	private static String words(Move.Loudest loudest) {
		return String.format(Locale.ROOT, "floor %d %s", loudest.floor(), RuleWords.place(loudest.x(), loudest.y()));
	}
}
