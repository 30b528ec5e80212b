package org.cairnfield.curation.study;

import java.time.Duration;
import java.util.List;

/** Reckons how long the rest of a study takes: methods by their weights, maps by their size, at the pace so far. */
final class TimeLeft {

	/** Between linear and quadratic, as measured from 5,000 to 20,000 samples. */
	private static final double GROWTH = 1.5;

	private double ahead;
	private double done;
	private double seconds;

	TimeLeft(List<StudyMap> maps, List<StudyMethod> methods) {
		maps.forEach(map -> methods.forEach(method -> ahead += cost(map, method)));
	}

	private static double cost(StudyMap map, StudyMethod method) {
		return method.weight() * Math.pow(map.training().size(), GROWTH);
	}

	/** A row was there before. */
	void kept(StudyMap map, StudyMethod method) {
		ahead -= cost(map, method);
	}

	void did(StudyMap map, StudyMethod method, double inSeconds) {
		ahead -= cost(map, method);
		done += cost(map, method);
		seconds += inSeconds;
	}

	/** Null before a row is done. */
	Duration left() {
		return done == 0 ? null : Duration.ofMillis(Math.round(1000 * seconds / done * Math.max(0, ahead)));
	}
}
