package org.cairnfield.archive.history;

import org.cairnfield.model.values.Sample;

/**
 * A sample that was added, removed or changed.
 *
 * @param before null if it was added
 * @param after  null if it was removed
 */
public record SampleChange(Sample before, Sample after) {

	/** Id of the sample in its survey. */
	public String id() {
		return after == null ? before.id() : after.id();
	}

	public boolean isAdded() {
		return before == null;
	}

	public boolean isRemoved() {
		return after == null;
	}

	private boolean isChanged() {
		return before != null && after != null;
	}

	/** Whether it left the map, with a reason. */
	public boolean isSetAside() {
		return isChanged() && before.isKept() && !after.isKept();
	}

	/** Whether it came back into the map. */
	public boolean isTakenBack() {
		return isChanged() && !before.isKept() && after.isKept();
	}

	/** Whether it is set aside as before, for another reason. */
	public boolean isReasonChanged() {
		return isChanged() && !before.isKept() && !after.isKept() && !before.reason().equals(after.reason());
	}

	/** Whether its position or floor differs. */
	public boolean isMoved() {
		return isChanged() && (before.xMetres() != after.xMetres() || before.yMetres() != after.yMetres()
				|| before.floorLevel() != after.floorLevel());
	}

	/** Whether its time differs. */
	public boolean isRetimed() {
		return isChanged() && before.timeMillis() != after.timeMillis();
	}

	/** Whether any reading differs. */
	public boolean hasOtherReadings() {
		return isChanged() && !before.readings().equals(after.readings());
	}
}
