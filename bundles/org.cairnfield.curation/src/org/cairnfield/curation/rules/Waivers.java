package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All waivers given, ready to be matched with findings. */
public final class Waivers {

	private final Map<String, List<Waiver>> byRule = new HashMap<>();

	public Waivers(List<Waiver> waivers) {
		waivers.forEach(w -> byRule.computeIfAbsent(w.rule(), r -> new ArrayList<>()).add(w));
	}

	/** The first waiver that covers the finding. */
	public Optional<Waiver> covering(Finding finding) {
		return byRule.getOrDefault(finding.rule(), List.of()).stream().filter(w -> w.covers(finding)).findFirst();
	}

	/** The findings that no waiver covers, in order. */
	public List<Finding> open(List<Finding> findings) {
		return findings.stream().filter(f -> covering(f).isEmpty()).toList();
	}
}
