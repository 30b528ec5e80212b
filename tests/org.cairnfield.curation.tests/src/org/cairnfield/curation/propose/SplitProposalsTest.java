package org.cairnfield.curation.propose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.stats.Pearson;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.run.FileRun;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SmallRuns;
import org.cairnfield.testkit.SmallMaps;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.junit.jupiter.api.Test;

class SplitProposalsTest {

	private final Archive archive = SmallArchives.simulated();
	private final Split split = SmallArchives.split(archive, "whole", 90, 4);
	private final Workers workers = Workers.inline();

	@Test
	void offersTheStrayToTheGroupItIsLike() {
		FileRun run = SmallRuns.run(0, 0.1);
		SplitProposals proposals = run.proposals();
		assertTrue(proposals.open());
		assertEquals(1, proposals.placements().size());
		NoisePlacement stray = proposals.placements().get(0);
		assertEquals(run.files().keys()[10], run.onMap().key(stray.sample()));
		assertEquals(1, stray.cluster());
		assertEquals(0, stray.runnerUp());
		assertTrue(proposals.isMade(stray));
		assertEquals(1, proposals.made());
		assertEquals(0, proposals.unplaced());
		RadioMap map = run.onMap().map();
		assertEquals(Pearson.r(distances(map, stray.sample()), distances(map, stray.carrier())), stray.strength(),
				1e-9);
		Proposal kept = run.split().getProposals().of(run.onMap().key(stray.sample())).orElseThrow();
		assertEquals(stray.strength(), kept.strengthR());
		assertEquals(run.onMap().key(stray.carrier()), kept.carrier());
		Outcome approved = Outcome.allApproved(run.onMap());
		assertEquals(1, approved.clustering().label(stray.sample()));
		assertEquals(Role.BORDER, approved.clustering().role(stray.sample()));
		assertEquals(1, approved.joined());
		assertTrue(run.onMap().clustering().isNoise(stray.sample()), "the split itself stays");
	}

	/** A row of the distance matrix, city-block on values from −66 dBm, the lowest, up. */
	private static double[] distances(RadioMap map, int sample) {
		double[] row = new double[map.size()];
		for (int other = 0; other < row.length; other++) {
			for (int ap = 0; ap < map.accessPointCount(); ap++) {
				row[other] += Math.abs(map.rssiDbm(sample, ap, -67) - map.rssiDbm(other, ap, -67));
			}
		}
		return row;
	}

	@Test
	void whatIsTooWeakStaysNoise() {
		FileRun run = SmallRuns.run(0, 1);
		assertTrue(run.proposals().open());
		assertEquals(0, run.proposals().made());
		assertEquals(1, run.proposals().unplaced());
		assertEquals(0, Outcome.allApproved(run.onMap()).joined());
	}

