package org.cairnfield.curation.review;

import java.util.function.Function;

/** By what the queue is divided under headings. */
public enum QueueGrouping {
	NONE("nothing", row -> ""),
	CLUSTER("cluster", row -> "Cluster " + row.cluster().replace("C", "")),
	BAND("band", row -> row.band().isEmpty() ? "Below all bands" : "Band " + row.band()),
	MARK("mark", row -> row.evidence().marks().isEmpty() ? "No mark" : "Marked: look closer"),
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
	public static final String UNPLACED = "Unplaced: no proposal";
}
