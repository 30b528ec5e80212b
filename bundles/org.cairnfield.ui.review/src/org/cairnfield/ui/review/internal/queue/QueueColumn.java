package org.cairnfield.ui.review.internal.queue;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import org.cairnfield.curation.propose.QueueOrder;
import org.cairnfield.curation.review.QueueRow;
import org.cairnfield.curation.review.ReviewStandings;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;

/** What the queue says of a sample. */
enum QueueColumn {
	SAMPLE(Messages.QueueColumn_sample, 126, SWT.LEFT, QueueOrder.SAMPLE, Messages.QueueColumn_noiseSample,
			QueueRow::sample),
	STRENGTH("r", 40, SWT.RIGHT, QueueOrder.STRENGTH, Messages.QueueColumn_howWellItCorrelatesWith, QueueRow::strength),
	CLUSTER("To", 40, SWT.LEFT, QueueOrder.CLUSTER, Messages.QueueColumn_clusterThatIsProposed, QueueRow::cluster),
	NEAREST(Messages.QueueColumn_nearest, 64, SWT.LEFT, null,
			Messages.QueueColumn_clusterOfTheNearestLabelled, QueueRow::nearest),
	FLOOR_DISTANCE(Messages.QueueColumn_onFloor, 72, SWT.RIGHT, QueueOrder.FLOOR_DISTANCE,
			Messages.QueueColumn_distanceToTheClusterS, QueueRow::floorDistance),
	STATE(Messages.QueueColumn_state, 104, SWT.LEFT, null, Messages.QueueColumn_whatWasDecided, null),
	WARNINGS(Messages.QueueColumn_warnings, 190, SWT.LEFT, QueueOrder.MARKED_FIRST,
			Messages.QueueColumn_whatToLookAtBefore, QueueRow::warnings),
	MARGIN(Messages.QueueColumn_margin, 60, SWT.RIGHT, QueueOrder.MARGIN, Messages.QueueColumn_byHowMuchRBeats,
			QueueRow::margin),
	FLOOR(Messages.QueueColumn_floor, 44, SWT.RIGHT, null, Messages.QueueColumn_howManyOfThoseThat,
			QueueRow::floorVotes),
	PLACE(Messages.QueueColumn_place, 60, SWT.RIGHT, QueueOrder.PLACE, Messages.QueueColumn_doubtInItsPlaceSo,
			QueueRow::place),
	READINGS(Messages.QueueColumn_readings, 72, SWT.RIGHT, QueueOrder.READINGS,
			Messages.QueueColumn_doubtInItsReadingsSo, QueueRow::readings),
	EFFECT(Messages.QueueColumn_effect, 62, SWT.RIGHT, QueueOrder.EFFECT, Messages.QueueColumn_changeOfTheFloorS,
			QueueRow::effect),
	CARRIER(Messages.QueueColumn_carrier, 126, SWT.LEFT, null, Messages.QueueColumn_theLabelledSampleThatIt,
			QueueRow::carrier);

	/** From left to right: what decides comes first, what the evidence says as well comes last. */
	static final List<QueueColumn> LEFT_TO_RIGHT = List.of(SAMPLE, STATE, STRENGTH, MARGIN, CLUSTER, NEAREST,
			FLOOR_DISTANCE, FLOOR, PLACE, READINGS,
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
		return order == null ? tip : NLS.bind(Messages.QueueColumn_clickToSort, tip);
	}

	/** Texts of a row, in the order of the columns here. */
	static String[] texts(QueueRow row, ReviewStandings standings) {
		return Stream.of(values()).map(each -> each == STATE ? standings.text(row.key()) : each.text.apply(row))
				.toArray(String[]::new);
	}
}
