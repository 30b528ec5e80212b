package org.cairnfield.curation.review;

import java.util.Objects;
import java.util.Set;

import org.cairnfield.curation.propose.QueueOrder;

/**
 * How the queue is listed. Immutable.
 *
 * @param closed headings whose rows are not listed
 */
public record QueueSettings(QueueFilter filter, QueueShown shown, QueueGrouping grouping, QueueOrder order,
		Set<String> closed) {

	/** All, marked ones first. */
	public static final QueueSettings USUAL = new QueueSettings(QueueFilter.NONE, QueueShown.ALL, QueueGrouping.NONE,
			QueueOrder.MARKED_FIRST, Set.of());

	public QueueSettings {
		Objects.requireNonNull(filter);
		closed = Set.copyOf(closed);
	}

	public QueueSettings withFilter(QueueFilter other) {
		return new QueueSettings(other, shown, grouping, order, closed);
	}

	public QueueSettings withShown(QueueShown other) {
		return new QueueSettings(filter, other, grouping, order, closed);
	}

	/** Other groups are all open. */
	public QueueSettings withGrouping(QueueGrouping other) {
		return new QueueSettings(filter, shown, other, order, Set.of());
	}

	public QueueSettings withOrder(QueueOrder other) {
		return new QueueSettings(filter, shown, grouping, other, closed);
	}

	public QueueSettings withClosed(Set<String> others) {
		return new QueueSettings(filter, shown, grouping, order, others);
	}
}
