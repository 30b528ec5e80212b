package org.cairnfield.curation.propose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.junit.jupiter.api.Test;

class SplitProposalsTest {

	private final Archive archive = SmallArchives.simulated();
	private final Split split = SmallArchives.split(archive, "whole", 90, 4);
	private final Workers workers = Workers.inline();

	@Test
	void agreesWithTheProposalsOfSurveyFiles() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		Proposals batch = Proposals.of(org.cairnfield.curation.split.Split.of(onMap.map(), SplitRequest.automatic(1).with(90, 4), workers),
				ProposalRule.USUAL, workers);
		SplitProposals made = SplitProposals.of(onMap, 0.1, 0.1, workers);
		assertTrue(made.open());
		assertEquals(batch.made(), made.made());
		assertEquals(batch.unplaced(), made.unplaced());
		for (var placement : batch.placements()) {
			Proposal proposal = made.best().of(onMap.key(placement.sample())).get();
			assertEquals(placement.strength(), proposal.strengthR());
			assertEquals(onMap.key(placement.carrier()), proposal.carrier());
		}
	}

	@Test
	void listsWhatIsBelowTheThresholdAsUnplaced() {
		SplitProposals made = SplitProposals.of(SplitOnMap.of(archive, split), 0, 0.9, workers);
		assertTrue(made.unplaced() > 0 && made.made() > 0, () -> made.made() + " and " + made.unplaced());
		assertEquals(made.noise(), made.best().all().size() + made.undefined().size());
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
		SetProposalsCommand command = new SetProposalsCommand(split, SplitProposals.of(SplitOnMap.of(archive, split), 0.2, 0.7, workers));
		assertTrue(command.canExecute());
		command.execute();
		assertEquals(0.7, split.getThreshold());
		assertEquals(0.2, split.getGate());
		command.undo();
		assertEquals(before, split.getProposals());
		assertEquals(0.1, split.getThreshold());
		command.redo();
		assertFalse(new SetProposalsCommand(split, SplitProposals.of(SplitOnMap.of(archive, split), 0.2, 0.7, workers)).canExecute());
	}

	@Test
	void tellsTheEvidenceOfEveryNoiseSample() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		EvidenceTable table = EvidenceTable.of(onMap, SplitOnMap.testMap(archive, split), workers);
		assertEquals(split.getLabels().noise(), table.all().size());
		assertTrue(table.basis().contains("150 test samples"), table.basis());
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
		List<Evidence> all = EvidenceTable.of(SplitOnMap.of(archive, split), SplitOnMap.testMap(archive, split), workers).all();
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
	void putsDisagreementFirstAndNeverTheStrength() {
		List<Evidence> sorted = QueueOrder.DISAGREEMENT_FIRST.sorted(EvidenceTable
				.of(SplitOnMap.of(archive, split), SplitOnMap.testMap(archive, split), workers).all());
		int agreeing = 0;
		for (Evidence e : sorted) {
			agreeing += e.agrees() ? 1 : 0;
			assertTrue(e.agrees() || agreeing == 0, "a disagreement after an agreement");
		}
		assertTrue(agreeing > 0 && agreeing < sorted.size());
		assertFalse(sorted.equals(QueueOrder.STRENGTH.sorted(sorted)));
		List<Evidence> reversed = new ArrayList<>(sorted);
		java.util.Collections.reverse(reversed);
		assertEquals(sorted, QueueOrder.DISAGREEMENT_FIRST.sorted(reversed));
	}

	@Test
	void takesSamplesOfTheMapWhereThereIsNoTestSurvey() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		EvidenceTable table = EvidenceTable.of(onMap, onMap.map().where(s -> false), workers);
		assertTrue(table.basis().contains("of the map itself"), table.basis());
		assertTrue(table.all().stream().anyMatch(e -> e.effect().affected() > 0));
	}

	@Test
	void countsUnplacedSamplesAsSuch() {
		SmallArchives.propose(archive, split, 0.9);
		EvidenceTable table = EvidenceTable.of(SplitOnMap.of(archive, split), SplitOnMap.testMap(archive, split), workers);
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
		assertEquals(onMap.map().heard(onMap.index(p.sample())), pair.rows().stream().filter(r -> r.firstDbm() != null).count());
		assertEquals(1, FingerprintPair.of(onMap.map(), 0, 0).overlap());
		assertEquals(Labels.NOISE, onMap.cluster(onMap.index(p.sample())));
	}
}
