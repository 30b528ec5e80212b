package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where noise samples go: into the cluster proposed, another one, the pool, or out of the map. */
class HomesTest {

	private final ReviewFixture f = new ReviewFixture();
	private final SampleKey one = f.sample(0);
	private final SampleKey two = f.sample(1);
	private final SampleKey three = f.sample(2);

	@TempDir
	Path folder;

	private int proposed(SampleKey sample) {
		return f.split.getProposals().of(sample).orElseThrow().cluster();
	}

	private int another(SampleKey sample) {
		return proposed(sample) == 0 ? 1 : 0;
	}

	private Home home(SampleKey sample) {
		return f.standing(sample).home();
	}

	@Test
	void sendsEachSampleToTheHomeThatItsVerdictNames() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("M.Q.").move(two, another(two), "other-cluster", null));
		f.run(f.by("M.Q.").pool(three, null, null));
		f.run(f.by("M.Q.").faulty(f.sample(3), "battery low"));
		assertEquals(Home.cluster(proposed(one)), home(one));
		assertEquals(Home.cluster(another(two)), home(two));
		assertEquals(Home.POOL, home(three));
		assertEquals(Home.OUT, home(f.sample(3)));
		assertEquals(Home.OUT, home(f.sample(4)), "nobody has decided");
		assertEquals(List.of(ReviewState.APPROVED, ReviewState.MOVED, ReviewState.POOLED, ReviewState.SET_ASIDE),
				IntStream.range(0, 4).mapToObj(i -> f.state(f.sample(i))).toList());
		assertEquals(f.proposals().size() - 4, f.standings().open());
		assertEquals(Diagnostic.OK, Diagnostician.INSTANCE.validate(f.archive.getLedgers().get(0)).getSeverity());
	}

	@Test
	void givesTheReleasedMapClustersWithMovedSamplesAndThePoolApart() {
		f.run(f.by("M.Q.").approve(one, "fits", null));
		f.run(f.by("M.Q.").move(two, another(two), "other-cluster", null));
		f.run(f.by("M.Q.").pool(three, null, null));
		SplitOnMap onMap = SplitOnMap.of(f.archive, f.split);
		Outcome outcome = Outcome.of(onMap, f.standings());
		assertEquals(proposed(one), outcome.clustering().label(onMap.index(one)));
		assertEquals(another(two), outcome.clustering().label(onMap.index(two)));
		assertTrue(outcome.clustering().isNoise(onMap.index(three)));
		assertArrayEquals(new int[] { onMap.index(three) }, outcome.pool());
		assertEquals(2, outcome.joined());
		assertEquals(onMap.clustering().noise() - 3, outcome.noise());
	}

	@Test
	void readsAnEarlierRejectionAsOutOfTheMap() {
		f.run(f.by("M.Q.").reject(one, "far", null));
		assertEquals(ReviewState.REJECTED, f.state(one));
		assertEquals(Home.OUT, home(one));
		assertEquals(0, Outcome.of(SplitOnMap.of(f.archive, f.split), f.standings()).pool().length);
	}

	@Test
	void refusesAClusterThatIsNotThereOrIsTheOneProposed() {
		assertThrows(ReviewRefused.class, () -> f.by("M.Q.").move(one, 4711, "other-cluster", null));
		ReviewRefused same = assertThrows(ReviewRefused.class,
				() -> f.by("M.Q.").move(one, proposed(one), "other-cluster", null));
		assertTrue(same.getMessage().contains("approve it"), same.getMessage());
		assertThrows(IllegalArgumentException.class, () -> Ruling.of(Decision.MOVE, "other-cluster", null));
	}

	@Test
	void findsAHomeForASampleForWhichNothingIsProposed() {
		SmallArchives.propose(f.archive, f.split, 0.9);
		SampleKey unplaced = f.proposals().stream().filter(p -> p.strengthR() < 0.9).findFirst().orElseThrow().sample();
		f.run(f.by("M.Q.").pool(unplaced, null, null));
		assertEquals(Home.POOL, home(unplaced));
		f.run(f.by("M.Q.").move(unplaced, proposed(unplaced), "other-cluster", null));
		assertEquals(Home.cluster(proposed(unplaced)), home(unplaced));
	}

	@Test
	void waitsForTheSecondReviewerBeforeASampleIsMovedOrPooled() {
		f.withSecond();
		f.run(f.by("M.Q.").pool(one, null, null));
		assertTrue(f.standing(one).awaitsSecond());
		assertEquals(Home.OUT, home(one));
		f.run(f.by("J.T.").pool(one, null, null));
		assertEquals(Home.POOL, home(one));
	}

	@Test
	void takesMovesToDifferentClustersForADisagreement() {
		f.withSecond();
		int third = IntStream.range(0, 3).filter(c -> c != proposed(one) && c != another(one)).findFirst()
				.orElseThrow();
		f.run(f.by("M.Q.").move(one, another(one), "other-cluster", null));
		f.run(f.by("J.T.").move(one, third, "other-cluster", null));
		f.run(f.by("M.Q.").move(two, another(two), "other-cluster", null));
		f.run(f.by("J.T.").move(two, another(two), "other-cluster", null));
		assertEquals(ReviewState.DISPUTED, f.state(one));
		assertEquals(ReviewState.MOVED, f.state(two));
		Agreement agreement = f.standings().agreement();
		assertEquals(List.of(one), agreement.differing());
		assertEquals(0.5, agreement.kappa().observed(), 1e-12);
		f.run(f.by("A.L.").resolve(one, Ruling.move(third, "other-cluster", "seen on site")));
		assertEquals(Home.cluster(third), home(one));
	}

	@Test
	void undoesAndRedoesAFaultySampleAsOneChange() {
		f.run(f.by("M.Q.").decide(List.of(one, two), Decision.FAULTY, ReasonCode.WRONG_PLACE.code(), null));
		assertEquals("faulty: its place is wrong", f.ref(one).sample().reason());
		assertEquals("Mark 2 proposals as faulty", f.stack.getUndoCommand().getLabel());
		f.stack.undo();
		assertEquals(null, f.ref(two).sample().reason());
		assertEquals(ReviewState.UNDECIDED, f.state(two));
		f.stack.redo();
		assertEquals(ReviewState.SET_ASIDE, f.state(two));
		assertEquals(2, f.standings().entries().size());
	}

	/** The split with its clusters numbered from the end. */
	private Split renumbered() {
		Split again = SmallArchives.split(f.archive, "again", 90, 4);
		Labels labels = again.getLabels();
		int last = labels.clusterSizes().length - 1;
		LabelsBuilder builder = Labels.builder();
		for (int row = 0; row < labels.size(); row++) {
			int cluster = labels.cluster(row);
			builder.add(labels.key(row), cluster < 0 ? cluster : last - cluster, labels.role(row));
		}
		again.setLabels(builder.build());
		again.setProposals(
				Proposals.of(again.getProposals().all().stream().map(p -> new Proposal(p.sample(), last - p.cluster(),
						p.strengthR(), p.margin(), p.carrier(), last - p.nearestCluster())).toList()));
		return again;
	}

	@Test
	void carriesAMoveOverToTheClusterWithTheSameSamplesWhateverItsNumber() {
		f.run(f.by("M.Q.").move(one, another(one), "other-cluster", null));
		f.run(f.by("M.Q.").pool(two, "far", null));
		Split again = renumbered();
		CarryOver over = CarryOver.of(f.archive, f.split, again, f.policy, "M.Q.", f.recorded, f.clock);
		assertEquals(List.of(), over.left());
		f.run(over.command());
		Standings there = Standings.of(f.archive, again, f.policy);
		int last = again.getLabels().clusterSizes().length - 1;
		assertEquals(Home.cluster(last - another(one)), there.of(one).orElseThrow().home());
		assertEquals(Home.POOL, there.of(two).orElseThrow().home());
	}

	@Test
	void leavesAMoveBehindWhereItsClusterHasOtherSamples() {
		f.run(f.by("M.Q.").move(one, another(one), "other-cluster", null));
		Split again = SmallArchives.split(f.archive, "again", 90, 4);
		LabelsBuilder builder = Labels.builder();
		boolean taken = false;
		for (int row = 0; row < again.getLabels().size(); row++) {
			boolean out = !taken && again.getLabels().cluster(row) == another(one);
			taken |= out;
			builder.add(again.getLabels().key(row), out ? Labels.NOISE : again.getLabels().cluster(row),
					out ? Role.NOISE : again.getLabels().role(row));
		}
		again.setLabels(builder.build());
		CarryOver over = CarryOver.of(f.archive, f.split, again, f.policy, "M.Q.", f.recorded, f.clock);
		assertEquals(List.of("cluster " + another(one) + ", where it was moved to, has other samples"),
				over.left().stream().map(CarryOver.Left::why).toList());
	}

	private Path table(String... decisionAndHome) throws Exception {
		Path file = folder.resolve("verdicts.csv");
		VerdictTable.write(file, f.archive, f.split, f.policy, null);
		List<String> lines = new ArrayList<>(Files.readAllLines(file));
		List<String> columns = List.of(lines.get(0).split(","));
		for (int i = 0; i < decisionAndHome.length; i++) {
			String[] words = decisionAndHome[i].split(" ");
			String[] cells = lines.get(i + 1).split(",", -1);
			cells[columns.indexOf("decision")] = words[0];
			cells[columns.indexOf("reason")] = words[0].equals("faulty") || words[0].equals("reject") ? "wrong-place"
					: "";
			cells[columns.indexOf("home")] = words.length > 1 ? words[1] : "";
			lines.set(i + 1, String.join(",", cells));
		}
		Files.write(file, lines);
		return file;
	}

	private VerdictIntake read(Path file) throws Exception {
		return VerdictIntake.read(file, f.archive, f.split, f.policy, "M.Q.", f.recorded, f.clock);
	}

	@Test
	void takesHomesInFromATableAndWritesThemOutAgain() throws Exception {
		List<SampleKey> rows = f.standings().all().stream().map(Standing::sample).toList();
		VerdictIntake intake = read(
				table("approve", "move " + another(rows.get(1)), "pool", "faulty", "defer", "reject"));
		assertEquals(List.of(), intake.problems());
		assertEquals(6, intake.taken());
		assertEquals(1, intake.rejected());
		assertTrue(intake.note().contains("leaves the map") && intake.note().contains("pool"), intake.note());
		f.run(intake.command());
		assertEquals(
				List.of(Home.cluster(proposed(rows.get(0))), Home.cluster(another(rows.get(1))), Home.POOL, Home.OUT,
						Home.OUT, Home.OUT),
				rows.subList(0, 6).stream().map(this::home).toList());
		assertEquals("faulty: its place is wrong", f.ref(rows.get(3)).sample().reason());
		Path out = folder.resolve("out.csv");
		VerdictTable.write(out, f.archive, f.split, f.policy, null);
		VerdictIntake again = read(out);
		assertEquals(List.of(), again.problems());
		assertEquals(6, again.known());
		assertEquals("", again.note());
		f.stack.undo();
		assertEquals(null, f.ref(rows.get(3)).sample().reason());
		assertTrue(f.standings().entries().isEmpty());
	}

	@Test
	void namesWhatIsWrongWithAHome() throws Exception {
		VerdictIntake intake = read(table("move", "move lift", "move 4711", "approve 3", "pool 3"));
		List<String> texts = intake.problems().stream().map(VerdictIntake.Problem::toString).toList();
		assertEquals(5, texts.size(), texts::toString);
		int nearest = f.split.getProposals().of(f.standings().all().get(0).sample()).orElseThrow().nearestCluster();
		assertTrue(texts.get(0).endsWith(
				"line 2: the decision is move, and no home is given. Write the number of a cluster into the column"
						+ " 'home'; the nearest labelled sample is in cluster " + nearest + "."),
				texts.get(0));
		assertTrue(texts.get(1).contains("'lift' is not a number of a cluster"), texts.get(1));
		assertTrue(texts.get(2).contains("has no cluster 4711"), texts.get(2));
		assertTrue(texts.get(3).contains("though the decision is approve"), texts.get(3));
		assertFalse(intake.command().canExecute());
	}

	@Test
	void readsTablesThatHaveNoColumnForHomes() throws Exception {
		Path file = table("pool");
		int home = VerdictTable.COLUMNS.indexOf("home");
		List<String> lines = Files.readAllLines(file).stream()
				.map(line -> String.join(",", List.of(line.split(",", -1)).subList(0, home))).toList();
		assertFalse(lines.get(0).contains("home"));
		Files.write(file, lines);
		VerdictIntake intake = read(file);
		assertEquals(List.of(), intake.problems());
		assertEquals(1, intake.taken());
	}
}