	@Test
	void makesNoneWhereThereIsNoClusterOrNoNoise() {
		SplitProposals none = SmallRuns
				.run(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).published(0, 3), 0, -1).proposals();
		assertTrue(none.open());
		assertEquals(0, none.made());
		assertEquals(11, none.unplaced());
		SplitProposals all = SmallRuns
				.run(SmallMaps.twoGroupsAndAStray(), SplitRequest.automatic(1).published(1e6, 3), 0, -1).proposals();
		assertFalse(all.open());
		assertEquals(0, all.made() + all.unplaced());
	}

	@Test
	void listsWhatIsBelowTheThresholdAsUnplaced() {
		SplitProposals made = SplitProposals.of(SplitOnMap.of(archive, split), 0, 0.9, workers);
		assertTrue(made.unplaced() > 0 && made.made() > 0, () -> made.made() + " and " + made.unplaced());
		assertEquals(made.noise(), made.placements().size());
	}

	@Test
	void makesNoneBelowTheGate() {
		SplitProposals made = SplitProposals.of(SplitOnMap.of(archive, split), 0.99, 0.1, workers);
		assertFalse(made.open());
		assertEquals(0, made.made());
		assertEquals(split.getLabels().noise(), made.unplaced());
	}

	@Test
	void setsThemUndoably() {
		var before = split.getProposals();
		SetProposalsCommand command = new SetProposalsCommand(split,
				SplitProposals.of(SplitOnMap.of(archive, split), 0.2, 0.7, workers));
		assertTrue(command.canExecute());
		command.execute();
		assertEquals(0.7, split.getThreshold());
		assertEquals(0.2, split.getGate());
		command.undo();
		assertEquals(before, split.getProposals());
		assertEquals(0.1, split.getThreshold());
		command.redo();
		assertFalse(new SetProposalsCommand(split, SplitProposals.of(SplitOnMap.of(archive, split), 0.2, 0.7, workers))
				.canExecute());
	}

	@Test
	void tellsTheEvidenceOfEveryNoiseSample() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		EvidenceTable table = EvidenceTable.of(onMap, workers);
		assertEquals(split.getLabels().noise(), table.all().size());
		assertTrue(table.basis().contains("training positions"), table.basis());
		for (Evidence e : table.all()) {
			Proposal p = split.getProposals().of(e.sample()).get();
			assertEquals(p.strengthR(), e.strengthR());
			assertEquals(p.nearestCluster(), e.nearestCluster()); // found in two ways
			assertEquals(p.nearestAgrees(), e.agrees());
			assertEquals(p.nearestAgrees(), !e.warnings().contains(Warning.NEAREST_DIFFERS));
			assertEquals(brute(onMap, e), e.floorMetres(), 1e-9);
			assertTrue(e.effect().queries() > 0);
			e.warnings().forEach(w -> assertFalse(w.text(e).isBlank()));
		}
	}

	@Test
	void warnsOfTheTightestMarginsOnly() {
		List<Evidence> all = EvidenceTable.of(SplitOnMap.of(archive, split), workers).all();
		List<Evidence> tight = all.stream().filter(e -> e.warnings().contains(Warning.TIGHT_MARGIN)).toList();
		assertTrue(!tight.isEmpty() && tight.size() <= all.size() * 0.11 + 1, () -> tight.size() + " of " + all.size());
		double widest = tight.stream().mapToDouble(Evidence::margin).max().getAsDouble();
		assertTrue(widest <= Warning.TIGHT_MARGIN_R);
		assertTrue(all.stream().filter(e -> !tight.contains(e)).allMatch(e -> e.margin() > widest));
	}

	private static double brute(SplitOnMap onMap, Evidence e) {
		double least = Double.POSITIVE_INFINITY;
		for (int s = 0; s < onMap.size(); s++) {
			if (onMap.cluster(s) == e.cluster()) {
				least = Math.min(least, onMap.map().metresApart(s, e.index()));
			}
		}
		return Double.isInfinite(least) ? Double.NaN : least;
	}

	@Test
	void putsMarksFirstAndNeverTheStrength() {
		List<Evidence> sorted = QueueOrder.MARKED_FIRST.sorted(EvidenceTable
				.of(SplitOnMap.of(archive, split), workers).all());
		int unmarked = 0;
		for (Evidence e : sorted) {
			unmarked += e.marks().isEmpty() ? 1 : 0;
			assertTrue(e.marks().isEmpty() || unmarked == 0, "a mark after a sample without one");
		}
		assertTrue(unmarked > 0 && unmarked < sorted.size());
		assertFalse(sorted.equals(QueueOrder.STRENGTH.sorted(sorted)));
		List<Evidence> reversed = new ArrayList<>(sorted);
		java.util.Collections.reverse(reversed);
		assertEquals(sorted, QueueOrder.MARKED_FIRST.sorted(reversed));
	}

	@Test
	void countsHowOftenAdviceIsRightAtPlacesThatHadNoPartInIt() {
		EvidenceTable table = EvidenceTable.of(SplitOnMap.of(archive, split), workers);
		AdviceRates.Rate rate = table.rates().of(Advice.APPROVE);
		assertTrue(rate.judged() >= 20 && rate.right() > 0.6 * rate.judged() && rate.right() < rate.judged(),
				rate::toString);
		assertEquals(String.format(java.util.Locale.ROOT,
				"Such advice was right in %.0f %% of %,d cases here, at places that had no part in it.",
				100.0 * rate.right() / rate.judged(), rate.judged()), rate.text());
		assertEquals(new AdviceRates.Rate(0, 0), table.rates().of(Advice.NONE));
		assertEquals("Too few cases to say how often such advice is right here (3).",
				new AdviceRates.Rate(3, 2).text());
	}

	@Test
	void knowsWhatEachHomeWouldDoWithoutAnyTestSurvey() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		EvidenceTable table = EvidenceTable.of(onMap, workers);
		archive.getSites().get(0).getSurveys().removeIf(survey -> survey.getKind() == SurveyKind.TEST);
		assertEquals(table.all(), EvidenceTable.of(SplitOnMap.of(archive, split), workers).all(),
				"test surveys play no part");
		for (Evidence e : table.all()) {
			Outlook outlook = e.outlook();
			assertEquals(1, outlook.pool().comparisonsAdded());
			assertTrue(outlook.proposed().comparisonsAdded() < 1);
			assertEquals(e.agrees(), outlook.proposed().equals(outlook.nearest()) && e.agrees());
			assertTrue(outlook.nearest().affected() <= outlook.pool().affected());
		}
		assertTrue(table.all().stream().anyMatch(e -> e.effect().affected() > 0));
	}

	@Test
	void countsUnplacedSamplesAsSuch() {
		SmallArchives.propose(archive, split, 0.9);
		EvidenceTable table = EvidenceTable.of(SplitOnMap.of(archive, split), workers);
		assertEquals(split.getProposals().all().stream().filter(p -> p.strengthR() >= 0.9).count(),
				table.all().stream().filter(Evidence::made).count());
		assertTrue(table.all().stream().filter(e -> !e.made()).allMatch(e -> e.strengthR() < 0.9));
	}

	@Test
	void pairsFingerprints() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		Proposal p = split.getProposals().all().get(0);
		FingerprintPair pair = FingerprintPair.of(onMap.map(), onMap.index(p.sample()), onMap.index(p.carrier()));
		assertEquals(pair.shared(), pair.rows().stream().filter(FingerprintPair.Row::isShared).count());
		assertEquals(onMap.map().heard(onMap.index(p.sample())),
				pair.rows().stream().filter(r -> r.firstDbm() != null).count());
		assertEquals(1, FingerprintPair.of(onMap.map(), 0, 0).overlap());
		assertEquals(Labels.NOISE, onMap.cluster(onMap.index(p.sample())));
	}
}
