package org.cairnfield.curation.propose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.testkit.SmallMaps;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.junit.jupiter.api.Test;

/** On the two groups and a stray of {@link SmallMaps}: the stray, sample 10 at x = 10 m, could join the second group, at 5 … 9 m. */
class EffectTableTest {

	private static Effect effect(int[]... queries) {
		RadioMap test = SmallMaps.of(queries);
		Archive archive = SmallArchives.of(SmallMaps.twoGroupsAndAStray(), null);
		Split split = SmallArchives.split(archive, "whole", 5, 3);
		return EvidenceTable.of(SplitOnMap.of(archive, split), test, Workers.inline()).all().get(0).effect();
	}

	@Test
	void countsWhatMovesToTheSample() {
		// Queries stand at x = 0, 1 and 2 m. The first is like the stray and was placed at 9 m (sample 9) or so: it moves to 10 m.
		Effect effect = effect(new int[] { 1, -66, -47 }, new int[] { -40, -60, 1 }, new int[] { 1, -60, -40 });
		assertEquals(3, effect.queries());
		assertEquals(1, effect.affected());
		assertEquals((10 - nearestOfGroup()) / 3.0, effect.errorChangeMetres(), 1e-9);
		assertEquals(2 / 3.0, effect.comparisonsAdded(), 1e-9); // two of three search the second group
	}

	/** Of the second group: (−61, −41) at 8 m and (−62, −40) at 9 m are 5 + 6 = 11 and 4 + 7 = 11 away; the first of equals counts. */
	private static double nearestOfGroup() {
		return 8;
	}

	@Test
	void isBetterWhereTheQueryIsThere() {
		int[] far = { 1, 1, 1 };
		int[][] queries = new int[11][];
		java.util.Arrays.fill(queries, far);
		queries[10] = new int[] { 1, -66, -47 }; // at x = 10 m
		Effect effect = effect(queries);
		assertEquals(-2 / 11.0, effect.errorChangeMetres(), 1e-9);
	}
}
