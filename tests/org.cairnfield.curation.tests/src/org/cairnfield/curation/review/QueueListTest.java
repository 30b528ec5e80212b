package org.cairnfield.curation.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Set;

import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;

class QueueListTest {

	private final QueueRow a = Rows.row("A", 7, 0.9, "close", 0);
	private final QueueRow lost = Rows.unplaced("U");
	private final QueueRow b = Rows.row("B", 2, 0.6, "fair", 1);
	private final QueueRow c = Rows.row("C", 7, 0.7, "fair", 1);
	private final List<QueueRow> all = List.of(a, lost, b, c);

	private static List<String> text(QueueList list) {
		return list.lines().stream()
				.map(line -> line.isHeading() ? line.heading() + ' ' + line.rows() : line.row().sample()).toList();
	}

	private QueueList list(QueueGrouping grouping, String... closed) {
		return QueueList.of(all, row -> true, grouping, Set.of(closed));
	}

	@Test
	void listsUnplacedSamplesLastUnderTheirHeading() {
		assertEquals(List.of("A", "B", "C", "Unplaced: no proposal 1", "U"), text(list(QueueGrouping.NONE)));
	}

	@Test
	void groupsInTheOrderOfTheFirstRowOfEachGroup() {
		assertEquals(List.of("Cluster 7 2", "A", "C", "Cluster 2 1", "B", "Unplaced: no proposal 1", "U"),
				text(list(QueueGrouping.CLUSTER)));
		assertEquals(List.of("Band close 1", "A", "Band fair 2", "B", "C", "Unplaced: no proposal 1", "U"),
				text(list(QueueGrouping.BAND)));
		assertEquals(
				List.of("Tide House, floor 0 1", "A", "Tide House, floor 1 2", "B", "C", "Unplaced: no proposal 1",
						"U"),
				text(list(QueueGrouping.FLOOR)));
	}

	@Test
	void hidesRowsOfClosedGroupsButCountsThem() {
		QueueList list = list(QueueGrouping.CLUSTER, "Cluster 7");
		assertEquals(List.of("Cluster 7 2", "Cluster 2 1", "B", "Unplaced: no proposal 1", "U"), text(list));
		assertEquals(-1, list.lineOf(a.key()));
		assertEquals(2, list.lineOf(b.key()));
	}

	@Test
	void leavesOutWhatIsNotWanted() {
		assertEquals(List.of("B"), text(QueueList.of(all, row -> row == b, QueueGrouping.NONE, Set.of())));
	}

	@Test
	void walksPastHeadingsAndFromTheEndToTheTop() {
		QueueList list = list(QueueGrouping.CLUSTER);
		assertEquals("C", list.after(a.key(), 1, row -> true).sample());
		assertEquals("B", list.after(c.key(), 1, row -> true).sample());
		assertEquals("A", list.after(lost.key(), 1, row -> true).sample());
		assertEquals("U", list.after(a.key(), -1, row -> true).sample());
	}

	@Test
	void beginsAtTheTopOrTheEndWithoutASample() {
		QueueList list = list(QueueGrouping.NONE);
		assertEquals("A", list.after(null, 1, row -> true).sample());
		assertEquals("U", list.after(null, -1, row -> true).sample());
		assertEquals("A", list.after(new SampleKey("th", "gone"), 1, row -> true).sample());
	}

	@Test
	void findsNothingWhereOnlyTheSampleItselfIsWanted() {
		assertNull(list(QueueGrouping.NONE).after(b.key(), 1, row -> row == b));
		assertNull(QueueList.EMPTY.after(null, 1, row -> true));
	}
}
