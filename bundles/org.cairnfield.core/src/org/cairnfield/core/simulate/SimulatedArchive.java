package org.cairnfield.core.simulate;

import java.util.List;

/**
 * Surveys simulated together, and what was planted in them.
 *
 * @param campus  as it was when the first survey was made
 * @param surveys in the order in which they were made
 * @param truth   every planted fault, survey by survey
 */
public record SimulatedArchive(Campus campus, List<SimulatedSurvey> surveys, List<PlantedFault> truth) {

	public SimulatedArchive {
		surveys = List.copyOf(surveys);
		truth = List.copyOf(truth);
	}

	/** The surveys of one role. */
	public List<SimulatedSurvey> surveys(SimulatedSurvey.Role role) {
		return surveys.stream().filter(s -> s.role() == role).toList();
	}

	/** The survey of that name. */
	public SimulatedSurvey survey(String name) {
		return surveys.stream().filter(s -> s.name().equals(name)).findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no survey " + name));
	}

	/** The planted faults of one kind. */
	public List<PlantedFault> truth(FaultKind kind) {
		return truth.stream().filter(f -> f.kind() == kind).toList();
	}
}
