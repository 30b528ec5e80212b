package org.cairnfield.curation.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.split.AddSplitsCommand;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitMaker;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitPlan;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;

class MeasuresTest {

	private final Archive archive = SmallArchives.simulated();
	private final Split split = SmallArchives.split(archive, "whole", 90, 4);
	private final RadioMap test = ReleasedMap.test(archive);
	private final Workers workers = Workers.inline();
	private final Review review = new Review(archive, split, "M.Q.", ReviewPolicy.USUAL, RecordedVerdicts.of(archive),
			Clock.systemUTC());

	private ReleasedMap released() {
		return ReleasedMap.of(archive, ReviewPolicy.USUAL);
	}

	private Measures measure() {
		return Measures.of(released(), test, PackRequest.USUAL, workers);
	}

	@Test
	void everyProposalApprovedIsWhatARunOnFilesMeasures() {
		review.decide(split.getProposals().all().stream().map(p -> p.sample()).toList(), Decision.APPROVE, "fits", null)
				.execute();
		assertArrayEquals(ReleasedMap.approved(archive, split).labels(), released().labels());
		assertEquals(ReleasedMap.approved(archive, split).joined(), released().joined());
		Measures all = measure();
		assertEquals(List.of("plain", "plain-3w", "split", "split+approved", "released"),
				all.ways().stream().map(Way::name).toList());
		assertTrue(all.way("split+approved").comparisons() > all.way("split").comparisons());
		assertTrue(all.way("split+approved").how().contains(released().joined() + " approved"),
				all.way("split+approved")::how);
	}

	@Test
	void searchesThePoolWithEveryQueryAndMovedSamplesInTheirClusters() {
		List<Proposal> proposals = split.getProposals().all();
		int pooled = proposals.size() - 1;
		review.decide(proposals.subList(1, proposals.size()).stream().map(Proposal::sample).toList(), Decision.POOL,
				null, null).execute();
		int other = proposals.get(0).cluster() == 0 ? 1 : 0;
		review.move(proposals.get(0).sample(), other, "other-cluster", null).execute();
		ReleasedMap released = released();
		assertEquals(pooled, released.pool().length);
		assertEquals(1, released.joined());
		assertEquals(other, released.labels()[SplitOnMap.of(archive, split).index(proposals.get(0).sample())]);
		Measures measured = measure();
		Way dropped = measured.way("split");
		for (String way : List.of("split+approved", "released")) {
			double more = measured.way(way).comparisons() - dropped.comparisons();
			assertTrue(more >= pooled && more < pooled + 2, way + ": " + more + " more, " + pooled + " in the pool");
			assertTrue(measured.way(way).errors().meanMetres() < dropped.errors().meanMetres(), way);
		}
		assertTrue(
				measured.way("split+approved").how()
						.endsWith("1 approved sample in clusters and " + pooled + " in the pool"),
				measured.way("split+approved")::how);
	}

	@Test
	void givesTheRatioToPlainWithItsInterval() {
		Measures measured = measure();
		assertEquals(1, measured.way("plain").ratio());
		assertEquals(1, measured.way("plain").ratioInterval().low());
		Way dropped = measured.way("split");
		assertEquals(dropped.errors().meanMetres() / measured.way("plain").errors().meanMetres(), dropped.ratio());
		assertTrue(dropped.ratioInterval().low() < dropped.ratio() && dropped.ratio() < dropped.ratioInterval().high());
		assertTrue(dropped.mean().contains(dropped.errors().meanMetres()));
		assertTrue(dropped.comparisonShare() < 1);
		assertEquals(150, measured.test());
	}

	@Test
	void isTheSplitAsLongAsNothingIsApproved() {
		Measures measured = measure();
		assertEquals(measured.way("split").errors().meanMetres(), measured.way("split+approved").errors().meanMetres());
		assertEquals(0, released().joined());
	}

