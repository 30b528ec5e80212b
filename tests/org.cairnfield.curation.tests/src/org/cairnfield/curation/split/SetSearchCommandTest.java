package org.cairnfield.curation.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.match.Search;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Split;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SetSearchCommandTest {

	private final Split split = ModelFactory.eINSTANCE.createSplit();

	@Test
	void marksTheSearchAsSetByHandAndTakesBothBack() {
		split.setId("spring");
		split.setSearch(Search.PUBLISHED);
		split.setSearchReason("best of 40 tried");
		SetSearchCommand command = new SetSearchCommand(split,
				SearchChoice.parse("cut groups 2 cells 3 relative k 5 weighted"));
		assertTrue(command.canExecute());
		command.execute();
		assertEquals(Search.parse("cut groups 2 cells 3 relative k 5 weighted"), split.getSearch());
		assertEquals(
				"large clusters cut, two levels, 2 groups and 3 cells, by relative distance, k 5 weighted; set by hand",
				TriedSearches.words(split));
		command.undo();
		assertEquals(Search.PUBLISHED, split.getSearch());
		assertEquals("best of 40 tried", split.getSearchReason());
		command.redo();
		assertEquals("set by hand", split.getSearchReason());
	}

	@Test
	void leavesASearchThatIsTheSameAsItIs() {
		split.setSearch(Search.PUBLISHED);
		assertFalse(new SetSearchCommand(split, SearchChoice.PUBLISHED).canExecute());
	}

	@Test
	void givesAnOldSplitItsFirstSearch() {
		SetSearchCommand command = new SetSearchCommand(split, SearchChoice.of(split));
		assertEquals(Search.USUAL.code(), SearchChoice.of(split).code());
		assertTrue(command.canExecute(), "nobody has chosen this search yet");
		command.execute();
		command.undo();
		assertNull(split.getSearch());
		assertNull(split.getSearchReason());
	}

	@ParameterizedTest
	@CsvSource({ "cells 1 plain k 1, false, 0, 1, false, 1, false",
			"groups 3 cells 4 plain k 5, false, 3, 4, false, 5, false",
			"cut cells 100 relative k 100 weighted, true, 0, 100, true, 100, true" })
	void readsAndWritesTheCodeOfItsParts(String code, boolean cut, int groups, int cells, boolean relative, int k,
			boolean weighted) {
		SearchChoice parts = new SearchChoice(cut, groups, cells, relative, k, weighted);
		assertEquals(parts, SearchChoice.parse(code));
		assertEquals(code, parts.code());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "published", "cells 0 plain k 1", "cells 101 plain k 1",
			"groups 101 cells 1 plain k 1", "cells 3 plain k 0" })
	void refusesWhatIsNoSearch(String code) {
		assertThrows(IllegalArgumentException.class, () -> SearchChoice.parse(code));
	}
}
