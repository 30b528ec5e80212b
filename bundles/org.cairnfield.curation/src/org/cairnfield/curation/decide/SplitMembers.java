package org.cairnfield.curation.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.cairnfield.curation.rules.ContentKeys;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleKey;

/** What follows from the labels of a split alone, computed once for labels that never change. */
final class SplitMembers {

	private final Labels labels;
	private final Map<Integer, Long> keys = new HashMap<>();
	private final List<SampleKey> noise = new ArrayList<>();

	private SplitMembers(Labels labels) {
		this.labels = labels;
		String survey = null;
		long surveyKey = 0;
		for (int row = 0; row < labels.size(); row++) {
			if (labels.cluster(row) == Labels.NOISE) {
				noise.add(labels.key(row));
			} else {
				if (!labels.survey(row).equals(survey)) { // sorted by survey
					survey = labels.survey(row);
					surveyKey = ContentKeys.of(survey);
				}
				long key = ContentKeys.join(surveyKey, ContentKeys.of(labels.sample(row)));
				keys.merge(labels.cluster(row), key, Long::sum); // a sum, for order does not matter
			}
		}
	}

	static SplitMembers of(Split split) {
		return new SplitMembers(labels(split));
	}

	private static Labels labels(Split split) {
		return split.getLabels() == null ? Labels.NONE : split.getLabels();
	}

	/** These, where the split still has the labels that they were made of. */
	SplitMembers upToDate(Split split) {
		return labels == labels(split) ? this : of(split);
	}

	/** A key of which samples a cluster has; 0 for one without. */
	long key(int cluster) {
		return keys.getOrDefault(cluster, 0L);
	}

	/** Whether it has a cluster of that number. */
	boolean has(int cluster) {
		return keys.containsKey(cluster);
	}

	/** The cluster with the samples that a key stands for. */
	OptionalInt cluster(long key) {
		return keys.entrySet().stream().filter(entry -> entry.getValue() == key).mapToInt(Map.Entry::getKey).min();
	}

	/** By survey and sample. */
	List<SampleKey> noise() {
		return noise;
	}
}
