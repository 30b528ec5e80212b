package org.cairnfield.curation.effect;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/** A map beside others on questions that none of them holds. */
public final class MapComparison {

	private final RadioMap before;
	private final RadioMap questions;
	private final int[][] then;

	private MapComparison(RadioMap before, RadioMap questions, int[][] then) {
		this.before = before;
		this.questions = questions;
		this.then = then;
	}

	/** @param questions samples with known places; each is taken for independent of the others */
	public static MapComparison from(RadioMap before, RadioMap questions, Workers workers) {
		return new MapComparison(before, questions, NearestOf.find(before, questions, 1, workers));
	}

	/** What comes of taking another map. */
	public MapEffect to(RadioMap after, Workers workers) {
		int[][] now = NearestOf.find(after, questions, 1, workers);
		PairedErrors errors = new PairedErrors();
		for (int q = 0; q < questions.size(); q++) {
			errors.add(q, Answer.at(before, then[q][0], questions, q), Answer.at(after, now[q][0], questions, q));
		}
		return errors.effect();
	}
}
