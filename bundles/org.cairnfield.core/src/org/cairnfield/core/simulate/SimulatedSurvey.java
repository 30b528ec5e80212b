package org.cairnfield.core.simulate;

import java.time.LocalDate;
import java.util.List;

import org.cairnfield.core.map.RadioMap;

/**
 * A survey of one site as it would arrive in a file, faults included.
 *
 * @param name      of the survey, unique among those simulated together
 * @param role      whether it goes into the map or measures it
 * @param site      name of the site
 * @param device    name of the device
 * @param surveyor  initials
 * @param map       its samples; sites, floors and places as the surveyor noted them
 * @param sampleIds an id for every sample, in order
 */
public record SimulatedSurvey(String name, Role role, String site, String device, String surveyor, LocalDate date,
		RadioMap map, List<String> sampleIds) {

	/** What a survey is for. */
	public enum Role {
		/** Goes into the map. */
		TRAINING,
		/** Walked another day and another way, to measure positioning. */
		TEST
	}

	public SimulatedSurvey {
		sampleIds = List.copyOf(sampleIds);
		if (sampleIds.size() != map.size()) {
			throw new IllegalArgumentException(sampleIds.size() + " ids for " + map.size() + " samples");
		}
	}
}
