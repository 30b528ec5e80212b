package org.cairnfield.curation.timeline;

import java.util.List;

/**
 * An access point over the surveys of a timeline.
 *
 * @param shares   by survey: of the places visited where any survey heard it, the share where it was heard, 0 … 1; NaN where no
 *                 such place was visited
 * @param levels   by survey: median level in dBm; NaN where it was not heard
 * @param remark   such as by which one it was replaced and when; may be empty
 */
public record AccessPointCourse(String address, Course course, List<Double> shares, List<Double> levels,
		String remark) {

	public AccessPointCourse {
		shares = List.copyOf(shares);
		levels = List.copyOf(levels);
	}
}
