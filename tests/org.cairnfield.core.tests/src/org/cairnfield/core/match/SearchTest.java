package org.cairnfield.core.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.LargeClusters;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.map.ScatteredMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SearchTest {

	private static final Workers HERE = Workers.inline();

	@ParameterizedTest
	@ValueSource(strings = { "cells 1 plain k 1", "cells 3 relative k 3 weighted",
			"cut groups 6 cells 8 relative k 5 weighted",
			"groups 100 cells 100 plain k 100" })
	void isReadAsItWasWritten(String code) {
		assertEquals(code, Search.parse(code).code());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "cells 0 plain k 1", "cells 1 plain k 0", "cells 101 plain k 1", "cells 1 plain",
			"cells 1 plain k 1 heavy",
			"groups -1 cells 1 plain k 1", "Cut cells 1 plain k 1" })
	void refusesWhatIsNoSearch(String code) {
		assertThrows(IllegalArgumentException.class, () -> Search.parse(code));
	}

	@Test
	void cutsLargeClustersAndGroupsCellsWhereWanted() {
		Signals signals = Signals.of(ScatteredMap.of(4, 400));
		Clustering one = new Clustering(new int[400], null);
		Search cut = Search.parse("cut groups 2 cells 3 relative k 3 weighted");
		Clustering cells = cut.cells(signals, one, 1, HERE);
		assertTrue(Arrays.stream(cells.sizes()).max().orElseThrow() <= LargeClusters.usualLimit(400));
		SplitMap map = cut.map(signals, cells, 1, HERE);
		assertEquals(cells.clusters(), map.cells());
		assertEquals(Math.round(Math.sqrt(map.cells())), map.groups());
		assertEquals(1, Search.PUBLISHED.cells(signals, one, 1, HERE).clusters());
		assertEquals(0, Search.PUBLISHED.map(signals, one, 1, HERE).groups());
	}
}
