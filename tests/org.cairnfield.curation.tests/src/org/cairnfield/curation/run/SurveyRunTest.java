package org.cairnfield.curation.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SmallMaps;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.junit.jupiter.api.Test;

class SurveyRunTest {

	private static SurveyRun run(RadioMap map, RadioMap test, long seed) {
		return SurveyRun.of(map, test, SplitRequest.automatic(seed).with(120, 3), ProposalRule.USUAL, Workers.inline());
	}

	private static Set<Integer> rows(RadioMap map) {
		Set<Integer> rows = new HashSet<>();
		IntStream.range(0, map.size()).forEach(s -> rows.add(map.row(s)));
		return rows;
	}

	@Test
	void holdsOutAFifthWhereNoTestIsGiven() {
		RadioMap map = SmallMaps.simulated(100);
		SurveyRun run = run(map, null, 1);
		assertTrue(run.heldOut());
		assertEquals(100, run.training().size() + run.test().size());
		assertTrue(run.test().size() >= 20 && run.test().size() < 30, "held out: " + run.test().size());
		Set<Integer> both = rows(run.training());
		both.retainAll(rows(run.test()));
		assertEquals(Set.of(), both, "a sample on both sides");
		assertEquals(run.test().size(), run.measured().variant("plain").errors().n());
	}

	@Test
	void theSeedDecidesWhatIsHeldOut() {
		RadioMap map = SmallMaps.simulated(100);
		assertEquals(rows(run(map, null, 4).test()), rows(run(map, null, 4).test()));
		assertNotEquals(rows(run(map, null, 4).test()), rows(run(map, null, 5).test()));
	}

	@Test
	void usesAllSamplesWhereATestIsGiven() {
		RadioMap map = SmallMaps.simulated(60);
		RadioMap test = SmallMaps.visit(10);
		SurveyRun run = run(map, test, 1);
		assertFalse(run.heldOut());
		assertEquals(60, run.training().size());
		assertSame(test, run.test());
		assertEquals(10, run.measured().variant("plain").errors().n());
	}

	@Test
	void splitsWhatCleaningKept() {
		RadioMap whole = SmallMaps.simulated(60);
		SurveyRun run = run(whole, SmallMaps.visit(10), 1);
		assertEquals(run.cleaning().kept().size(), run.split().map().size());
		assertEquals(60, run.cleaning().kept().size() + run.cleaning().setAside());
		assertSame(run.split(), run.proposals().split());
		assertArrayEquals(run.split().clustering().labels(), run.proposals().split().clustering().labels());
	}

	@Test
	void saysHowLittleIsLeft() {
		RadioMap one = SmallMaps.of(new int[] { -40, -50, -60 });
		UnfitSurveyException e = assertThrows(UnfitSurveyException.class, () -> run(one, null, 1));
		assertTrue(e.getMessage().contains("0 of 1 can be used"), e.getMessage());
		assertTrue(e.getMessage().contains("1 held out"), e.getMessage());
		RadioMap deaf = SmallMaps.of(new int[] { 1, 1 }, new int[] { 1, 1 }, new int[] { -40, 1 });
		e = assertThrows(UnfitSurveyException.class, () -> run(deaf, one, 1));
		assertTrue(e.getMessage().contains("1 of 3 can be used: 2 of 3 samples set aside"), e.getMessage());
	}
}
