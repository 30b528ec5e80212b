package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever people do, in whatever order: ledger, labels and centroids say the same. */
class LedgerPropertiesTest {

	private static final String[] PEOPLE = { "M.Q.", "J.T.", "A.L." };
	private static final ReviewPolicy POLICY = ReviewPolicy.USUAL.withSecond(Set.of("fair"));
	private static final int SAMPLES = 12;

	@TempDir
	Path folder;

	private static ReviewFixture fixture() {
		ReviewFixture f = new ReviewFixture();
		f.policy = POLICY;
		return f;
	}

	/** Something that a person may do to one of a few samples; what the rules refuse is not done. */
	private static boolean act(ReviewFixture f, Random random) {
		SampleKey key = f.sample(random.nextInt(SAMPLES));
		Review review = f.by(PEOPLE[random.nextInt(PEOPLE.length)]);
		try {
			var command = switch (random.nextInt(7)) {
			case 0, 1 -> review.approve(key, "fits", null);
			case 2 -> review.reject(key, "far", "t" + random.nextInt(9));
			case 3 -> review.defer(key, "ask", null);
			case 4 -> review.faulty(key, "battery");
			case 5 -> review.takeBack(key);
			default ->
				f.standing(key).state() == ReviewState.SET_ASIDE ? SetSampleStateCommand.keep(List.of(f.ref(key)))
						: review.resolve(key, Decision.APPROVE, "fits", "talked");
			};
			f.run(command);
			return true;
		} catch (ReviewRefused e) {
			return false;
		}
	}

