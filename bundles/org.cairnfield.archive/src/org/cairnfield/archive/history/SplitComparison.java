package org.cairnfield.archive.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;

/** Compares two states of a split: its parameters and clusters, and what it says of each sample. */
final class SplitComparison {

	private SplitComparison() {
	}

	/** Of a split that only one state has, the samples are not told one by one. */
	static List<ObjectChange> of(Split before, Split after) {
		List<ObjectChange> changes = new ArrayList<>(ObjectComparison.of(before, after));
		if (before == null || after == null) {
			changes.removeIf(change -> change.what().equals("cluster"));
			return changes;
		}
		compare(changes, "label", labels(before), labels(after), label -> label);
		compare(changes, "proposal", proposals(before), proposals(after), SplitComparison::text);
		return changes;
	}

	private static Map<SampleKey, String> labels(Split split) {
		Labels labels = split.getLabels() == null ? Labels.NONE : split.getLabels();
		Map<SampleKey, String> texts = new TreeMap<>();
		for (int row = 0; row < labels.size(); row++) {
			int cluster = labels.cluster(row);
			texts.put(labels.key(row),
					cluster == Labels.NOISE ? "noise"
							: Words.bind(Messages.SplitComparison_cluster, cluster, labels.role(row)));
		}
		return texts;
	}

	private static Map<SampleKey, Proposal> proposals(Split split) {
		Map<SampleKey, Proposal> all = new TreeMap<>();
		for (Proposal proposal : (split.getProposals() == null ? Proposals.NONE : split.getProposals()).all()) {
			all.put(proposal.sample(), proposal);
		}
		return all;
	}

	private static String text(Proposal proposal) {
		return Words.bind(Messages.SplitComparison_clusterRMarginCarrierNearest, proposal.cluster(),
				proposal.strengthR(), proposal.margin(), proposal.carrier(), proposal.nearestCluster());
	}

	private static <V> void compare(List<ObjectChange> changes, String what, Map<SampleKey, V> before,
			Map<SampleKey, V> after,
			Function<V, String> text) {
		Set<SampleKey> keys = new TreeSet<>(before.keySet());
		keys.addAll(after.keySet());
		for (SampleKey key : keys) {
			V old = before.get(key);
			V now = after.get(key);
			if (Objects.equals(old, now)) {
				continue;
			}
			ObjectChange.Way way = old == null ? ObjectChange.Way.ADDED
					: now == null ? ObjectChange.Way.REMOVED : ObjectChange.Way.CHANGED;
			List<FieldChange> fields = way == ObjectChange.Way.CHANGED
					? List.of(new FieldChange(what, text.apply(old), text.apply(now)))
					: List.of();
			changes.add(new ObjectChange(what, key.toString(), way, fields));
		}
	}
}
