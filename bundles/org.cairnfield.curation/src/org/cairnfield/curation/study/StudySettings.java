package org.cairnfield.curation.study;

import java.time.Duration;
import java.util.List;

/**
 * How a study is done.
 *
 * @param methods that are set side by side; plain matching is always among them
 * @param most    time that a method may take on a map, choosing its setting included
 * @param seed    of all that is drawn
 */
public record StudySettings(List<StudyMethod> methods, Duration most, long seed) {

	/** Time for a method on a map, unless told otherwise. */
	public static final Duration USUAL_TIME = Duration.ofMinutes(10);

	public StudySettings {
		List<StudyMethod> asked = List.copyOf(methods);
		methods = StudyMethod.all().stream().filter(method -> method.isPlain() || asked.contains(method)).toList();
	}

	/** All methods. */
	public static StudySettings usual(long seed) {
		return new StudySettings(StudyMethod.all(), USUAL_TIME, seed);
	}
}
