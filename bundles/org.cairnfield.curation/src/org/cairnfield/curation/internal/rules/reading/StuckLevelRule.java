package org.cairnfield.curation.internal.rules.reading;

import static org.cairnfield.curation.rules.Reason.onCampuses;
import static org.cairnfield.curation.rules.Reason.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.core.text.Words;
import org.cairnfield.curation.rules.DescribedRule;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.RuleOutcome;
import org.cairnfield.curation.rules.Parameter;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Threshold;
import org.cairnfield.curation.rules.Topic;
import org.cairnfield.curation.internal.rules.evidence.AccessPoints;
import org.cairnfield.curation.internal.rules.evidence.Ints;
import org.cairnfield.curation.internal.rules.evidence.Spots;
import org.cairnfield.model.values.Count;

/**
 * An access point read at one and the same level all over a survey. With noise of 3 dB ten readings agree by chance
 * once in a hundred million times, and places differ by more than noise.
 */
public final class StuckLevelRule extends DescribedRule {

	public static final Parameter PLACES = Parameter.count("fewest-places", Messages.StuckLevelRule_placesAtWhichItWas,
			8, 3,
			10_000,
			onCampuses(Messages.StuckLevelRule_at4PlacesEverySecond));

	private static final Threshold WEAKEST_DBM = new Threshold(Messages.StuckLevelRule_weakerLevelsAreCodesWhich,
			-104, "dBm",
			standard(Messages.StuckLevelRule_belowWhatAReceiverCan));

	public StuckLevelRule() {
		super("stuck-level", Messages.StuckLevelRule_oneAccessPointAtOne,
				Messages.StuckLevelRule_aLevelThatNeverChanges,
				Severity.WARNING, Topic.READING, RuleScope.SURVEY, PLACES);
	}

	@Override
	protected List<Threshold> fixed() {
		return List.of(WEAKEST_DBM);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		RadioMap map = input.map().map();
		AccessPoints heard = AccessPoints.of(input);
		Spots spots = Spots.of(input);
		List<Finding> findings = new ArrayList<>();
		for (int a = 0; a < map.accessPointCount(); a++) {
			if (heard.heardBy(a) < settings.countOf(PLACES) || !isConstant(map, heard, a)) {
				continue;
			}
			Ints places = new Ints();
			boolean[] seen = new boolean[spots.places()];
			for (int i = 0; i < heard.heardBy(a); i++) {
				int place = spots.placeOf(spots.spotOf(heard.sample(a, i)));
				if (!seen[place]) {
					seen[place] = true;
					places.add(place);
				}
			}
			if (places.size() >= settings.countOf(PLACES)) {
				findings.add(finding(input, a, heard, places.size()));
			}
		}
		return RuleOutcome.found(findings);
	}

	private static boolean isConstant(RadioMap map, AccessPoints heard, int a) {
		int level = map.rssiDbm(heard.reading(a, 0));
		if (level < WEAKEST_DBM.count()) {
			return false;
		}
		for (int i = 1; i < heard.heardBy(a); i++) {
			if (map.rssiDbm(heard.reading(a, i)) != level) {
				return false;
			}
		}
		return true;
	}

	private Finding finding(RuleInput input, int a, AccessPoints heard, int places) {
		Selected all = new Selected(input.map());
		for (int i = 0; i < heard.heardBy(a); i++) {
			all.add(heard.sample(a, i), heard.reading(a, i));
		}
		String address = input.map().map().accessPoints().get(a);
		String message = String.format(Locale.ROOT, Messages.StuckLevelRule_readsDbmInAllOf, address,
				all.lowestDbm(), Count.of(all.size(), "sample"), input.unit(), Count.of(places, "place"));
		return Finding.of(this).message(message)
				.about(new Subject.OfAccessPoint(address), new Subject.OfSurvey(input.unit())).beside(all.subjects())
				.figure("level", all.lowestDbm(), "dBm").figure("samples", all.size(), "")
				.figure("places", places, "")
				.remedy(all.drop(Words.bind(Messages.StuckLevelRule_theLevelOfIsStuck, address))).build();
	}
}
