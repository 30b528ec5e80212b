package org.cairnfield.curation.effect;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/** Two maps side by side on questions that neither holds. */
public final class MapComparison {

	private MapComparison() {
	}

	/** @param questions samples with known places; each is taken for independent of the others */
	public static MapEffect of(RadioMap before, RadioMap after, RadioMap questions, Workers workers) {
		int[][] then = NearestOf.find(before, questions, 1, workers);
		int[][] now = NearestOf.find(after, questions, 1, workers);
		PairedErrors errors = new PairedErrors();
		for (int q = 0; q < questions.size(); q++) {
			errors.add(q, Answer.at(before, then[q][0], questions, q), Answer.at(after, now[q][0], questions, q));
		}
		return errors.effect();
	}
}
