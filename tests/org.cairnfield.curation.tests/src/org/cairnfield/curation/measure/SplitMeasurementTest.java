package org.cairnfield.curation.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.Outcome;
import org.cairnfield.curation.decide.RecordedVerdicts;
import org.cairnfield.curation.decide.Review;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.propose.Proposals;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.curation.split.SplitOnMap;
import org.cairnfield.curation.split.SplitRequest;
import org.cairnfield.curation.split.SplitStudies;
import org.cairnfield.curation.split.UnfitSurveyException;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;

class SplitMeasurementTest {

	private final Archive archive = SmallArchives.simulated();
	private final Split split = SmallArchives.split(archive, "whole", 90, 4);
	private final Workers workers = Workers.inline();
	private final Review review = new Review(archive, split, "M.Q.", ReviewPolicy.USUAL, RecordedVerdicts.of(archive), Clock.systemUTC());

	private SplitMeasurement measure() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		return SplitMeasurement.of(Outcome.of(onMap, review.standings()), SplitOnMap.testMap(archive, split), 1, workers);
	}

	@Test
	void agreesWithTheMeasurementOfSurveyFiles() {
		review.decide(split.getProposals().all().stream().map(p -> p.sample()).toList(), Decision.APPROVE, "fits", null).execute();
		SplitMeasurement measured = measure();
		RadioMap map = SplitOnMap.of(archive, split).map();
		Measurement batch = Measurement.of(Proposals.of(org.cairnfield.curation.split.Split.of(map, SplitRequest.automatic(1).with(90, 4),
				workers), new ProposalRule(0, 0.1), workers), SplitOnMap.testMap(archive, split), 1, workers);
		for (String[] names : new String[][] { { "plain", "plain" }, { "plain-3w", "plain-3w" }, { "split", "split" },
				{ "split+approved", "split+proposals" } }) {
			SplitMeasurement.Column column = measured.column(names[0]);
			Variant variant = batch.variant(names[1]);
			assertEquals(variant.errors().meanMetres(), column.errors().meanMetres(), names[0]);
			assertEquals(variant.meanInterval(), column.meanInterval(), names[0]);
			assertEquals(variant.comparisonsPerQuery(), column.comparisons(), names[0]);
		}
	}

	@Test
	void givesTheRatioToPlainWithItsInterval() {
		SplitMeasurement measured = measure();
		assertEquals(1, measured.column("plain").ratio());
		assertEquals(1, measured.column("plain").ratioInterval().low());
		SplitMeasurement.Column dropped = measured.column("split");
		assertEquals(dropped.errors().meanMetres() / measured.column("plain").errors().meanMetres(), dropped.ratio());
		assertTrue(dropped.ratioInterval().low() < dropped.ratio() && dropped.ratio() < dropped.ratioInterval().high());
		assertTrue(dropped.meanInterval().contains(dropped.errors().meanMetres()));
		assertTrue(dropped.comparisonShare() < 1);
		assertEquals(150, measured.testSamples());
	}

	@Test
	void isTheSplitAsLongAsNothingIsApproved() {
		SplitMeasurement measured = measure();
		assertEquals(measured.column("split").errors().meanMetres(), measured.column("split+approved").errors().meanMetres());
		assertEquals(0, measured.approved());
	}

	@Test
	void needsATestSurvey() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		UnfitSurveyException e = assertThrows(UnfitSurveyException.class,
				() -> SplitMeasurement.of(Outcome.of(onMap, review.standings()), onMap.map().where(s -> false), 1, workers));
		assertTrue(e.getMessage().contains("test survey"), e.getMessage());
	}

	@Test
	void statesTheFactsOfASplit() {
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		SplitFacts facts = SplitFacts.of(onMap, SplitOnMap.testMap(archive, split), workers);
		SplitMeasurement measured = measure();
		assertEquals(measured.column("split").errors().meanMetres(), facts.meanErrorMetres(), 1e-12);
		assertEquals(measured.column("plain").errors().meanMetres(), facts.plainErrorMetres(), 1e-12);
		assertEquals(measured.column("split").comparisons(), facts.comparisonsPerQuery());
		assertEquals(split.getLabels().noise(), facts.noise());
		var study = new SplitStudies(1).study(archive, Scope.ARCHIVE, SplitRequest.automatic(1));
		assertEquals(facts, SplitFacts.of(study, study.split(90, 4, workers), SplitOnMap.testMap(archive, split), workers));
		SplitFacts cost = SplitFacts.of(onMap, onMap.map().where(s -> false), workers);
		assertTrue(Double.isNaN(cost.meanErrorMetres()) && cost.comparisonsPerQuery() > 0);
		assertTrue(cost.basis().contains("for want of a test survey"), cost.basis());
	}
}
