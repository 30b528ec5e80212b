package org.cairnfield.curation.review;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.curation.propose.Effect;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Outlook;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.values.SampleKey;

/** Rows and evidence for tests. */
public final class Rows {

	private Rows() {
	}

	/** Of a proposal on floor 1. */
	public static Evidence evidence(String id, int cluster, double r, Warning... warnings) {
		return evidence(id, true, cluster, r, cluster, warnings);
	}

	/** With the cluster of the nearest labelled sample. */
	public static Evidence evidence(String id, boolean made, int cluster, double r, int nearestCluster,
			Warning... warnings) {
		Set<Warning> all = EnumSet.noneOf(Warning.class);
		all.addAll(Set.of(warnings));
		return new Evidence(new SampleKey("sh-spring", id), 0, made, cluster, r, 0.11, new SampleKey("sh-spring", "C"),
				new SampleKey("sh-spring", "N"), 12, nearestCluster, 1.8, new SampleKey("sh-spring", "M"), true, 0.9, 5,
				5, 2.4, 0.5, 0.8,
				1.2, 3.4, 0.4, outlook(), all);
	}

	/** −0.8 m at 3 of 120 positions in the cluster, nothing elsewhere. */
	private static Outlook outlook() {
		return new Outlook(new Effect(-0.02, 0.01, 3, 120, 0, 0.4), new Effect(0.01, 0.02, 2, 120, 0, 0.3),
				new Effect(0, 0, 0, 120, 0, 1));
	}

	/** On some floor. */
	public static QueueRow row(String id, int cluster, double r, String band, int level) {
		return row(evidence(id, cluster, r), band, level);
	}

	/** At Tide House. */
	public static QueueRow row(Evidence evidence, String band, int level) {
		return new QueueRow(evidence, band, "Tide House", level, List.of("Ada", "Ben"));
	}

	/** A sample for which nothing is proposed. */
	public static QueueRow unplaced(String id) {
		return new QueueRow(evidence(id, false, 3, 0.05, 3), "", "Tide House", 0, List.of());
	}
}
