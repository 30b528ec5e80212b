package org.cairnfield.curation.internal.rules.accesspoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.change.AccessPointFate;
import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
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

/** Access points that are gone, or new, since the last campaign at a site, as the timeline tells them, see {@link SiteChange}. */
public final class TurnoverRule extends DescribedRule {

	private final boolean vanished;

	private TurnoverRule(boolean vanished, String id, String title, String explanation) {
		super(id, title, explanation, Severity.NOTE, Topic.ACCESS_POINT, RuleScope.SITE);
		this.vanished = vanished;
	}

	/** Heard in the last campaign but one, not in the last. */
	public static TurnoverRule vanished() {
		return new TurnoverRule(true, "vanished-access-point", Messages.TurnoverRule_accessPointsGoneSinceThe,
				Messages.TurnoverRule_olderSamplesExpectAnAccess);
	}

	/** Heard in the last campaign, not in the one before. */
	public static TurnoverRule appeared() {
		return new TurnoverRule(false, "new-access-point", Messages.TurnoverRule_accessPointsNewSinceThe,
				Messages.TurnoverRule_olderSamplesDoNotKnow);
	}

	@Override
	protected List<Threshold> fixed() {
		return SeasonChange.THRESHOLDS;
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		Epochs epochs = Epochs.of(input);
		int last = epochs.all().size() - 1;
		if (last < 1) {
			return RuleOutcome.notApplicable(Words.bind(Messages.TurnoverRule_hasNoSurveysOfTwo, input.unit()));
		}
		SiteChange change = SeasonChange.of(input, last);
		if (change.places() < SeasonChange.FEWEST_PLACES.count()) {
			return RuleOutcome
					.notApplicable(Words.bind(Messages.TurnoverRule_hardlyAPlaceOfWas, input.unit()));
		}
		Walking walking = Walking.of(input);
		List<AccessPointFate> found = (vanished ? change.with(Fate.VANISHED, Fate.REPLACED)
				: change.with(Fate.APPEARED)).stream()
				.filter(fate -> !walking.is(input.map().map().accessPoints().indexOf(fate.address()))).toList();
		return RuleOutcome.found(found.isEmpty() ? List.of() : List.of(finding(input, epochs, last, found)));
	}

	private Finding finding(RuleInput input, Epochs epochs, int last, List<AccessPointFate> found) {
		List<String> names = found.stream().map(AccessPointFate::address).toList();
		long replaced = found.stream().filter(fate -> fate.fate() == Fate.REPLACED).count();
		String message = String.format(Locale.ROOT, Messages.TurnoverRule_ofHeard,
				Count.of(names.size(), Messages.TurnoverRule_accessPoint), input.unit(),
				vanished ? "until" : "from",
				vanished ? epochs.all().get(last - 1).last() : epochs.all().get(last).first(),
				names.size() == 1 ? "was" : "were",
				vanished ? Messages.TurnoverRule_notHeardSinceAtPlaces
						: Messages.TurnoverRule_notHeardBeforeAtPlaces,
				RuleWords.list(names),
				replaced == 0 ? ""
						: Words.bind(Messages.TurnoverRule_forOfThemAnotherOne, replaced));
		Finding.Builder finding = Finding.of(this).message(message)
				.about(names.stream().map(Subject.OfAccessPoint::new).toList())
				.about(input.map().siteNamed(input.unit()))
				.figure(Messages.TurnoverRule_accessPoints, names.size(), "");
		return vanished ? finding.remedy(dropped(input, names)).build() : finding.build();
	}

	private static Remedy dropped(RuleInput input, List<String> names) {
		SurveyedMap map = input.map();
		AccessPoints heard = AccessPoints.of(input);
		List<Remedy.Reading> readings = new ArrayList<>();
		for (String name : names) {
			int a = map.map().accessPoints().indexOf(name);
			for (int i = 0; i < heard.heardBy(a); i++) {
				readings.add(new Remedy.Reading(map.sampleId(heard.sample(a, i)), name));
			}
		}
		return new Remedy.DropReadings(readings, Messages.TurnoverRule_goneSinceTheLastSurvey);
	}
}