	@Test
	void searchesAsTheSplitSays() {
		Way published = measure().way("released");
		assertEquals(Search.PUBLISHED, released().search());
		assertEquals(measure().way("split").comparisons(), published.comparisons(),
				"the published method searches what the split searches");
		split.setSearch(Search.parse("cut groups 2 cells 3 relative k 3 weighted"));
		Way thorough = measure().way("released");
		assertTrue(thorough.how().contains("two levels, 2 groups and 3 cells"), thorough.how());
		assertTrue(thorough.comparisons() != published.comparisons()
				&& thorough.errors().meanMetres() != published.errors().meanMetres());
		Way five = Measures.of(released(), test,
				new PackRequest(1, OptionalInt.of(5), OptionalInt.of(1), Optional.empty()), workers).way("released");
		assertTrue(five.how().contains("5 cells") && five.how().contains("k 1"), five.how());
	}

	@Test
	void searchesASplitFromBeforeThereWasAChoiceAsItUsedTo() {
		split.setSearch(null);
		assertEquals(Search.USUAL, released().search());
	}

	@Test
	void putsSplitsOfFloorsTogetherWithTheMostThoroughSearch() {
		archive.getSplits().clear();
		List<Split> floors = new SplitMaker(new SplitStudies(2))
				.make(archive, new SplitPlan("floors", Scope.ARCHIVE, true,
						SplitRequest.automatic(1).published(90, 4)), workers)
				.splits();
		new AddSplitsCommand(archive, floors).execute();
		floors.get(0).setSearch(Search.parse("groups 2 cells 3 relative k 3 weighted"));
		floors.get(1).setSearch(Search.parse("cut cells 4 relative k 3 weighted"));
		ReleasedMap both = released();
		assertEquals(floors.stream().map(Split::getId).toList(), both.splits());
		assertEquals(Search.parse("cut groups 2 cells 4 relative k 3 weighted"), both.search());
		assertEquals(floors.stream().mapToInt(s -> s.getClusters().size()).sum(), both.clusters());
		assertTrue(both.notes().isEmpty(), both.notes()::toString);
		ReleasedMap one = ReleasedMap.of(archive, List.of(floors.get(0)), ReviewPolicy.USUAL);
		int outside = floors.get(1).getLabels().size();
		assertTrue(one.notes().get(0).startsWith(outside + " of 400 samples lie outside"), one.notes()::toString);
		assertEquals(floors.get(0).getLabels().size(),
				ReleasedMap.within(archive, floors.get(0), ReviewPolicy.USUAL).map().size());
	}

	@Test
	void measuresAMapThatIsNotSplit() {
		archive.getSplits().clear();
		Measures measured = measure();
		assertEquals(List.of("plain", "plain-3w", "released"), measured.ways().stream().map(Way::name).toList());
		assertEquals(measured.way("plain-3w").errors().meanMetres(), measured.way("released").errors().meanMetres(),
				0.02, "positions are rounded to centimetres");
	}

	@Test
	void measuresNothingWithoutATestSurvey() {
		assertTrue(Measures.of(released(), test.where(s -> false), PackRequest.USUAL, workers).ways().isEmpty());
	}

	@Test
	void timesEachWayBesidePlain() {
		Measures timed = Measures.timed(released(), test, PackRequest.USUAL, workers);
		assertEquals(timed.ways().stream().map(Way::name).toList(), List.copyOf(timed.timeRatios().keySet()));
		assertEquals(1, timed.timeRatios().get("plain"));
		assertTrue(measure().timeRatios().isEmpty());
	}

	@Test
	void statesTheFactsOfASplit() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		SplitFacts facts = SplitFacts.of(onMap, workers);
		assertEquals(split.getLabels().noise(), facts.noise());
		assertTrue(facts.comparisonsPerQuery() > 1 && facts.comparisonShare() < 1, facts::toString);
		assertTrue(facts.meanErrorMetres() > 0 && facts.plainErrorMetres() > 0, facts::toString);
		assertTrue(facts.basis().contains("training samples"), facts.basis());
		var study = new SplitStudies(1).study(archive, Scope.ARCHIVE, SplitRequest.automatic(1));
		assertEquals(facts, SplitFacts.of(study, study.split(90, 4, workers), workers));
		archive.getSites().get(0).getSurveys().removeIf(survey -> survey.getKind() == SurveyKind.TEST);
		assertEquals(facts, SplitFacts.of(SplitOnMap.of(archive, split), workers), "test surveys play no part");
	}
}
