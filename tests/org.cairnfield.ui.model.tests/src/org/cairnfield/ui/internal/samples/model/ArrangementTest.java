package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

public class ArrangementTest {

	private static final Workers WORKERS = Workers.inline();

	private static List<String> ids(Arrangement of) {
		return IntStream.range(0, of.size())
				.mapToObj(p -> CellText.of(of.content(), SampleColumn.ID, of.index(p)).substring(3)).toList();
	}

	private static Arrangement sorted(SampleColumn column, boolean descending) {
		return Arrangement.of(SmallTables.five(), column, descending, null, WORKERS);
	}

	@Test
	public void keepsTheOrderOfTheListUnlessSorted() {
		assertEquals(List.of("A1", "A2", "A3", "B1", "B2"), ids(sorted(null, false)));
	}

	@Test
	public void sortsByNumbersUpAndDown() {
		assertEquals(List.of("B2", "A1", "A2", "A3", "B1"), ids(sorted(SampleColumn.FLOOR, false)));
		assertEquals(List.of("B1", "A2", "A3", "A1", "B2"), ids(sorted(SampleColumn.FLOOR, true)),
				"equal ones in their own order");
		assertEquals(List.of("A2", "B2", "A3", "A1", "B1"), ids(sorted(SampleColumn.X, true)));
		assertEquals(List.of("A3", "B1", "A1", "B2", "A2"), ids(sorted(SampleColumn.Y, false)));
		assertEquals(List.of("B2", "A2", "B1", "A1", "A3"), ids(sorted(SampleColumn.HEARD, false)));
	}

	@Test
	public void putsTheUnknownLastUpAndDown() {
		assertEquals(List.of("A1", "A2", "B1", "A3", "B2"), ids(sorted(SampleColumn.TIME, false)));
		assertEquals(List.of("B1", "A2", "A1", "A3", "B2"), ids(sorted(SampleColumn.TIME, true)));
		assertEquals(List.of("B1", "A2", "A3", "A1", "B2"), ids(sorted(SampleColumn.STRONGEST, false)));
		assertEquals(List.of("A1", "A2", "A3", "B1", "B2"), ids(sorted(SampleColumn.STRONGEST, true)));
		assertEquals(List.of("A1", "A2", "A3", "B1", "B2"), ids(sorted(SampleColumn.CLUSTER, true)));
	}

	@Test
	public void sortsByTextsStatesAndFindings() {
		assertEquals(List.of("B2", "B1", "A3", "A2", "A1"), ids(sorted(SampleColumn.ID, true)));
		assertEquals(List.of("B1", "B2", "A1", "A2", "A3"), ids(sorted(SampleColumn.SURVEY, true)));
		assertEquals(List.of("A1", "A3", "B1", "B2", "A2"), ids(sorted(SampleColumn.STATE, false)),
				"kept, then set aside");
		assertEquals(List.of("A3", "B1", "A1", "A2", "B2"), ids(sorted(SampleColumn.FINDINGS, true)),
				"two errors, one, none");
		assertEquals(List.of("A2", "A1", "A3", "B1", "B2"), ids(sorted(SampleColumn.ROLE, true)));
	}

	/** Whatever the column, what is shown side by side is in order of the cells, and equal cells in order of the list. */
	@ParameterizedTest
	@EnumSource
	public void isStableAndWhole(SampleColumn column) {
		SampleContent content = SmallTables.random(column.ordinal(), 600);
		for (boolean descending : new boolean[] { false, true }) {
			Arrangement now = Arrangement.of(content, column, descending, null, WORKERS);
			IndexSort.Order order = SortKeys.order(content, column, descending);
			assertEquals(content.size(), IntStream.range(0, now.size()).map(now::index).distinct().count());
			for (int p = 1; p < now.size(); p++) {
				int c = order.compare(now.index(p - 1), now.index(p));
				assertTrue(c < 0 || c == 0 && now.index(p - 1) < now.index(p), column + " at " + p);
			}
		}
	}

	@Test
	public void showsWhatTheFilterPassesAndKnowsWhere() {
		SampleContent content = SmallTables.random(3, 900);
		IntPredicate third = i -> i % 3 == 0;
		Arrangement now = Arrangement.of(content, SampleColumn.HEARD, true, third, WORKERS);
		assertEquals(IntStream.range(0, content.size()).filter(third).count(), now.size());
		for (int i = 0; i < content.size(); i++) {
			assertEquals(third.test(i), now.position(i) >= 0);
			assertTrue(now.position(i) < 0 || now.index(now.position(i)) == i);
		}
	}

	@Test
	public void endsWhenCancelled() {
		Workers cancelled = Workers.on(Runnable::run, 1, new Progress() {
			@Override
			public boolean isCancelled() {
				return true;
			}
		});
		SampleContent content = SmallTables.random(3, 900);
		assertThrows(CancellationException.class, () -> Arrangement.of(content, null, false, i -> true, cancelled));
		assertThrows(CancellationException.class,
				() -> Arrangement.of(content, SampleColumn.X, false, null, cancelled));
	}
}
