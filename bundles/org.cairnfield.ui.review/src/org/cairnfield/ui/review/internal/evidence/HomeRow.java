package org.cairnfield.ui.review.internal.evidence;

import java.util.ArrayList;
import java.util.List;

import org.cairnfield.curation.propose.Effect;
import org.cairnfield.curation.propose.Evidence;

/**
 * What a home of a noise sample would do to training positions that were held out, compared with leaving the sample out, in words
 * short enough for a table.
 *
 * @param home      a cluster or the pool
 * @param positions how many change, of how many
 * @param error     change of the error there in metres, with its 95 % interval; after ≈ where no change is measurable
 * @param compared  fingerprints compared more a query
 */
record HomeRow(String home, String positions, String error, String compared) {

	/** The cluster proposed, that of the nearest labelled sample where it is another one, and the pool. */
	static List<HomeRow> of(Evidence e) {
		List<HomeRow> rows = new ArrayList<>();
		if (e.made()) {
			rows.add(of("C" + e.cluster(), e.outlook().proposed()));
		}
		if (!e.agrees() && e.nearestCluster() >= 0) {
			rows.add(of("C" + e.nearestCluster(), e.outlook().nearest()));
		}
		rows.add(of("pool", e.outlook().pool()));
		return rows;
	}

	private static HomeRow of(String home, Effect effect) {
		if (effect.queries() == 0) {
			return new HomeRow(home, Messages.HomeRow_noneAsked, "unknown", "unknown");
		}
		double interval = effect.halfWidthMetres() * effect.queries() / effect.affected();
		return new HomeRow(
				home, effect.affected() + "/" + effect.queries(), effect.affected() == 0 ? Messages.HomeRow_noChange
						: (effect.isMeasurable() ? "" : "≈ ")
								+ EvidenceText.signed(effect.changeWhereAffectedMetres(), 2) + " ± "
								+ EvidenceText.number(interval, 2, ""),
				EvidenceText.signed(effect.comparisonsAdded(), 2));
	}
}
