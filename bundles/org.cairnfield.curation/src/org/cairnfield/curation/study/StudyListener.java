package org.cairnfield.curation.study;

import java.time.Duration;

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
			return map + ", " + method.code() + " (" + (done + 1) + " of " + of
					+ (left == null ? "" : ", " + about(left) + " left") + ")";
		}

		private static String about(Duration left) {
			long seconds = left.toSeconds();
			return seconds < 90 ? "about " + Math.max(1, seconds) + " s"
					: "about " + Math.round(seconds / 60.0) + " min";
		}
	}

	/** A row is begun; one that was kept is not. */
	default void begun(Step step) {
	}

	/** A row is done. @param kept whether it was, before the study was begun */
	default void done(StudyRow row, boolean kept) {
	}
}
