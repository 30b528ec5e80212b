package org.cairnfield.core.simulate;

import java.time.Instant;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/** Radio maps of any size, for measuring rules and running times. */
public final class RandomMap {

	private RandomMap() {
	}

	/**
	 * Exactly {@code samples} samples spread evenly over all floors, one device, one day, nothing planted.
	 *
	 * @param samples at least one a floor
	 */
	public static RadioMap of(long seed, CampusSize size, int samples, Workers workers) {
		return of(seed, size, samples, "spread", workers);
	}

	/** Another survey of the same campus on another day: chance stops of a wandering visitor, for testing. */
	public static RadioMap testOf(long seed, CampusSize size, int samples, Workers workers) {
		return of(seed, size, samples, "wander", workers);
	}

	private static RadioMap of(long seed, CampusSize size, int samples, String walk, Workers workers) {
		Campus campus = Campus.random(seed, size);
		int floors = size.sites() * size.floorsPerSite();
		int most = (samples + floors - 1) / floors;
		boolean wander = walk.equals("wander");
		SurveyPlan plan = SurveyPlan.of(walk, "spring", wander ? Walk.wander(most, 2.5) : Walk.spread(most),
				SurveyDevice.of("guide", 0), Instant.parse("2031-04-07T08:00:00Z"));
		RadioMap all = new Surveyor(campus, RadioEnvironment.museum(), seed).surveyAll(plan, workers);
		// A floor may have one too many: leave out as many of the floors' last stops as it takes.
		int surplus = all.size() - samples;
		return surplus == 0 ? all : all.where(s -> s % most != most - 1 || s / most >= surplus);
	}
}
