package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;

import org.cairnfield.archive.internal.merge.RandomWork;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three people work at random, in rounds, and exchange in every order: all end with one state, whatever the order, and nothing
 * that anybody's work rests on is lost. {@code CAIRNFIELD_EXCHANGE_RUNS} says how many runs.
 */
class ExchangeLawTest {

	private static final int RUNS = Integer.parseInt(System.getenv().getOrDefault("CAIRNFIELD_EXCHANGE_RUNS", "2"));
	private static final List<String> PEOPLE = List.of("Ann", "Ben", "Cyn");
	private static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

	@TempDir
	Path folder;

	private static SortedSet<String> ids(Archive archive) {
		SortedSet<String> ids = new TreeSet<>();
		archive.getLedgers().forEach(ledger -> ledger.getVerdicts().forEach(verdict -> ids.add("verdict " + verdict.getId())));
		return ids;
	}

	/** For the greatest value: a rule that knows no sides. */
	private static void decide(Archive archive) {
		for (Conflict conflict : List.copyOf(archive.getConflicts())) {
			Unit unit = Unit.of(conflict);
			String value = conflict.getClaims().get(conflict.getClaims().size() - 1).getValue();
			archive.getConflicts().remove(conflict);
			if (Units.isThere(archive, unit)) {
				Units.set(archive, unit, value);
			}
		}
	}

	/** @return the digest that all have in the end */
	private String meet(int run, int[] order, int rounds) throws IOException {
		Path place = folder.resolve("run-" + run + '-' + order[0] + order[1] + order[2]);
		SortedSet<String> given = new TreeSet<>();
		try (Clones clones = new Clones(place, archive -> SampleArchives.fill(archive, run % 7, 3, 5), PEOPLE.get(0), PEOPLE.get(1), PEOPLE.get(2))) {
			for (int round = 0; round < rounds; round++) {
				for (String person : PEOPLE) {
					Random random = new Random(1000L * run + 10 * round + person.charAt(0));
					clones.edit(person, archive -> RandomWork.in(archive, person, random));
					given.addAll(ids(clones.archive(person)));
				}
				for (int n : order) {
					clones.exchange(PEOPLE.get(n));
				}
				String first = PEOPLE.get(order[2]);
				decide(clones.archive(first));
				clones.exchange(first);
				for (String person : PEOPLE) {
					clones.exchange(person);
					assertEquals(0, clones.archive(person).getConflicts().size(), () -> "run " + run + ", " + person);
				}
			}
			String digest = clones.of(PEOPLE.get(0)).digest();
			for (String person : PEOPLE) {
				assertEquals(digest, clones.of(person).digest(), "run " + run + ", " + person);
				assertTrue(ids(clones.archive(person)).containsAll(given), "run " + run + ", " + person);
				clones.close(person);
				clones.open(person);
				assertEquals(List.of(), clones.of(person).damages(), "run " + run + ", " + person);
			}
			return digest;
		}
	}

	@Test
	void endsWithOneStateInWhateverOrderThreePeopleExchange() throws IOException {
		for (int run = 0; run < RUNS; run++) {
			String digest = null;
			for (int[] order : ORDERS) {
				String found = meet(run, order, 1 + run % 2);
				digest = digest == null ? found : digest;
				assertEquals(digest, found, "run " + run + ", order " + order[0] + order[1] + order[2]);
			}
		}
	}
}
