package org.cairnfield.ui.review.internal.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.scope.Companion;
import org.cairnfield.ui.scope.CompanionRole;
import org.eclipse.osgi.util.NLS;

/** What the plan shows beside the sample in hand: its carrier, and the nearest member of the cluster that is proposed. */
final class PlanCompanions {

	private PlanCompanions() {
	}

	/**
	 * @param evidence null where it is not there yet
	 * @param find     a sample in the archive; null where it is gone
	 */
	static List<Companion> of(Evidence evidence, Function<SampleKey, SampleRef> find) {
		List<Companion> companions = new ArrayList<>();
		if (evidence == null) {
			return companions;
		}
		String nearest = NLS.bind(Messages.PlanCompanions_nearestOfC, evidence.cluster());
		boolean both = evidence.carrier() != null && evidence.carrier().equals(evidence.floorMember());
		add(companions, find.apply(evidence.carrier()), CompanionRole.CARRIER,
				both && evidence.made() ? NLS.bind(Messages.PlanCompanions_carrier, nearest) : "carrier");
		if (evidence.made() && !both) {
			add(companions, find.apply(evidence.floorMember()), CompanionRole.MEMBER, nearest);
		}
		return companions;
	}

	private static void add(List<Companion> companions, SampleRef sample, CompanionRole role, String label) {
		if (sample != null) {
			companions.add(new Companion(sample, role, label));
		}
	}
}
