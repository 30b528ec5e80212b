package org.cairnfield.ui.review.internal.desk;

import java.util.Locale;
import java.util.StringJoiner;

import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.values.SampleKey;

/**
 * One noise sample in the queue.
 *
 * @param band  name of the band of its strength; empty below all
 * @param floor where the sample is said to be, for a person
 */
public record QueueRow(Evidence evidence, String band, String floor) {

	public SampleKey key() {
		return evidence.sample();
	}

	/** Id without its survey, which the tooltip says. */
	public String sample() {
		return key().sample();
	}

	public String strength() {
		return Double.isNaN(evidence.strengthR()) ? "–" : String.format(Locale.ROOT, "%.2f", evidence.strengthR());
	}

	/** Such as "C7". */
	public String cluster() {
		return evidence.made() ? "C" + evidence.cluster() : "–";
	}

	/** Whether correlation and nearest sample say the same. */
	public String agreement() {
		return !evidence.made() ? "–" : evidence.agrees() ? "agree" : "differ !";
	}

	/** Distance on the floor to the cluster's nearest sample. */
	public String floorDistance() {
		return !evidence.made() ? "–" : Double.isNaN(evidence.floorMetres()) ? "other floor"
				: String.format(Locale.ROOT, "%.1f m", evidence.floorMetres());
	}

	/** Short names of the warnings, the gravest first. */
	public String warnings() {
		StringJoiner all = new StringJoiner(", ");
		evidence.warnings().forEach(warning -> all.add(word(warning)));
		return all.length() == 0 ? "" : "▲ " + all;
	}

	/** A warning in a word or two. */
	public static String word(Warning warning) {
		return switch (warning) {
			case NEAREST_DIFFERS -> "differs";
			case OTHER_FLOOR -> "other floor";
			case FAR -> "far";
			case PLACE_DOUBTFUL -> "place";
			case READINGS_DOUBTFUL -> "readings";
			case TIGHT_MARGIN -> "tight";
		};
	}

	/** All columns but the state, for the filter. */
	String text() {
		return String.join(" ", key().toString(), strength(), cluster(), band, floor, agreement(), floorDistance(), warnings());
	}
}
