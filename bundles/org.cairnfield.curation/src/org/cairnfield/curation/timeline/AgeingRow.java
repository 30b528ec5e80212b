package org.cairnfield.curation.timeline;

import java.time.LocalDate;

/**
 * A map on a survey that came later than all of its own.
 *
 * @param map    version of the release; empty for the archive as it is
 * @param site   its id
 * @param newest date of the map's newest survey of the site
 * @param survey id of the later one
 * @param error  of the map on it
 */
public record AgeingRow(String map, String site, LocalDate newest, String survey, LocalDate date, SurveyError error) {
}
