package org.cairnfield.model.values;

import java.util.Objects;

/**
 * One sample, out of its table: a fingerprint at a known place.
 *
 * @param id         unique in its survey, see {@link Ids#isUsableForSample}
 * @param floorLevel −32768 … 32767
 * @param xMetres    in the frame of the site's floors, finite
 * @param yMetres    likewise
 * @param timeMillis since 1970-01-01T00:00Z, or {@link SampleTable#NO_TIME}
 * @param reason     why it is set aside, or null while it is kept
 */
public record Sample(String id, int floorLevel, double xMetres, double yMetres, long timeMillis, String reason,
		Readings readings) {

	/** @throws IllegalArgumentException where a value is out of range, saying which */
	public Sample {
		Objects.requireNonNull(readings);
		SampleChecks.id(id);
		SampleChecks.floorLevel(floorLevel);
		xMetres = SampleChecks.position(xMetres);
		yMetres = SampleChecks.position(yMetres);
		reason = SampleChecks.reason(reason);
	}

	/** Whether it is part of the map. */
	public boolean isKept() {
		return reason == null;
	}
}
