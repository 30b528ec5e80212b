package org.cairnfield.ui.internal.samples.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.samples.SampleContent;
import org.cairnfield.testkit.SmallTables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

public class PicksTest {

	private final SampleContent content = SmallTables.random(1, 400);
	/** Backwards, so that positions are not indices. */
	private final Arrangement all = Arrangement.of(content, SampleColumn.ID, true, null, Workers.inline());
	private final Picks picks = new Picks();

	@BeforeEach
	public void open() {
		picks.reset(all);
	}

	private int[] at(int... positions) {
		int[] indices = new int[positions.length];
		for (int i = 0; i < positions.length; i++) {
			indices[i] = all.index(positions[i]);
		}
		return indices;
	}

	@Test
	public void picksOneAlone() {
		picks.choose(3);
		picks.choose(5);
		assertArrayEquals(at(5), picks.indices());
		assertEquals(5, picks.focusPosition());
	}

	@Test
	public void addsAndTakesAway() {
		picks.choose(7);
		picks.toggle(3);
		picks.toggle(9);
		picks.toggle(7);
		assertArrayEquals(at(3, 9), picks.indices(), "in the order of the table");
		assertFalse(picks.isChosen(7));
	}

	@Test
	public void extendsFromTheLastPlainPick() {
		picks.choose(5);
		picks.extend(8);
		picks.extend(3);
		assertArrayEquals(at(3, 4, 5), picks.indices());
		assertEquals(3, picks.focusPosition());
		picks.toggle(10);
		picks.extend(12);
		assertArrayEquals(at(10, 11, 12), picks.indices());
	}

	@Test
	public void extendsFromNothingToOne() {
		picks.extend(4);
		assertArrayEquals(at(4), picks.indices());
	}

	@Test
	public void keepsPicksThatTheFilterHides() {
		picks.choose(0);
		picks.extend(9);
		Arrangement odd = Arrangement.of(content, null, false, i -> all.position(i) % 2 == 1, Workers.inline());
		picks.arrange(odd);
		assertEquals(10, picks.size());
		assertEquals(5, picks.shown());
		int[] indices = picks.indices();
		for (int i = 0; i < 5; i++) {
			assertTrue(odd.position(indices[i]) >= 0, "those shown come first");
			assertTrue(i == 0 || odd.position(indices[i]) > odd.position(indices[i - 1]), "in order");
			assertTrue(odd.position(indices[5 + i]) < 0);
		}
		picks.extend(3);
		assertTrue(picks.isChosen(3));
	}

	@Test
	public void givesFewOfManyInOrder() {
		picks.choose(200);
		picks.toggle(20);
		picks.toggle(100);
		assertArrayEquals(at(20, 100, 200), picks.indices());
		picks.arrange(Arrangement.of(content, SampleColumn.ID, true, i -> all.position(i) != 20, Workers.inline()));
		assertArrayEquals(at(100, 200, 20), picks.indices(), "what is hidden comes last");
	}

	@Test
	public void picksAllThatIsShown() {
		Arrangement some = Arrangement.of(content, null, false, i -> i % 5 == 0, Workers.inline());
		picks.arrange(some);
		picks.all();
		assertEquals(some.size(), picks.size());
		assertEquals(0, picks.focusPosition());
	}

	@Test
	public void followsWhatIsPickedElsewhere() {
		picks.choose(0);
		picks.set(at(4, 2));
		assertEquals(4, picks.focusPosition());
		picks.extend(6);
		assertArrayEquals(at(4, 5, 6), picks.indices());
		picks.reset(all);
		assertEquals(0, picks.size());
	}
}
