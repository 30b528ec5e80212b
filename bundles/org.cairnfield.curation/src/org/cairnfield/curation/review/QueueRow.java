package org.cairnfield.curation.review;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

import org.cairnfield.core.text.Words;
import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.values.SampleKey;

/**
 * One noise sample in the queue.
 *
 * @param band     name of the band of its strength; empty below all
 * @param site     name of the site; empty where the sample is gone
 * @param level    of the floor where the sample is said to be; null where it is gone
 * @param assigned names of those who are to review it
 */
public record QueueRow(Evidence evidence, String band, String site, Integer level, List<String> assigned) {

	public QueueRow {
		assigned = List.copyOf(assigned);
	}

	/** Where the sample is said to be, for a person; empty where it is gone. */
	public String floor() {
		return level == null ? "" : Words.bind(Messages.QueueRow_floor, site.isEmpty() ? "" : site + ", ", level);
	}

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

	/** By how much the cluster beats the next best. */
	public String margin() {
		return !evidence.made() || Double.isNaN(evidence.margin()) ? "–"
				: doubted(Warning.TIGHT_MARGIN) + String.format(Locale.ROOT, "%.3f", evidence.margin());
	}

	/** The cluster of the nearest labelled sample, such as "= C7" where that is the one proposed, "≠ C3" where not. */
	public String nearest() {
		return evidence.nearestCluster() < 0 || !evidence.made() ? "–"
				: (evidence.agrees() ? "= C" : "≠ C") + evidence.nearestCluster();
	}

	/** Whether correlation and nearest sample say the same. */
	private String agreement() {
		return !evidence.made() ? "–" : evidence.agrees() ? "agree" : Messages.QueueRow_differ;
	}

	/** Distance on the floor to the cluster's nearest sample. */
	public String floorDistance() {
		return !evidence.made() ? "–"
				: Double.isNaN(evidence.floorMetres()) ? Messages.QueueRow_none
						: doubted(Warning.FAR) + String.format(Locale.ROOT, "%.1f m", evidence.floorMetres());
	}

	/** How many of those nearest in signal space are on the sample's floor. */
	public String floorVotes() {
		return evidence.floorVoters() == 0 ? "–" : evidence.floorVotes() + "/" + evidence.floorVoters();
	}

	/** How many of all samples are less doubtful in place. */
	public String place() {
		return doubted(Warning.PLACE_DOUBTFUL) + percent(evidence.placeScore());
	}

	/** How many of all samples are less doubtful in readings. */
	public String readings() {
		return doubted(Warning.READINGS_DOUBTFUL) + percent(evidence.readingsScore());
	}

	/** Change of the error where approving it alone changes a position. */
	public String effect() {
		double metres = evidence.effect().changeWhereAffectedMetres();
		if (!evidence.made() || Double.isNaN(metres)) {
			return "–";
		}
		String digits = String.format(Locale.ROOT, "%.2f m", Math.abs(metres));
		return (digits.equals("0.00 m") ? "±" : metres < 0 ? "−" : "+") + digits;
	}

	/** The labelled sample that it correlates best with, without its survey. */
	public String carrier() {
		return evidence.carrier() == null ? "–" : evidence.carrier().sample();
	}

	private String doubted(Warning warning) {
		return warning.isMark() && evidence.warnings().contains(warning) ? "▲ " : "";
	}

	private static String percent(double share) {
		return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
	}

	/** Whether a person is to review it. */
	boolean isAssignedTo(String person) {
		return assigned.stream().anyMatch(name -> LedgerEntry.isSame(name, person));
	}

	/** All that is to be known before the evidence is read: where it is, its carrier, and each warning in full. */
	public String summary() {
		StringJoiner text = new StringJoiner("\n");
		text.add(key() + (floor().isEmpty() ? "" : ", " + floor()));
		if (evidence.carrier() != null) {
			text.add(Words.bind(Messages.QueueRow_carrier, evidence.carrier()));
		}
		if (!assigned.isEmpty()) {
			text.add(Words.bind(Messages.QueueRow_assignedTo, String.join(", ", assigned)));
		}
		evidence.warnings().forEach(warning -> text.add((warning.isMark() ? "▲ " : "· ") + warning.text(evidence)));
		return text.toString();
	}

	/** Short names of the warnings, the gravest first. */
	public String warnings() {
		StringJoiner all = new StringJoiner(", ");
		evidence.warnings().forEach(warning -> all.add(warning.word()));
		return all.length() == 0 ? "" : (evidence.marks().isEmpty() ? "" : "▲ ") + all;
	}

	/** All columns but the state, for the filter. */
	String text() {
		return String.join(" ", key().toString(), strength(), cluster(), band, floor(), agreement(), nearest(),
				floorDistance(), carrier(), warnings());
	}
}
