package org.cairnfield.curation.timeline;

import java.time.LocalDate;
import java.util.List;

import org.cairnfield.core.change.SiteChange;

/**
 * One survey of a site, compared with the surveys of the last date before it.
 *
 * @param survey its id
 * @param before ids of those surveys; none for the first
 * @param change what became of access points since; null where there is no survey before, or no place in common
 * @param error  of a map of the surveys before on this survey
 */
public record TimelineStep(String survey, LocalDate date, List<String> before, SiteChange change, SurveyError error) {

	public TimelineStep {
		before = List.copyOf(before);
	}

	/** Whether a map of the surveys before is to be measured before anybody relies on it. */
	public boolean isChanged() {
		return change != null && change.isChanged();
	}
}
