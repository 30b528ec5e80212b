package org.cairnfield.curation.rules.cleaning;

import java.util.List;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleRegistry;
import org.cairnfield.curation.internal.rules.accesspoint.HotspotRule;
import org.cairnfield.curation.internal.rules.accesspoint.ImpossibleAddressRule;
import org.cairnfield.curation.internal.rules.accesspoint.LocalAddressRule;
import org.cairnfield.curation.internal.rules.accesspoint.MovedRule;
import org.cairnfield.curation.internal.rules.accesspoint.RarelyHeardRule;
import org.cairnfield.curation.internal.rules.accesspoint.SharedRadioRule;
import org.cairnfield.curation.internal.rules.accesspoint.TurnoverRule;
import org.cairnfield.curation.internal.rules.coverage.CoverageGapRule;
import org.cairnfield.curation.internal.rules.device.DeviceOffsetRule;
import org.cairnfield.curation.internal.rules.place.SwappedAxesRule;
import org.cairnfield.curation.internal.rules.place.WrongFloorRule;
import org.cairnfield.curation.internal.rules.place.WrongPlaceRule;
import org.cairnfield.curation.internal.rules.reading.LevelsApartRule;
import org.cairnfield.curation.internal.rules.reading.NotHeardCodeRule;
import org.cairnfield.curation.internal.rules.reading.OutOfRangeRule;
import org.cairnfield.curation.internal.rules.reading.SaturatedRule;
import org.cairnfield.curation.internal.rules.reading.StuckLevelRule;
import org.cairnfield.curation.internal.rules.sample.ContradictorySamplesRule;
import org.cairnfield.curation.internal.rules.sample.DuplicateSurveyRule;
import org.cairnfield.curation.internal.rules.sample.ExactDuplicateRule;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.cairnfield.curation.internal.rules.sample.JumpRule;
import org.cairnfield.curation.internal.rules.sample.OneScanTwoPlacesRule;
import org.cairnfield.curation.internal.rules.sample.OutsideOutlineRule;
import org.cairnfield.curation.internal.rules.sample.RepeatedScanRule;
import org.cairnfield.curation.internal.rules.sample.UnknownFloorRule;

/** All rules that Cairnfield has. A further rule is one more line here. */
public final class CleaningRules {

	private CleaningRules() {
	}

	private static final List<Rule> ALL = List.of(
			new OutOfRangeRule(), new NotHeardCodeRule(), new SaturatedRule(), new StuckLevelRule(),
			new LevelsApartRule(),
			new FewReadingsRule(), new ExactDuplicateRule(), new RepeatedScanRule(), new OneScanTwoPlacesRule(),
			new ContradictorySamplesRule(), new OutsideOutlineRule(), new UnknownFloorRule(), new JumpRule(),
			new DuplicateSurveyRule(),
			new SwappedAxesRule(), new WrongFloorRule(), new WrongPlaceRule(),
			new LocalAddressRule(), new ImpossibleAddressRule(), new RarelyHeardRule(), new HotspotRule(),
			new SharedRadioRule(), new MovedRule(), TurnoverRule.vanished(), TurnoverRule.appeared(),
			new DeviceOffsetRule(), new CoverageGapRule());

	/** The rules by id. */
	public static RuleRegistry registry() {
		return new RuleRegistry(ALL);
	}
}