	/** All that follows from a ledger. */
	private static List<Object> outcome(Archive archive, Split split) {
		Standings standings = Standings.of(archive, split, POLICY);
		Outcome outcome = Outcome.of(SplitOnMap.of(archive, split), standings);
		List<Object> all = new ArrayList<>(standings.all());
		for (int s = 0; s < outcome.clustering().size(); s++) {
			all.add(outcome.clustering().label(s));
		}
		all.add(Arrays.toString(outcome.pool()));
		return all;
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6 })
	void goesBackAndForthWithoutATrace(long seed) {
		ReviewFixture f = fixture();
		Random random = new Random(seed);
		List<List<Object>> states = new ArrayList<>();
		states.add(outcome(f.archive, f.split));
		for (int i = 0; i < 40; i++) {
			if (act(f, random)) {
				states.add(outcome(f.archive, f.split));
			}
		}
		int last = states.size() - 1;
		for (int i = last; i > 0; i--) {
			assertEquals(states.get(i), outcome(f.archive, f.split));
			f.stack.undo();
		}
		assertEquals(states.get(0), outcome(f.archive, f.split));
		for (int i = 1; i <= last; i++) {
			f.stack.redo();
		}
		assertEquals(states(states.get(last)), states(outcome(f.archive, f.split)));
	}

	/** What redo may not change: states and labels. Ids and times of lines given again are new. */
	private static List<Object> states(List<Object> outcome) {
		return outcome.stream()
				.map(o -> o instanceof Standing s ? List.of(s.sample(), s.state(), s.awaitsSecond(), s.stale()) : o)
				.toList();
	}

	@ParameterizedTest
	@ValueSource(longs = { 11, 12, 13, 14 })
	void losesNothingThatASavePointHolds(long seed) {
		ReviewFixture f = fixture();
		Random random = new Random(seed);
		List<String> held = new ArrayList<>();
		List<List<Object>> before = new ArrayList<>();
		before.add(states(outcome(f.archive, f.split)));
		for (int i = 0; i < 80; i++) {
			int what = random.nextInt(10);
			if (what < 6) {
				if (act(f, random)) {
					before.add(states(outcome(f.archive, f.split)));
				}
			} else if (what < 9 && before.size() > 1) {
				f.stack.undo();
				before.remove(before.size() - 1);
				assertEquals(before.get(before.size() - 1), states(outcome(f.archive, f.split)), "undo " + i);
			} else {
				f.recorded.savePointMade(f.archive);
				held = ids(f.archive);
			}
			assertEquals(held, ids(f.archive).subList(0, held.size()), "a line is gone, or has moved");
		}
	}

	private static List<String> ids(Archive archive) {
		return archive.getLedgers().stream().flatMap(ledger -> ledger.getVerdicts().stream()).map(v -> v.getId())
				.toList();
	}

	/** Setting aside changes more than verdicts, so it is left out here. */
	@ParameterizedTest
	@ValueSource(longs = { 16, 17, 18 })
	void renewsWhatHasChangedToWhatComputingAllAnewGives(long seed) {
		ReviewFixture f = fixture();
		Random random = new Random(seed);
		Standings known = f.standings();
		int changed = 0;
		for (int i = 0; i < 60; i++) {
			SampleKey key = f.sample(random.nextInt(SAMPLES));
			Review review = new Review(f.archive, f.split, PEOPLE[random.nextInt(PEOPLE.length)], known, f.recorded,
					f.clock);
			try {
				f.run(random.nextInt(3) == 0 ? review.takeBack(key)
						: random.nextBoolean() ? review.approve(key, "fits", null) : review.reject(key, "far", null));
				changed++;
			} catch (ReviewRefused e) {
				continue;
			}
			if (random.nextInt(4) == 0) {
				f.stack.undo();
			}
			Standings before = known;
			known = known.renewed(f.archive, f.split, List.of(key));
			assertEquals(f.standings().all(), known.all());
			assertEquals(f.standings().entries(), known.entries());
			assertEquals(before.policy(), known.policy());
		}
		assertTrue(changed > 30, "only " + changed);
	}

	@ParameterizedTest
	@ValueSource(longs = { 21, 22, 23, 24 })
	void doesNotDependOnTheOrderOfDifferentSamples(long seed) {
		ReviewFixture f = fixture();
		Random random = new Random(seed);
		for (int i = 0; i < 60; i++) {
			act(f, random);
		}
		List<Object> expected = outcome(f.archive, f.split);
		Ledger ledger = f.archive.getLedgers().get(0);
		Map<SampleKey, List<org.cairnfield.model.Verdict>> bySample = new HashMap<>();
		ledger.getVerdicts().forEach(v -> bySample.computeIfAbsent(v.getSample(), s -> new ArrayList<>()).add(v));
		List<SampleKey> turns = new ArrayList<>(ledger.getVerdicts().stream().map(v -> v.getSample()).toList());
		Collections.shuffle(turns, random);
		Map<SampleKey, Integer> next = new HashMap<>();
		List<org.cairnfield.model.Verdict> shuffled = turns.stream()
				.map(key -> bySample.get(key).get(next.merge(key, 1, Integer::sum) - 1)).toList();
		ledger.getVerdicts().clear();
		ledger.getVerdicts().addAll(shuffled);
		assertEquals(expected, outcome(f.archive, f.split));
	}

	@ParameterizedTest
	@ValueSource(longs = { 31, 32, 33 })
	void isTheSameAfterEverySaveAndReload(long seed) throws IOException {
		ReviewFixture made = fixture();
		ArchiveStore store = new ArchiveStore();
		Random random = new Random(seed);
		try (OpenArchive open = store.create(folder.resolve("a" + seed), "marrow-quay")) {
			fill(open.archive(), made.archive);
			RecordedVerdicts recorded = RecordedVerdicts.of(open.archive());
			BasicCommandStack stack = new BasicCommandStack();
			for (int i = 0; i < 40; i++) {
				Split split = open.archive().getSplits().get(0);
				SampleKey key = split.getProposals().all().get(random.nextInt(SAMPLES)).sample();
				Review review = new Review(open.archive(), split, PEOPLE[random.nextInt(3)], POLICY, recorded,
						made.clock);
				try {
					stack.execute(random.nextBoolean() ? review.approve(key, "fits", "a\tb\nc")
							: review.reject(key, "far", null));
				} catch (ReviewRefused e) {
					continue;
				}
				if (random.nextInt(4) == 0 && stack.canUndo()) {
					stack.undo();
				}
				if (i % 8 == 7) {
					List<Object> expected = outcome(open.archive(), split);
					open.savePoint(Person.named("M.Q."), null);
					recorded.savePointMade(open.archive());
					open.reload();
					assertEquals(List.of(), open.damages());
					assertEquals(expected, outcome(open.archive(), open.archive().getSplits().get(0)));
					stack.flush();
				}
			}
		}
	}

	private static void fill(Archive to, Archive from) {
		Archive copy = EcoreUtil.copy(from);
		to.getSites().addAll(copy.getSites());
		to.getAccessPoints().addAll(copy.getAccessPoints());
		to.getSplits().addAll(copy.getSplits());
	}

	@Test
	void undoesAcrossASavePointAndStaysSaveable() throws IOException {
		ReviewFixture made = fixture();
		try (OpenArchive open = new ArchiveStore().create(folder.resolve("undo"), "marrow-quay")) {
			fill(open.archive(), made.archive);
			RecordedVerdicts recorded = RecordedVerdicts.of(open.archive());
			Split split = open.archive().getSplits().get(0);
			SampleKey key = made.sample(0);
			BasicCommandStack stack = new BasicCommandStack();
			stack.execute(new Review(open.archive(), split, "M.Q.", ReviewPolicy.USUAL, recorded, made.clock)
					.approve(key, "fits", null));
			open.savePoint(Person.named("M.Q."), null);
			recorded.savePointMade(open.archive());
			stack.undo();
			assertTrue(open.savePoint(Person.named("M.Q."), null).isPresent()); // refused if a line were gone
			open.reload();
			Standing standing = Standings.of(open.archive(), open.archive().getSplits().get(0), ReviewPolicy.USUAL)
					.of(key).get();
			assertEquals(ReviewState.UNDECIDED, standing.state());
			assertEquals(2, standing.entries().size());
		}
	}

	@Test
	void replaysToTheLabelsThatTheVerdictsSay() {
		ReviewFixture f = fixture();
		Random random = new Random(7);
		for (int i = 0; i < 100; i++) {
			act(f, random);
		}
		SplitOnMap onMap = SplitOnMap.of(f.archive, f.split);
		int[] labels = onMap.clustering().labels();
		for (Standing s : f.standings().all()) {
			if (s.joins()) {
				labels[onMap.index(s.sample())] = f.split.getProposals().of(s.sample()).get().cluster();
			}
		}
		Clustering outcome = Outcome.of(onMap, f.standings()).clustering();
		assertArrayEquals(labels, outcome.labels());
		assertEquals(f.archive.getLedgers().get(0).getVerdicts().size(), f.standings().entries().size());
	}
}
