package org.cairnfield.model.values;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cairnfield.core.cluster.Role;

/** Collects {@link Labels}, in any order. Not safe for use by several threads. */
public final class LabelsBuilder {

	private record Row(SampleKey key, int cluster, Role role) {
	}

	private final List<Row> rows = new ArrayList<>();

	LabelsBuilder() {
	}

	/**
	 * @param cluster 0 or more, or {@link Labels#NOISE}
	 * @throws IllegalArgumentException where cluster and role contradict each other
	 */
	public LabelsBuilder add(SampleKey sample, int cluster, Role role) {
		if (cluster < Labels.NOISE || (cluster == Labels.NOISE) != (role == Role.NOISE)) {
			throw new IllegalArgumentException(sample + " is " + role + ", but its cluster is " + cluster);
		}
		rows.add(new Row(sample, cluster, role));
		return this;
	}

	/** @throws IllegalArgumentException where a sample has two labels */
	public Labels build() {
		rows.sort(Comparator.comparing(Row::key));
		int n = rows.size();
		String[] surveys = new String[n];
		String[] samples = new String[n];
		int[] clusters = new int[n];
		byte[] roles = new byte[n];
		for (int i = 0; i < n; i++) {
			Row row = rows.get(i);
			if (i > 0 && row.key.equals(rows.get(i - 1).key)) {
				throw new IllegalArgumentException("two labels for sample " + row.key);
			}
			// one text for all samples of a survey
			surveys[i] = i > 0 && row.key.survey().equals(surveys[i - 1]) ? surveys[i - 1] : row.key.survey();
			samples[i] = row.key.sample();
			clusters[i] = row.cluster;
			roles[i] = (byte) row.role.ordinal();
		}
		return new Labels(surveys, samples, clusters, roles);
	}
}
