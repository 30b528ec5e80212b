package org.cairnfield.archive.internal.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.internal.resource.ArchiveFiles;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Verdict;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** The laws of a merge find what is wrong with one that does not keep them. */
class PlantedMergeFaultsTest {

	private static final int RUNS = 20;
	private static final int[][] ORDERS = { { 0, 1, 2 }, { 0, 2, 1 }, { 1, 0, 2 }, { 1, 2, 0 }, { 2, 0, 1 },
			{ 2, 1, 0 } };
	private static final Authors SOMEBODY = (unit, value) -> new Authors.Author(String.valueOf(value), Instant.EPOCH);

	private interface Merge {
		Archive of(Archive base, Archive mine, Archive theirs);
	}

	private static Archive sound(Archive base, Archive mine, Archive theirs) {
		return ArchiveMerge.of(base, mine, SOMEBODY, theirs, SOMEBODY, new GateTexts(null, null, null, null)).archive();
	}

	private static Archive oneSideWins(Archive base, Archive mine, Archive theirs) {
		Archive merged = sound(base, mine, theirs);
		merged.setName(mine.getName());
		merged.getConflicts().removeIf(conflict -> conflict.getPlace().equals("archive"));
		return merged;
	}

	private static Archive ledgerUnsorted(Archive base, Archive mine, Archive theirs) {
		Archive merged = sound(base, mine, theirs);
		for (Ledger ledger : merged.getLedgers()) {
			Set<String> own = new HashSet<>();
			mine.getLedgers().forEach(each -> each.getVerdicts().forEach(verdict -> own.add(verdict.getId())));
			List<Verdict> lines = new ArrayList<>(ledger.getVerdicts());
			lines.sort((one, other) -> Boolean.compare(own.contains(other.getId()), own.contains(one.getId())));
			ledger.getVerdicts().clear();
			ledger.getVerdicts().addAll(lines);
		}
		return merged;
	}

	private static Archive oneVerdictASample(Archive base, Archive mine, Archive theirs) {
		Archive merged = sound(base, mine, theirs);
		for (Ledger ledger : merged.getLedgers()) {
			Map<String, Verdict> last = new HashMap<>();
			ledger.getVerdicts().forEach(verdict -> last.put(String.valueOf(verdict.getSample()), verdict));
			ledger.getVerdicts().retainAll(last.values());
		}
		return merged;
	}

	/** In how many of some runs the outcome depends on the order, or a verdict is gone. */
	private static int broken(Merge merge) throws IOException {
		int broken = 0;
		for (int run = 0; run < RUNS; run++) {
			Archive base = ModelFactory.eINSTANCE.createArchive();
			SampleArchives.fill(base, run, 3, 5);
			List<Archive> work = new ArrayList<>();
			Set<String> given = new HashSet<>();
			for (String person : List.of("A", "B", "C")) {
				Archive changed = RandomWork.on(base, person, new Random(31L * run + person.charAt(0)));
				changed.setName("by " + person); // so that all meet somewhere
				Verdict verdict = EcoreUtil.copy(base.getLedgers().get(0).getVerdicts().get(0));
				verdict.setId("v-" + person);
				verdict.setTime(Instant.ofEpochSecond(2_000_000_000L - person.charAt(0)));
				changed.getLedgers().get(0).getVerdicts().add(verdict);
				given.add(verdict.getId());
				work.add(changed);
			}
			Set<String> outcomes = new HashSet<>();
			boolean lost = false;
			for (int[] order : ORDERS) {
				Archive two = merge.of(base, work.get(order[0]), work.get(order[1]));
				Archive all = merge.of(base, two, work.get(order[2]));
				outcomes.add(ArchiveFiles.digest(all));
				Set<String> ids = new HashSet<>();
				all.getLedgers().forEach(ledger -> ledger.getVerdicts().forEach(each -> ids.add(each.getId())));
				lost |= !ids.containsAll(given);
			}
			broken += lost || outcomes.size() > 1 ? 1 : 0;
		}
		return broken;
	}

	@Test
	void findsNothingWrongWithTheMergeItself() throws IOException {
		assertEquals(0, broken(PlantedMergeFaultsTest::sound));
	}

	@Test
	void findsThatOneSideWins() throws IOException {
		assertEquals(RUNS, broken(PlantedMergeFaultsTest::oneSideWins));
	}

	@Test
	void findsThatALedgerIsNotInOrder() throws IOException {
		assertEquals(RUNS, broken(PlantedMergeFaultsTest::ledgerUnsorted));
	}

	@Test
	void findsThatASampleKeepsOneVerdictOnly() throws IOException {
		assertNotEquals(0, broken(PlantedMergeFaultsTest::oneVerdictASample));
	}
}
