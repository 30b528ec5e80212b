package org.cairnfield.archive.torture;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;

import org.cairnfield.archive.Clones;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.SampleArchives;
import org.cairnfield.archive.internal.merge.RandomWork;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.conflict.Unit;
import org.cairnfield.model.conflict.Units;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Three people work at random, in rounds, and exchange in every order: all end with one state, whatever the order, after the
 * same was open in each round, and nothing that anybody decided is lost.
 */
public final class ExchangeLaws {

	private static final List<String> PEOPLE = List.of("Ann", "Ben", "Cyn");
	private static final int[][] ORDERS = { { 0, 1, 2 }, { 0, 2, 1 }, { 1, 0, 2 }, { 1, 2, 0 }, { 2, 0, 1 },
			{ 2, 1, 0 } };

	private final Path folder;
	private final int run;
	private final SortedSet<String> given = new TreeSet<>();
	private int conflicts;

	private ExchangeLaws(Path folder, int run) {
		this.folder = folder;
		this.run = run;
	}

	/** For a command: {@code FOLDER RUNS FIRST}. */
	public static void main(String[] args) throws IOException {
		int first = Integer.parseInt(args[2]);
		int runs = Integer.parseInt(args[1]);
		int conflicts = run(Path.of(args[0]), runs, first);
		System.out.println(runs + " runs from " + first + ", " + ORDERS.length
				+ " orders each: one state in each run, no verdict lost; " + conflicts
				+ " conflicts decided");
	}

	/**
	 * @param first number of the first run, which is its seed
	 * @return how many conflicts were decided
	 * @throws IllegalStateException telling the run and the order in which a law does not hold
	 */
	public static int run(Path folder, int runs, int first) throws IOException {
		int conflicts = 0;
		for (int run = first; run < first + runs; run++) {
			List<String> states = null;
			for (int[] order : ORDERS) {
				ExchangeLaws laws = new ExchangeLaws(folder, run);
				List<String> found = laws.meet(order);
				conflicts += laws.conflicts;
				laws.require(states == null || states.equals(found),
						"another state in order " + order[0] + order[1] + order[2] + ": " + found + ", not " + states);
				states = found;
			}
		}
		return conflicts;
	}

	private static SortedSet<String> ids(Archive archive) {
		SortedSet<String> ids = new TreeSet<>();
		archive.getLedgers()
				.forEach(ledger -> ledger.getVerdicts().forEach(verdict -> ids.add("verdict " + verdict.getId())));
		return ids;
	}

	/** A digest of all but when something was claimed: the clock goes on by what an order takes. */
	private static String withoutTimes(Archive archive) throws IOException {
		Archive copy = EcoreUtil.copy(archive);
		copy.getConflicts().forEach(conflict -> conflict.getClaims().forEach(claim -> claim.setTime(Instant.EPOCH)));
		return OpenArchive.digest(copy);
	}

	/** For the last value: a rule that knows no sides. */
	private void decide(Archive archive) {
		for (Conflict conflict : List.copyOf(archive.getConflicts())) {
			Unit unit = Unit.of(conflict);
			String value = conflict.getClaims().get(conflict.getClaims().size() - 1).getValue();
			archive.getConflicts().remove(conflict);
			conflicts++;
			if (Units.isThere(archive, unit)) {
				Units.set(archive, unit, value);
			}
		}
	}

	/** @return digests: of each round, with what is open before anybody decides, and of what all have in the end */
	private List<String> meet(int[] order) throws IOException {
		Path place = folder.resolve("run-" + run + '-' + order[0] + order[1] + order[2]);
		try (Clones clones = new Clones(place, archive -> SampleArchives.fill(archive, run % 7, 3, 5), PEOPLE.get(0),
				PEOPLE.get(1), PEOPLE.get(2))) {
			List<String> states = new ArrayList<>();
			for (int round = 0; round <= run % 3; round++) {
				states.add(round(clones, order, round));
			}
			String digest = clones.of(PEOPLE.get(0)).digest();
			for (String person : PEOPLE) {
				require(digest.equals(clones.of(person).digest()), person + " has another state");
				require(ids(clones.archive(person)).containsAll(given), person + " has lost verdicts");
				clones.close(person);
				clones.open(person);
				require(clones.of(person).damages().isEmpty(), person + " has damage: " + clones.of(person).damages());
			}
			states.add(digest);
			return states;
		}
	}

	private String round(Clones clones, int[] order, int round) throws IOException {
		for (String person : PEOPLE) {
			Random random = new Random(1000L * run + 10 * round + person.charAt(0));
			clones.of(person).reload(); // what is in which place of a list depends on nothing but the content then
			clones.edit(person, archive -> RandomWork.in(archive, person, random));
			given.addAll(ids(clones.archive(person)));
		}
		for (int n : order) {
			clones.exchange(PEOPLE.get(n));
		}
		String last = PEOPLE.get(order[2]);
		String open = withoutTimes(clones.archive(last));
		decide(clones.archive(last));
		clones.exchange(last);
		for (String person : PEOPLE) {
			clones.exchange(person);
			require(clones.archive(person).getConflicts().isEmpty(), person + " has conflicts that were decided");
		}
		return open;
	}

	private void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalStateException("run " + run + ": " + otherwise);
		}
	}
}
