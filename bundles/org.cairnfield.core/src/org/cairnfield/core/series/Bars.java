package org.cairnfield.core.series;

import java.io.Serializable;
import java.util.List;

/** Labelled places on an axis, with one bar per group at each. */
public final class Bars implements Serializable {

	private static final long serialVersionUID = 1;

	private final List<String> labels;
	private final List<String> groups;
	private final double[][] values;

	/**
	 * Copies its arguments.
	 *
	 * @param labels of the places, in the order of drawing
	 * @param groups names of the bars at a place, such as "before" and "after"
	 * @param values by group, then place
	 * @throws IllegalArgumentException where the shapes do not agree
	 */
	public Bars(List<String> labels, List<String> groups, double[]... values) {
		if (values.length != groups.size()) {
			throw new IllegalArgumentException(groups.size() + " groups, values of " + values.length);
		}
		this.labels = List.copyOf(labels);
		this.groups = List.copyOf(groups);
		this.values = new double[values.length][];
		for (int g = 0; g < values.length; g++) {
			if (values[g].length != labels.size()) {
				throw new IllegalArgumentException(labels.size() + " labels, but " + values[g].length
						+ " values in group " + groups.get(g));
			}
			this.values[g] = values[g].clone();
		}
	}

	/** Names of the places. */
	public List<String> labels() {
		return labels;
	}

	/** Names of the bars at a place. */
	public List<String> groups() {
		return groups;
	}

	/** How many places. */
	public int size() {
		return labels.size();
	}

	/** The length of a bar. */
	public double value(int group, int place) {
		return values[group][place];
	}
}
