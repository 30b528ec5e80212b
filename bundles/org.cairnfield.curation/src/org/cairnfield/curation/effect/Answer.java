package org.cairnfield.curation.effect;

import org.cairnfield.core.map.RadioMap;

/**
 * Where a question was put.
 *
 * @param metres     plane distance from the truth; NaN at a wrong site, or nowhere
 * @param rightFloor whether on the right floor of the right site
 */
record Answer(double metres, boolean rightFloor) {

	private static final Answer NOWHERE = new Answer(Double.NaN, false);

	/**
	 * At the place of a sample.
	 *
	 * @param sample of the map, or −1 where nothing was found
	 */
	static Answer at(RadioMap map, int sample, RadioMap questions, int question) {
		if (sample < 0 || !map.sites().get(map.site(sample)).equals(questions.sites().get(questions.site(question)))) {
			return NOWHERE;
		}
		return new Answer(Math.hypot(map.x(sample) - questions.x(question), map.y(sample) - questions.y(question)),
				map.floor(sample) == questions.floor(question));
	}

	boolean isAtSite() {
		return !Double.isNaN(metres);
	}
}
