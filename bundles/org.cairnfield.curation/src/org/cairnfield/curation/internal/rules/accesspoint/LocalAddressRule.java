package org.cairnfield.curation.internal.rules.accesspoint;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import org.cairnfield.model.values.Count;

/**
 * Addresses that are not from a vendor's block: the U/L bit of the first octet is set (RFC 9542 section 2.1). A hint
 * and no proof, as virtual networks of fixed access points have such addresses too.
 */
public final class LocalAddressRule extends DescribedRule {

	public LocalAddressRule() {
		super("local-address", Messages.LocalAddressRule_locallyAdministeredAddresses,
				Messages.LocalAddressRule_aPhoneSHotspotInvents,
				Severity.NOTE,
				Topic.ACCESS_POINT, RuleScope.ARCHIVE);
	}

	@Override
	public RuleOutcome check(RuleInput input, Settings settings, Workers workers) {
		SurveyedMap map = input.map();
		AccessPoints heard = AccessPoints.of(input);
		Set<String> local = new TreeSet<>();
		int addresses = 0;
		for (int a = 0; a < map.map().accessPointCount(); a++) {
			Optional<MacAddress> address = MacAddress.find(map.map().accessPoints().get(a));
			addresses += address.isPresent() ? 1 : 0;
			if (heard.heardBy(a) > 0 && address.filter(m -> m.isLocal() && m.canBeBssid()).isPresent()) {
				local.add(map.map().accessPoints().get(a));
			}
		}
		if (addresses == 0) {
			return RuleOutcome.notApplicable(Messages.LocalAddressRule_accessPointsAreNotNamed);
		}
		if (local.isEmpty()) {
			return RuleOutcome.found(List.of());
		}
		String message = String.format(Locale.ROOT, Messages.LocalAddressRule_ofLocallyAdministered,
				Count.of(local.size(), "address", "addresses"), addresses, local.size() == 1 ? "is" : "are",
				RuleWords.list(local));
		return RuleOutcome.found(List.of(Finding.of(this).message(message)
				.about(local.stream().map(Subject.OfAccessPoint::new).toList()).figure("addresses", local.size(), "")
				.remedy(new Remedy.SetAsideAccessPoints(List.copyOf(local),
						Messages.LocalAddressRule_locallyAdministeredAddress))
				.build()));
	}
}
