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
import org.cairnfield.core.text.Words;
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

	private static final Threshold LEVEL = new Threshold(Messages.MovedRule_levelOfTheTestOver,
			ChangeLimits.MOVED_LEVEL, "",
			standard(
					Messages.MovedRule_oneSiteInAThousand));
	private static final Threshold CHANGE = new Threshold(Messages.MovedRule_middleChangeOfLevelAt,
			ChangeLimits.MOVED_DB, "dB",
			onCampuses(Messages.MovedRule_35And14Find));
	private static final Threshold TIMES = new Threshold(Messages.MovedRule_timesTheChangeOfThe,
			ChangeLimits.MOVED_TIMES_USUAL,
			onCampuses(Messages.MovedRule_1And3FindThe));
	private static final Threshold METRES = new Threshold(Messages.MovedRule_howFarItsLoudestPlace,
			ChangeLimits.MOVED_METRES, "m",
			onCampuses(Messages.MovedRule_4And16FindThe));
	private static final Threshold FEWEST_PLACES = new Threshold(Messages.MovedRule_placesSurveyedBothTimesThat,
			ChangeLimits.FEWEST_CHANGES,
			judged(Messages.MovedRule_fewerDifferencesTellLittle));
	private static final Threshold FEWEST_LOUD = new Threshold(Messages.MovedRule_loudPlaces, ChangeLimits.LOUD_PLACES,
			judged(Messages.MovedRule_oneMisplacedSampleMustNot));
	private static final Threshold WITHIN_DB = new Threshold(Messages.MovedRule_belowItsLoudestLevelAnd,
			ChangeLimits.NEAR_LOUDEST_DB, "dB",
			judged(Messages.MovedRule_someFourTimesTheDistance));
	private static final Threshold WELL_DBM = new Threshold(Messages.MovedRule_levelFromWhichAChange,
			ChangeLimits.WELL_DBM,
			"dBm",
			judged(Messages.MovedRule_wellAboveWhatIsCut));
	private static final Threshold UNHEARD_DBM = new Threshold(Messages.MovedRule_levelThatStandsForNot,
			ChangeLimits.UNHEARD_DBM, "dBm",
			judged(Messages.MovedRule_aboutTheWeakestThatHandsets));

	public MovedRule() {
		super("moved-access-point", Messages.MovedRule_anAccessPointThatWas,
				Messages.MovedRule_samplesFromBeforeTheMove,
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
			return RuleOutcome.notApplicable(Words.bind(Messages.MovedRule_hasNoSurveysOfTwo, input.unit()));
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
				? RuleOutcome.notApplicable(Words.bind(Messages.MovedRule_hardlyAPlaceOfWas, input.unit()))
				: RuleOutcome.found(findings);
	}

	private Finding finding(RuleInput input, Epochs epochs, int later, Move move) {
		SurveyedMap map = input.map();
		String message = String.format(Locale.ROOT,
				Messages.MovedRule_wasLoudestAtOnAnd,
				move.address(), words(move.then()), epochs.all().get(later - 1).last(), words(move.now()),
				epochs.all().get(later).first(),
				move.places(), RuleWords.decibels(move.changeDb()), RuleWords.decibels(move.usualDb()));
		return Finding.of(this).message(message)
				.about(new Subject.OfAccessPoint(move.address()), map.siteNamed(input.unit()))
				.figure("places", move.places(), "").figure("change", move.changeDb(), "dB")
				.figure(Messages.MovedRule_usualChange, move.usualDb(), "dB")
				.figure("moved", move.metres(), "m").figure("floors", move.floors(), "")
				.figure("statistic", move.statistic(), "").build();
	}

	private static String words(Move.Loudest loudest) {
		return String.format(Locale.ROOT, Messages.MovedRule_floor, loudest.floor(),
				RuleWords.place(loudest.x(), loudest.y()));
	}
}
