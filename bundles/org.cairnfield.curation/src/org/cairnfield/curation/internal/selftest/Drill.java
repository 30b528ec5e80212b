package org.cairnfield.curation.internal.selftest;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cairnfield.curation.internal.rules.accesspoint.HotspotRule;
import org.cairnfield.curation.internal.rules.place.WrongFloorRule;
import org.cairnfield.curation.internal.rules.place.WrongPlaceRule;
import org.cairnfield.curation.internal.rules.sample.JumpRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Subject;

/**
 * How one rule is tried out.
 *
 * @param fault    what it is to find
 * @param strength name of the figure by which its findings are weaker or stronger; empty for none
 */
record Drill(TrialFault fault, String strength) {

	/** So many findings count as much as what the planted faults say. */
	private static final double FEW = 6;
	/** Half a false alarm that might have come: from five faults met nobody can tell more than nine in ten. */
	private static final double DOUBT = 0.5;

	private static final Map<String, Drill> DRILLS = Map.of("wrong-floor",
			new Drill(TrialFault.WRONG_FLOOR, WrongFloorRule.STRENGTH), "wrong-place",
			new Drill(TrialFault.WRONG_PLACE, WrongPlaceRule.STRENGTH), "swapped-axes",
			new Drill(TrialFault.SWAPPED_AXES, ""),
			"jump",
			new Drill(TrialFault.WRONG_PLACE, JumpRule.STRENGTH), "hotspot",
			new Drill(TrialFault.WALKING_SENDER, HotspotRule.STRENGTH), "moved-access-point",
			new Drill(TrialFault.MOVED, "statistic"), "vanished-access-point", new Drill(TrialFault.VANISHED, ""),
			"new-access-point",
			new Drill(TrialFault.APPEARED, ""));

	/** Of a rule that has one. */
	static Optional<Drill> of(String rule) {
		return Optional.ofNullable(DRILLS.get(rule));
	}

	/**
	 * Asks the rule about the copy.
	 *
	 * @param findings those that it has on the map as it is
	 * @return empty where it found nothing that was planted
	 */
	Optional<Expectation> run(Rule rule, Settings settings, List<Finding> findings, RuleInput copy, Planted planted,
			Workers workers) {
		rule.prepare(copy, workers);
		List<Finding> again = rule.check(copy, settings, workers).findings();
		Set<String> before = names(findings);
		Set<String> wanted = new HashSet<>(planted.of(fault));
		wanted.removeAll(before);
		Set<String> now = names(again);
		int met = (int) wanted.stream().filter(now::contains).count();
		now.removeAll(before);
		now.removeAll(planted.any());
		if (met == 0) {
			return Optional.empty();
		}
		double right = (double) met / (met + now.size());
		long count = findings.stream().filter(finding -> !names(List.of(finding)).isEmpty()).count();
		double strong = strength.isEmpty() ? 1
				: Strengths.share(strengths(findings, before), strengths(again, planted.any()));
		double most = met / (met + DOUBT);
		return Optional.of(new Expectation(Math.min(most, right * (count * strong + FEW) / (count + FEW)),
				wanted.size(), met, now.size()));
	}

	/** What findings name: samples or access points. */
	static Set<String> names(Collection<Finding> findings) {
		Set<String> names = new HashSet<>();
		findings.forEach(finding -> finding.subjects().stream()
				.filter(subject -> subject instanceof Subject.OfSample || subject instanceof Subject.OfAccessPoint)
				.forEach(subject -> names.add(subject.label())));
		return names;
	}

	/** Of the findings that name some of these. */
	private double[] strengths(List<Finding> findings, Set<String> some) {
		return findings.stream().filter(finding -> names(List.of(finding)).stream().anyMatch(some::contains))
				.mapToDouble(finding -> finding.figure(strength)).filter(value -> !Double.isNaN(value)).toArray();
	}
}
