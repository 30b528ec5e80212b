package org.cairnfield.ui.review.internal.queue;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import org.cairnfield.curation.propose.QueueOrder;
import org.cairnfield.curation.review.QueueRow;
import org.cairnfield.curation.review.ReviewStandings;
import org.eclipse.swt.SWT;

/** What the queue says of a sample. */
enum QueueColumn {
	SAMPLE("Sample", 126, SWT.LEFT, QueueOrder.SAMPLE, "Noise sample", QueueRow::sample),
	STRENGTH("r", 40, SWT.RIGHT, QueueOrder.STRENGTH, "How well it correlates with its carrier: where it fits, not whether it is good", QueueRow::strength),
	CLUSTER("To", 40, SWT.LEFT, QueueOrder.CLUSTER, "Cluster that is proposed", QueueRow::cluster),
	NEAREST("Nearest", 64, SWT.LEFT, null,
			"Cluster of the nearest labelled sample: = where it is the one proposed, ≠ where not", QueueRow::nearest),
	FLOOR_DISTANCE("On floor", 72, SWT.RIGHT, QueueOrder.FLOOR_DISTANCE,
			"Distance to the cluster's nearest sample on the same floor; none where the cluster is not on it", QueueRow::floorDistance),
	STATE("State", 104, SWT.LEFT, null, "What was decided", null),
	WARNINGS("Warnings", 190, SWT.LEFT, QueueOrder.MARKED_FIRST, "What to look at before approving; the evidence says it with figures", QueueRow::warnings),
	MARGIN("Margin", 60, SWT.RIGHT, QueueOrder.MARGIN, "By how much r beats the next best cluster; ▲ where another fits almost as well", QueueRow::margin),
	FLOOR("Floor", 44, SWT.RIGHT, null, "How many of those that hear the same are on the floor where it is said to be", QueueRow::floorVotes),
	PLACE("Place", 60, SWT.RIGHT, QueueOrder.PLACE, "Doubt in its place: so many of all samples are less doubtful; ▲ where to look", QueueRow::place),
	READINGS("Readings", 72, SWT.RIGHT, QueueOrder.READINGS, "Doubt in its readings: so many of all samples are less doubtful; ▲ where to look", QueueRow::readings),
	EFFECT("Effect", 62, SWT.RIGHT, QueueOrder.EFFECT, "Change of the floor's mean error if it alone is approved; − is better", QueueRow::effect),
	CARRIER("Carrier", 126, SWT.LEFT, null, "The labelled sample that it correlates best with", QueueRow::carrier);

	/** From left to right: what decides comes first, what the evidence says as well comes last. */
	static final List<QueueColumn> LEFT_TO_RIGHT = List.of(SAMPLE, STATE, STRENGTH, MARGIN, CLUSTER, NEAREST, FLOOR_DISTANCE, FLOOR, PLACE, READINGS,
			EFFECT, CARRIER, WARNINGS);

	private final String title;
	private final int width;
	private final int alignment;
	private final QueueOrder order;
	private final String tip;
	private final Function<QueueRow, String> text;

	QueueColumn(String title, int width, int alignment, QueueOrder order, String tip, Function<QueueRow, String> text) {
		this.title = title;
		this.width = width;
		this.alignment = alignment;
		this.order = order;
		this.tip = tip;
		this.text = text;
	}

	/** Of the header. */
	String title() {
		return title;
	}

	/** In points. */
	int width() {
		return width;
	}

	int alignment() {
		return alignment;
	}

	/** That the header sorts by; null for none. */
	QueueOrder order() {
		return order;
	}

	String tip() {
		return order == null ? tip : tip + ". Click to sort.";
	}

	/** Texts of a row, in the order of the columns here. */
	static String[] texts(QueueRow row, ReviewStandings standings) {
		return Stream.of(values()).map(each -> each == STATE ? standings.text(row.key()) : each.text.apply(row)).toArray(String[]::new);
	}
}
