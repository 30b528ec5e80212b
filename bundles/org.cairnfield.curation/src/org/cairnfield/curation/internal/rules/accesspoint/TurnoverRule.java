package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.Reason.judged;
import static org.cairnfield.curation.rules.Reason.onCampuses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.rules.RuleWords;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.internal.rules.evidence.AccessPoints;
import org.cairnfield.curation.internal.rules.evidence.Epochs;
import org.cairnfield.model.values.Count;

/** Access points that are gone, or new, since the last campaign at a site: heard well at one, not at all at the other. */
public final class TurnoverRule extends DescribedRule {

	public static final Parameter LEVEL = Parameter.number("heard-dbm", "level at which it was heard", -80, -100, -30, "dBm",
			onCampuses("-70 finds the same, -90 has a precision of 0.18 for those gone"));
	public static final Parameter PLACES = Parameter.count("fewest-places", "places heard at that level", 3, 1, 1000,
			onCampuses("6 finds the same, 2 has a precision of 0.33 for new ones"));

	private static final Threshold FEWEST_PAIRS = new Threshold("places surveyed both times", 20, judged("fewer do not show what is usual"));

	private final boolean vanished;

	private TurnoverRule(boolean vanished, String id, String title, String explanation) {
		super(id, title, explanation, Severity.NOTE, Topic.ACCESS_POINT, RuleScope.SITE, LEVEL, PLACES);
		this.vanished = vanished;
	}

	/** Heard in the last campaign but one, not in the last. */
	public static TurnoverRule vanished() {
		return new TurnoverRule(true, "vanished-access-point", "Access points gone since the last survey",
				"Older samples expect an access point that no device will hear again.");
	}

	/** Heard in the last campaign, not in the one before. */
	public static TurnoverRule appeared() {
		return new TurnoverRule(false, "new-access-point", "Access points new since the last survey",
				"Older samples do not know an access point that devices hear now, and look farther off than they are.");
	}

	@Override
	protected List<Threshold> fixed() {
		return Threshold.all(List.of(FEWEST_PAIRS), SeasonPair.THRESHOLDS, Walking.THRESHOLDS);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Epochs epochs = Epochs.of(input);
		int last = epochs.all().size() - 1;
		if (last < 1) {
			return RuleOutcome.notApplicable(input.unit() + " has no surveys of two dates weeks apart");
		}
		SeasonPair pair = SeasonPair.of(input, last);
		if (pair.size() < FEWEST_PAIRS.count()) {
			return RuleOutcome.notApplicable("hardly a place of " + input.unit() + " was surveyed at the last two dates");
		}
		List<String> names = new ArrayList<>();
		List<Integer> found = new ArrayList<>();
		Walking walking = Walking.of(input);
		int[] places = pair.places(vanished, settings.of(LEVEL));
		for (int a = 0; a < input.map().map().accessPointCount(); a++) {
			boolean otherwise = vanished ? pair.isHeardNow(a) : pair.wasHeardThen(a);
			if (places[a] >= settings.countOf(PLACES) && !otherwise && !walking.is(a)) {
				names.add(input.map().map().accessPoints().get(a));
				found.add(a);
			}
		}
		return RuleOutcome.found(names.isEmpty() ? List.of() : List.of(finding(input, epochs, last, names, found, settings)));
	}

	private Finding finding(RuleInput input, Epochs epochs, int last, List<String> names, List<Integer> found,
			Settings settings) {
		String message = String.format(Locale.ROOT, "%s of %s, heard at %s dBm or more at several places %s %s, %s %s: %s.",
				Count.of(names.size(), "access point"), input.unit(), RuleWords.number(settings.of(LEVEL)),
				vanished ? "until" : "from", vanished ? epochs.all().get(last - 1).last() : epochs.all().get(last).first(),
				names.size() == 1 ? "was" : "were",
				vanished ? "not heard since" : "not heard before, at places surveyed both times", RuleWords.list(names));
		Finding.Builder finding = Finding.of(this).message(message)
				.about(names.stream().sorted().map(Subject.OfAccessPoint::new).toList())
				.about(input.map().siteNamed(input.unit())).figure("access points", names.size(), "");
		return vanished ? finding.remedy(dropped(input, found)).build() : finding.build();
	}

	private static Remedy dropped(RuleInput input, List<Integer> found) {
		SurveyedMap map = input.map();
		AccessPoints heard = AccessPoints.of(input);
		List<Remedy.Reading> readings = new ArrayList<>();
		for (int a : found) {
			for (int i = 0; i < heard.heardBy(a); i++) {
				readings.add(new Remedy.Reading(map.sampleId(heard.sample(a, i)), map.map().accessPoints().get(a)));
			}
		}
		return new Remedy.DropReadings(readings, "gone since the last survey");
	}
}
