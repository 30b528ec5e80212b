package org.cairnfield.curation.internal.rules.accesspoint;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.task.Workers;
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
import org.cairnfield.curation.internal.rules.evidence.AccessPoints;

/** Addresses that no access point can have: group addresses and zero (RFC 9542 section 2.1). */
public final class ImpossibleAddressRule extends DescribedRule {

	public ImpossibleAddressRule() {
		super("impossible-address", Messages.ImpossibleAddressRule_addressesThatNoAccessPoint,
				Messages.ImpossibleAddressRule_aGroupAddressOrZero,
				Severity.ERROR, Topic.ACCESS_POINT, RuleScope.ARCHIVE);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		AccessPoints heard = AccessPoints.of(input);
		Set<String> bad = new TreeSet<>();
		for (int a = 0; a < map.map().accessPointCount(); a++) {
			String name = map.map().accessPoints().get(a);
			if (heard.heardBy(a) > 0 && MacAddress.find(name).filter(m -> !m.canBeBssid()).isPresent()) {
				bad.add(name);
			}
		}
		if (bad.isEmpty()) {
			return RuleOutcome.found(List.of());
		}
		String message = String.format(Locale.ROOT, Messages.ImpossibleAddressRule_noAccessPointCanHave,
				RuleWords.list(bad));
		return RuleOutcome.found(List.of(Finding.of(this).message(message)
				.about(bad.stream().map(Subject.OfAccessPoint::new).toList()).figure("addresses", bad.size(), "")
				.remedy(new Remedy.SetAsideAccessPoints(List.copyOf(bad),
						Messages.ImpossibleAddressRule_notTheAddressOfAn))
				.build()));
	}
}
