package org.cairnfield.ui.tests.wander;

/**
 * Something that a person does with mouse and keys.
 *
 * @param weight how often it is done, compared with others
 */
record Act(String name, int weight, Doing doing) {

	/** The doing of it. */
	@FunctionalInterface
	interface Doing {

		/** @throws NotNow where it cannot be done now */
		void with(Dice dice) throws Exception;
	}
}
