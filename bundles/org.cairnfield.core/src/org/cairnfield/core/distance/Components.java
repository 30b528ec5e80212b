package org.cairnfield.core.distance;

/**
 * Samples grouped so that two of different groups never heard the same access point. Numbered by their
 * first sample; a sample that heard nothing is a component of its own.
 */
public final class Components {

	private final int[] componentOf;
	private final int[] placeOf;
	private final int[] start;
	private final int[] member;

	private Components(int[] componentOf, int[] placeOf, int[] start, int[] member) {
		this.componentOf = componentOf;
		this.placeOf = placeOf;
		this.start = start;
		this.member = member;
	}

	static Components of(SignalRows rows, int columns) {
		int n = rows.size();
		DisjointSets sets = new DisjointSets(n);
		int[] firstToHear = new int[columns];
		for (int s = 0; s < n; s++) {
			for (int k = rows.start[s]; k < rows.start[s + 1]; k++) {
				int c = rows.column[k];
				if (firstToHear[c] == 0) {
					firstToHear[c] = s + 1;
				} else {
					sets.join(firstToHear[c] - 1, s);
				}
			}
		}
		int[] componentOf = new int[n];
		int count = 0;
		for (int s = 0; s < n; s++) {
			int first = sets.find(s);
			componentOf[s] = first == s ? count++ : componentOf[first];
		}
		int[] start = new int[count + 1];
		for (int c : componentOf) {
			start[c + 1]++;
		}
		for (int c = 0; c < count; c++) {
			start[c + 1] += start[c];
		}
		int[] member = new int[n];
		int[] placeOf = new int[n];
		int[] filled = new int[count];
		for (int s = 0; s < n; s++) {
			int c = componentOf[s];
			placeOf[s] = filled[c]++;
			member[start[c] + placeOf[s]] = s;
		}
		return new Components(componentOf, placeOf, start, member);
	}

	public int count() {
		return start.length - 1;
	}

	/** Number of samples in a component. */
	public int size(int component) {
		return start[component + 1] - start[component];
	}

	/** Number of samples in the largest component. */
	public int largest() {
		int largest = 0;
		for (int c = 0; c < count(); c++) {
			largest = Math.max(largest, size(c));
		}
		return largest;
	}

	public int componentOf(int sample) {
		return componentOf[sample];
	}

	/** Place of a sample within its component, 0 … size − 1, in order of samples. */
	public int placeOf(int sample) {
		return placeOf[sample];
	}

	/** Where a component begins in the list of all samples by component. */
	int firstMember(int component) {
		return start[component];
	}

	/** The sample at a place of a component. */
	public int member(int component, int place) {
		return member[start[component] + place];
	}
}
