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

	/** Entries of those that heard an access point at a step: from this one … */
	int from(int column, int step) {
		return start[column * steps + step];
	}

	/** … to the one before this. */
	int to(int column, int step) {
		return start[column * steps + step + 1];
	}

	/** Place of an entry's sample within the component that hears the access point. */
	int member(int entry) {
		return member[entry];
	}
}
