package org.cairnfield.core.distance;

/** The samples that heard each access point, by the step at which they did. Memory: 4 bytes a reading, 4 an access point and step. */
public final class StepLists {

	private final int steps;
	private final int[] start;
	private final int[] member;

	private StepLists(int steps, int[] start, int[] member) {
		this.steps = steps;
		this.start = start;
		this.member = member;
	}

	static StepLists of(Signals signals) {
		int steps = signals.steps();
		int columns = signals.postingStart.length - 1;
		int[] start = new int[columns * steps + 1];
		for (int c = 0; c < columns; c++) {
			for (int p = signals.postingStart[c]; p < signals.postingStart[c + 1]; p++) {
				start[c * steps + signals.postingStep[p] + 1]++;
			}
		}
		for (int i = 1; i < start.length; i++) {
			start[i] += start[i - 1];
		}
		int[] next = start.clone();
		int[] member = new int[signals.postingMember.length];
		for (int c = 0; c < columns; c++) {
			for (int p = signals.postingStart[c]; p < signals.postingStart[c + 1]; p++) {
				member[next[c * steps + signals.postingStep[p]]++] = signals.postingMember[p];
			}
		}
		return new StepLists(steps, start, member);
	}

	/**
	 * Adds up weights of the samples that heard an access point at a step; four sets of weights at once.
	 *
	 * @param weights by place within the component that hears it, four in a row
	 * @param sums    sums[at] to sums[at + 3] are set
	 */
	public void sum(int column, int step, double[] weights, double[] sums, int at) {
		double first = 0;
		double second = 0;
		double third = 0;
		double fourth = 0;
		for (int p = start[column * steps + step], end = start[column * steps + step + 1]; p < end; p++) {
			int from = 4 * member[p];
			first += weights[from];
			second += weights[from + 1];
			third += weights[from + 2];
			fourth += weights[from + 3];
		}
		sums[at] = first;
		sums[at + 1] = second;
		sums[at + 2] = third;
		sums[at + 3] = fourth;
	}
}
