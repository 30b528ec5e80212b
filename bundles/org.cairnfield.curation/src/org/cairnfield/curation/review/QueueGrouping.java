package org.cairnfield.curation.review;

import java.util.function.Function;

import org.cairnfield.core.text.Words;

/** By what the queue is divided under headings. */
public enum QueueGrouping {
	NONE("nothing", row -> ""),
	CLUSTER("cluster", row -> Words.bind(Messages.QueueGrouping_cluster, row.cluster().replace("C", ""))),
	BAND("band",
			row -> row.band().isEmpty() ? Messages.QueueGrouping_belowAllBands
					: Words.bind(Messages.QueueGrouping_band, row.band())),
	MARK("mark",
			row -> row.evidence().marks().isEmpty() ? Messages.QueueGrouping_noMark
					: Messages.QueueGrouping_markedLookCloser),
	FLOOR("floor", QueueRow::floor);

	private final String title;
	private final Function<QueueRow, String> heading;

	QueueGrouping(String title, Function<QueueRow, String> heading) {
		this.title = title;
		this.heading = heading;
	}

	/** For a person. */
	public String title() {
		return title;
	}

	/** The heading that a row stands under; unplaced samples stand apart whatever the grouping. */
	public String heading(QueueRow row) {
		return row.evidence().made() ? heading.apply(row) : UNPLACED;
	}

	/** Heading of those without a proposal. */
	public static final String UNPLACED = Messages.QueueGrouping_unplacedNoProposal;
}
