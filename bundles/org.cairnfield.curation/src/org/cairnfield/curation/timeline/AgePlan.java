package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to do about the map of a site now that a newer survey is there.
 *
 * @param site     its id
 * @param day      of the newer survey
 * @param surveys  ids of the surveys of that day
 * @param error    of the map of all surveys before it on these
 * @param remedies each measured, whether it helps or not
 */
public record AgePlan(String site, LocalDate day, List<String> surveys, SurveyError error, List<AgeRemedy> remedies) {

	public AgePlan {
		surveys = List.copyOf(surveys);
		remedies = List.copyOf(remedies);
	}

	/** Of the remedies that help the one with the least error; none where all had better be left. */
	public Optional<AgeRemedy> best() {
		return remedies.stream().filter(AgeRemedy::isGain)
				.min(Comparator.comparingDouble(each -> each.after().metres()));
	}
}
