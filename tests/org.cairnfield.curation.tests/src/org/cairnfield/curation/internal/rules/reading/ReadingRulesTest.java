package org.cairnfield.curation.internal.rules.reading;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class ReadingRulesTest {

	private static Finding only(Rule rule, SurveyedMap map) {
		List<Finding> findings = findings(rule, map);
		assertEquals(1, findings.size(), findings.toString());
		assertEquals(List.of(), findings(rule, RemediedMap.ofFindings(map, findings).map()), "after the remedy");
		return findings.get(0);
	}

	@Test
	void leavesOutLevelsBelowTheNoise() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "ap1", -25, "ap3", -105)
				.sample(1, 0, "ap1", -106, "ap2", -60).build();
		Finding finding = only(new OutOfRangeRule(), map);
		assertEquals(1, finding.figure("too weak"));
		assertEquals(Severity.WARNING, finding.severity());
		assertEquals(List.of("a", "ap1"), TinyMap.labels(finding));
		Remedy.DropReadings drop = (Remedy.DropReadings) finding.remedy().orElseThrow();
		assertEquals(List.of(new Remedy.Reading("a-1", "ap1")), drop.readings());
		assertEquals("leave out 1 reading of 1 sample: below what a receiver can hear", drop.preview());
		assertEquals(List.of(), findings(new OutOfRangeRule(), Settings.USUAL.with(OutOfRangeRule.LOWEST, -110), map));
	}

	@Test
	void notesLevelsThatAreTooStrongButLeavesThemIn() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "ap1", -25, "ap2", -24).sample(1, 0, "ap2", -60)
				.build();
		List<Finding> findings = findings(new OutOfRangeRule(), map);
		assertEquals(1, findings.size());
		assertEquals(1, findings.get(0).figure("too strong"));
		assertEquals(Severity.NOTE, findings.get(0).severity());
		assertTrue(findings.get(0).remedy().isEmpty(), "without it the sample would not hear its nearest access point");
		assertEquals(List.of(), findings(new OutOfRangeRule(), Settings.USUAL.with(OutOfRangeRule.HIGHEST, -10), map));
	}

	/** Forty readings of −110 dBm from four access points, beside levels such as any survey has. */
	private static TinyMap withCode(int codeDbm, int codes) {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 40; i++) {
			Object[] readings = new Object[12];
			for (int k = 0; k < 6; k++) {
				readings[2 * k] = "ap" + k;
				readings[2 * k + 1] = k < 4 && i < codes ? codeDbm : -60 - (7 * i + 5 * k) % 35;
			}
			map.sample(i, 0, readings);
		}
		return map;
	}

	@Test
	void tellsACodeFromALevel() {
		Finding finding = only(new NotHeardCodeRule(), withCode(-110, 10).build());
		assertEquals(-110, finding.figure("level"));
		assertEquals(40, finding.figure("readings"));
		assertEquals(10, TinyMap.samples(finding).size());
		assertEquals(List.of(), findings(new NotHeardCodeRule(), withCode(-110, 4).build()), "sixteen are too few");
		assertEquals(List.of(), findings(new NotHeardCodeRule(), withCode(-75, 40).build()),
				"in the middle of the scale");
		assertEquals(0, only(new NotHeardCodeRule(), withCode(0, 10).build()).figure("level"));
		TinyMap two = new TinyMap().survey("a");
		for (int i = 0; i < 40; i++) {
			two.sample(i, 0, "ap1", -110, "ap2", -110, "ap3", -60 - i % 30);
		}
		assertEquals(List.of(), findings(new NotHeardCodeRule(), two.build()), "two access points may be that weak");
	}

	@Test
	void takesALevelWithLevelsAroundItForALevel() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 60; i++) {
			map.sample(i, 0, "ap1", -94 - i % 3, "ap2", -94 - i % 2, "ap3", -95);
		}
		assertEquals(List.of(), findings(new NotHeardCodeRule(), map.build()));
	}

	@Test
	void seesWhereAReceiverIsAtItsLimit() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 30; i++) {
			map.sample(i, 0, "ap1", -40, "ap2", -41 - i % 15, "ap3", i == 0 ? -30 : -40 - i % 10);
		}
		for (int i = 0; i < 10; i++) {
			map.sample(i, 9, "ap4", -40);
		}
		List<Finding> findings = findings(new SaturatedRule(), map.build());
		assertEquals(1, findings.size());
		assertEquals(-40, findings.get(0).figure("level"));
		assertTrue(findings.get(0).remedy().isEmpty(), "what the level was nobody knows");
		TinyMap fading = new TinyMap().survey("a");
		for (int i = 0; i < 60; i++) {
			fading.sample(i, 0, "ap1", -40 - i % 20, "ap2", -41 - i % 20, "ap3", -42 - i % 20);
		}
		assertEquals(List.of(), findings(new SaturatedRule(), fading.build()));
	}

	@Test
	void reportsAnAccessPointWhoseLevelNeverChanges() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 8; i++) {
			map.sample(3 * i, 0, "stuck", -70, "other", -60 - i);
		}
		Finding finding = only(new StuckLevelRule(), map.build());
		assertEquals(List.of("stuck", "a"), TinyMap.labels(finding));
		assertEquals(8, finding.remedy().orElseThrow().size());
		TinyMap onePlace = new TinyMap().survey("a");
		for (int i = 0; i < 30; i++) {
			onePlace.sample(0, 0, "steady", -70);
		}
		assertEquals(List.of(), findings(new StuckLevelRule(), onePlace.build()), "at one place a level may stay");
	}

	@Test
	void notesASingleLevelThirtyDecibelsApartAtOnePlace() {
		SurveyedMap map = new TinyMap().survey("a").sample(5, 5, "ap1", -50, "ap2", -70)
				.sample(5, 5, "ap1", -51, "ap2", -71)
				.sample(5, 5, "ap1", -81, "ap2", -99).sample(6, 5, "ap1", -50).build();
		List<Finding> findings = findings(new LevelsApartRule(), map);
		assertEquals(1, findings.size());
		assertEquals(31, findings.get(0).figure("farthest apart"));
		assertEquals(List.of("a", "ap1"), TinyMap.labels(findings.get(0)));
		assertEquals(List.of("a-2"), findings.get(0).samples().stream().map(Subject::label).toList(),
				"the two that agree are not named");
		assertEquals(Severity.NOTE, findings.get(0).severity());
		assertTrue(findings.get(0).remedy().isEmpty(),
				"left out it would count as not heard, which is farther off still");
	}

	@Test
	void setsAsideASampleThatStraysAtSeveralAccessPoints() {
		SurveyedMap map = new TinyMap().survey("a").sample(5, 5, "ap1", -50, "ap2", -60)
				.sample(5, 5, "ap1", -51, "ap2", -61)
				.sample(5, 5, "ap1", -81, "ap2", -92).build();
		Finding finding = only(new LevelsApartRule(), map);
		assertEquals(Severity.WARNING, finding.severity());
		assertEquals(List.of("a-2"), ((Remedy.SetAsideSamples) finding.remedy().orElseThrow()).sampleIds());
		assertEquals(1, finding.figure("places"));
	}

	@Test
	void doesNotCompareTwoDevicesOrTwoPlaces() {
		SurveyedMap map = new TinyMap().survey("a").sample(5, 5, "ap1", -50).device("Wrist guide B")
				.sample(5, 5, "ap1", -90)
				.sample(5, 6, "ap1", -50).build();
		assertEquals(List.of(), findings(new LevelsApartRule(), map));
	}

	@Test
	void setsAsideBothOfTwoThatDisagree() {
		SurveyedMap map = new TinyMap().survey("a").sample(5, 5, "ap1", -50, "ap2", -80)
				.sample(5, 5, "ap1", -80, "ap2", -50).build();
		assertEquals(2, only(new LevelsApartRule(), map).remedy().orElseThrow().size());
	}
}
