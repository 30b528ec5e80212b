package org.cairnfield.curation.samples;

import java.util.Arrays;

import org.cairnfield.model.values.Labels;

/** Cluster and role that a split gives the samples of a list. */
public final class ClusterMarks {

	/** No split. */
	public static final ClusterMarks NONE = new ClusterMarks(Labels.NONE, new int[0]);

	private final Labels labels;
	private final int[] labelOf;

	private ClusterMarks(Labels labels, int[] labelOf) {
		this.labels = labels;
		this.labelOf = labelOf;
	}

	/** Both are sorted by sample within a survey, so that one walk along both does. */
	public static ClusterMarks of(SampleRows rows, Labels labels) {
		int[] labelOf = new int[rows.size()];
		Arrays.fill(labelOf, -1);
		for (int p = 0; p < rows.parts().size(); p++) {
			SampleRows.Part part = rows.parts().get(p);
			int label = firstOf(labels, part.survey());
			for (int i = rows.first(p); i < rows.first(p + 1); i++) {
				String id = part.table().id(rows.row(i));
				while (isOf(labels, label, part.survey()) && labels.sample(label).compareTo(id) < 0) {
					label++;
				}
				if (isOf(labels, label, part.survey()) && labels.sample(label).equals(id)) {
					labelOf[i] = label;
				}
			}
		}
		return new ClusterMarks(labels, labelOf);
	}

	private static boolean isOf(Labels labels, int label, String survey) {
		return label < labels.size() && labels.survey(label).equals(survey);
	}

	private static int firstOf(Labels labels, String survey) {
		int low = 0;
		int high = labels.size();
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (labels.survey(middle).compareTo(survey) < 0) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	/** Whether the split has the sample. */
	public boolean has(int index) {
		return index < labelOf.length && labelOf[index] >= 0;
	}

	/** Number of the cluster, {@link Labels#NOISE} for noise; only where it {@link #has} it. */
	public int cluster(int index) {
		return labels.cluster(labelOf[index]);
	}

	/** "core", "border" or "noise"; empty where the split does not have the sample. */
	public String role(int index) {
		return has(index) ? labels.role(labelOf[index]).toString() : "";
	}
}
