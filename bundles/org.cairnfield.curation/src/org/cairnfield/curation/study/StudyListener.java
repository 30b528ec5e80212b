package org.cairnfield.curation.study;

import java.time.Duration;

import org.cairnfield.core.text.Words;

/** Hears how a study gets on, on the thread that does it. */
public interface StudyListener {

	/** Hears nothing. */
	StudyListener NONE = new StudyListener() {
	};

	/**
	 * How far a study is.
	 *
	 * @param map    under study
	 * @param method likewise
	 * @param done   rows that are done
	 * @param of     rows in all
	 * @param left   time that the others will take, as those done tell; null before anything can be said
	 */
	record Step(String map, StudyMethod method, int done, int of, Duration left) {

		/** For a person. */
		@Override
		public String toString() {
			return Words.bind(Messages.StudyListener_of, map, method.code(), done + 1, of,
					left == null ? "" : Words.bind(Messages.StudyListener_left, about(left)));
		}

		private static String about(Duration left) {
			long seconds = left.toSeconds();
			return seconds < 90 ? Words.bind(Messages.StudyListener_aboutS, Math.max(1, seconds))
					: Words.bind(Messages.StudyListener_aboutMin, Math.round(seconds / 60.0));
		}
	}

	/** A row is begun; one that was kept is not. */
	default void begun(Step step) {
	}

	/** A row is done. @param kept whether it was, before the study was begun */
	default void done(StudyRow row, boolean kept) {
	}
}
