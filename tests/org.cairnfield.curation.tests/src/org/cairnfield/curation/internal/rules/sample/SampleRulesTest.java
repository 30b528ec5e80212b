package org.cairnfield.curation.internal.rules.sample;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.cairnfield.curation.rules.TinyMap.samples;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.curation.rules.Alternative;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class SampleRulesTest {

	private static final Object[] SCAN = { "ap1", -50, "ap2", -60, "ap3", -70, "ap4", -65, "ap5", -55, "ap6", -80 };
	private static final Object[] OTHER = { "ap1", -51, "ap2", -60, "ap3", -70, "ap4", -65, "ap5", -55, "ap6", -80 };
	private static final Object[] THIRD = { "ap1", -50, "ap2", -62, "ap3", -71, "ap4", -65, "ap5", -55, "ap6", -80 };

	private static Finding only(Rule rule, SurveyedMap map) {
		List<Finding> findings = findings(rule, map);
		assertEquals(1, findings.size(), findings.toString());
		assertEquals(List.of(), findings(rule, RemediedMap.ofFindings(map, findings).map()), "after the remedy");
		return findings.get(0);
	}

	@Test
	void reportsEmptySamplesAndThoseThatHeardTooLittle() {
		TinyMap map = new TinyMap().survey("a").sample(0, 0).sample(1, 0, "ap1", -50, "ap2", -60);
		for (int i = 0; i < 18; i++) {
			map.sample(i, 1, SCAN);
		}
		List<Finding> findings = findings(new FewReadingsRule(), map.build());
		assertEquals(List.of("a-0"), samples(findings.get(0)));
		assertEquals(List.of("a-1"), samples(findings.get(1)));
		assertEquals(List.of(), findings(new FewReadingsRule(), RemediedMap.ofFindings(map.build(), findings).map()));
	}

	@Test
	void takesASurveyThatHearsLittleThroughoutAsItIs() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0).sample(1, 0, "ap1", -50).sample(2, 0, "ap1", -52)
				.build();
		assertEquals(List.of("a-0"), samples(only(new FewReadingsRule(), map)));
	}

	@Test
	void reportsScansHandedOutAgain() {
		SurveyedMap map = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(2).sample(1, 0, SCAN).at(4)
				.sample(1, 0, SCAN)
				.at(6).sample(2, 0, OTHER).at(8).sample(3, 0, SCAN).build();
		Finding finding = only(new RepeatedScanRule(), map);
		Remedy.SetAsideSamples remedy = (Remedy.SetAsideSamples) finding.remedy().orElseThrow();
		assertEquals(List.of("a-1", "a-2"), remedy.sampleIds());
		assertEquals(1, finding.figure("at another place"));
	}

	@Test
	void offersThreeWaysToMendRepeatedScans() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, SCAN).sample(0, 0, SCAN).sample(1, 0, SCAN)
				.sample(1, 0, SCAN)
				.sample(1, 0, THIRD).sample(2, 0, OTHER).build();
		Finding finding = only(new RepeatedScanRule(), map);
		assertEquals(new RepeatedScanRule().alternatives(), finding.alternatives());
		assertEquals(List.of("a-1", "a-2", "a-3"), ids(finding, RepeatedScanRule.KEEP_FIRST));
		assertEquals(List.of("a-1", "a-3"), ids(finding, RepeatedScanRule.ONE_A_PLACE),
				"the run goes on at another place");
		Remedy.AverageSamples average = (Remedy.AverageSamples) finding.choosing("average").remedy().orElseThrow();
		assertEquals(List.of(List.of("a-0", "a-1"), List.of("a-2", "a-3", "a-4")), average.groups());
		assertEquals("average 5 samples into 2: one place, scanned again and again", average.preview());
	}

	@Test
	void offersOnlyWhatWouldChangeSomething() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, SCAN).sample(1, 0, SCAN).sample(2, 0, OTHER).build();
		assertEquals(List.of(), only(new RepeatedScanRule(), map).alternatives(), "no place was scanned twice");
	}

	private static List<String> ids(Finding finding, Alternative way) {
		return ((Remedy.SetAsideSamples) finding.choosing(way.name()).remedy().orElseThrow()).sampleIds();
	}

	@Test
	void letsFewReadingsAgreeByChance() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "ap1", -50, "ap2", -60)
				.sample(0, 0, "ap1", -50, "ap2", -60)
				.build();
		assertEquals(List.of(), findings(new RepeatedScanRule(), map));
		assertEquals(List.of(), findings(new ExactDuplicateRule(), map));
	}

	@Test
	void reportsOneScanAtTwoPlaces() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, SCAN).sample(1, 0, OTHER).sample(2, 0, SCAN)
				.sample(3, 0, THIRD)
				.build();
		Finding finding = only(new OneScanTwoPlacesRule(), map);
		assertEquals(List.of("a-0", "a-2"), samples(finding));
		assertEquals(2, finding.figure("farthest apart"));
		assertEquals(List.of("a-2"), ids(finding, OneScanTwoPlacesRule.KEEP_FIRST));
		assertEquals(List.of("a-0", "a-2"), ids(finding, OneScanTwoPlacesRule.ALL));
		SurveyedMap inARow = new TinyMap().survey("a").sample(0, 0, SCAN).sample(2, 0, SCAN).build();
		assertEquals(List.of(), findings(new OneScanTwoPlacesRule(), inARow), "that is a scan handed out again");
		assertEquals(1, findings(new RepeatedScanRule(), inARow).size());
	}

	@Test
	void reportsTheSameSampleTwice() {
		SurveyedMap map = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(5).sample(1, 0, OTHER).at(0)
				.sample(0, 0, SCAN)
				.at(0).device("Wrist guide B").sample(0, 0, SCAN).build();
		Finding finding = only(new ExactDuplicateRule(), map);
		assertEquals(List.of("a-2"), samples(finding));
		assertEquals("a-0", finding.related().get(0).label());
		assertEquals(List.of(), findings(new RepeatedScanRule(), map));
	}

	@Test
	void reportsSamplesThatContradictEachOther() {
		Object[] elsewhere = { "ap1", -80, "ap2", -85, "ap3", -50, "ap7", -60 };
		SurveyedMap map = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(0.5).sample(0, 0, elsewhere).at(9)
				.sample(0, 0, SCAN).build();
		Finding finding = only(new ContradictorySamplesRule(), map);
		assertEquals(List.of("a-0", "a-1"), samples(finding));
		assertEquals(List.of("a-0", "a-1"), ids(finding, ContradictorySamplesRule.BOTH));
		assertEquals(List.of("a-1"), ids(finding, ContradictorySamplesRule.KEEP_FIRST));
		assertEquals(List.of("a-0"), ids(finding, ContradictorySamplesRule.KEEP_SECOND));
		SurveyedMap later = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(5).sample(0, 0, elsewhere).build();
		assertEquals(List.of(), findings(new ContradictorySamplesRule(), later));
		SurveyedMap alike = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(0).sample(0, 0, THIRD).build();
		assertEquals(List.of(), findings(new ContradictorySamplesRule(), alike));
		assertEquals("samples have no times",
				TinyMap.whyNot(new ContradictorySamplesRule(), new TinyMap().survey("a").sample(0, 0, SCAN).build()));
	}

	@Test
	void reportsSamplesOutsideTheOutline() {
		TinyMap tiny = new TinyMap().survey("a").sample(5, 5, SCAN).sample(10.9, 5, SCAN).sample(12, 5, SCAN).floor(1)
				.sample(50, 50, SCAN);
		SurveyedMap map = tiny.build(b -> b.floor(
				new FloorPlan(TinyMap.SITE, 0, Optional.of(Polygon.rectangle(0, 0, 10, 10)), Optional.empty())));
		Finding finding = only(new OutsideOutlineRule(), map);
		assertEquals(List.of("a-2"), samples(finding));
		assertEquals(2, finding.figure("farthest outside"));
		assertEquals("no floor of a has an outline", TinyMap.whyNot(new OutsideOutlineRule(), tiny.build()));
	}

	@Test
	void reportsSamplesOnAFloorThatTheSiteDoesNotHave() {
		TinyMap tiny = new TinyMap().survey("a").sample(5, 5, SCAN).floor(77).sample(6, 5, SCAN).sample(7, 5, SCAN)
				.floor(1)
				.sample(8, 5, SCAN);
		SurveyedMap map = tiny.build(b -> b.floor(new FloorPlan(TinyMap.SITE, 0, Optional.empty(), Optional.empty()))
				.floor(new FloorPlan(TinyMap.SITE, 1, Optional.empty(), Optional.empty())));
		Finding finding = findings(new UnknownFloorRule(), map).get(0);
		assertEquals(List.of("a-1", "a-2"), samples(finding));
		assertEquals(
				"2 samples of a are on floor 77, which Tide House does not have: a-1 and a-2. Its floors are 0, 1.",
				finding.message());
		assertEquals("the floors of the site of a are not known", TinyMap.whyNot(new UnknownFloorRule(), tiny.build()));
	}

	/** A walk at 1 m/s, but for what the test changes. */
	private static TinyMap walk(double... xs) {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < xs.length; i++) {
			map.at(3 * i).sample(xs[i], 0, SCAN);
		}
		return map;
	}

	@Test
	void reportsWhatLiesAside() {
		Finding finding = only(new JumpRule(), walk(0, 3, 6, 60, 12, 15).build());
		assertEquals(List.of("a-3"), samples(finding));
		assertEquals(54, finding.figure("step"));
		List<Finding> stretch = findings(new JumpRule(), walk(0, 3, 6, 60, 63, 66, 12, 15).build());
		assertEquals(List.of("a-3", "a-4", "a-5"), samples(stretch.get(0)));
		assertEquals(1, stretch.size());
		assertEquals(List.of(), findings(new JumpRule(), walk(0, 3, 6, 14, 12, 15).build()), "a brisk step");
	}

	@Test
	void reportsAJumpWithoutReturnByItsEnds() {
		List<Finding> findings = findings(new JumpRule(), walk(0, 3, 6, 60, 63, 66).build());
		assertEquals(List.of("a-2", "a-3"), samples(findings.get(0)));
		assertTrue(findings.get(0).remedy().isEmpty());
	}

	@Test
	void countsTheStairs() {
		SurveyedMap map = new TinyMap().survey("a").at(0).sample(0, 0, SCAN).at(2).floor(3).sample(0, 0, SCAN).at(60)
				.floor(2)
				.sample(0, 0, SCAN).build();
		List<Finding> findings = findings(new JumpRule(), map);
		assertEquals(1, findings.size());
		assertTrue(findings.get(0).message().contains("from floor 0 to 3"), findings.get(0).message());
	}

	@Test
	void saysOnceThatTimesAreNotThoseOfAWalk() {
		double[] xs = new double[40];
		for (int i = 0; i < xs.length; i++) {
			xs[i] = 50 * (i % 2);
		}
		List<Finding> findings = findings(new JumpRule(), walk(xs).build());
		assertEquals(1, findings.size());
		assertEquals(39, findings.get(0).figure("steps"));
	}

	@Test
	void reportsASurveyTakenInTwiceInAnotherOrder() {
		TinyMap map = new TinyMap().survey("first");
		for (int i = 0; i < 8; i++) {
			map.at(i).sample(i, 0, "ap1", -50 - i, "ap2", -60);
		}
		map.survey("second");
		for (int i = 7; i >= 0; i--) {
			map.at(i).sample(i, 0, "ap2", -60, "ap1", -50 - i);
		}
		Finding finding = only(new DuplicateSurveyRule(), map.build());
		assertEquals(List.of("second", "first"), TinyMap.labels(finding));
		assertEquals(new Remedy.SetAsideSurvey("second", "copy of first"), finding.remedy().orElseThrow());
	}

	@Test
	void setsAsideOnlyTheSharedPartOfALaterSurvey() {
		TinyMap map = new TinyMap().survey("first");
		for (int i = 0; i < 10; i++) {
			map.at(i).sample(i, 0, "ap1", -50 - i);
		}
		map.survey("second");
		for (int i = 4; i < 20; i++) {
			map.at(i).sample(i, 0, "ap1", -50 - i);
		}
		Finding finding = only(new DuplicateSurveyRule(), map.build());
		assertEquals(6, finding.remedy().orElseThrow().size());
	}

	@Test
	void doesNotTakeTheSameRoundOnAnotherDayForACopy() {
		TinyMap map = new TinyMap().survey("first");
		for (int i = 0; i < 10; i++) {
			map.at(i).sample(i, 0, "ap1", -50 - i);
		}
		map.survey("second");
		for (int i = 0; i < 10; i++) {
			map.at(100 + i).sample(i, 0, "ap1", -50 - i);
		}
		assertEquals(List.of(), findings(new DuplicateSurveyRule(), map.build()));
	}
}
