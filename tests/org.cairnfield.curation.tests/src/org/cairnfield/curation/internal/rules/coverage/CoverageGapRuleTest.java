package org.cairnfield.curation.internal.rules.coverage;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.FloorPlan;
import org.cairnfield.curation.rules.Settings;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class CoverageGapRuleTest {

	/** Samples every 2 m on a floor of 40 m by 20 m, none from x = 10 to 30. */
	private static TinyMap withGap() {
		TinyMap map = new TinyMap().survey("a");
		for (int x = 1; x < 40; x += 2) {
			for (int y = 1; y < 20; y += 2) {
				if (x < 10 || x > 30) {
					map.sample(x, y, "ap1", -50);
				}
			}
		}
		return map;
	}

	private static SurveyedMap outlined(TinyMap map) {
		return map.build(b -> b.floor(
				new FloorPlan(TinyMap.SITE, 0, Optional.of(Polygon.rectangle(0, 0, 40, 20)), Optional.empty())));
	}

	@Test
	void reportsThePartThatNobodySurveyed() {
		Settings fine = Settings.USUAL.with(CoverageGapRule.CELL, 0.5);
		List<Finding> findings = findings(new CoverageGapRule(), fine, outlined(withGap()));
		assertEquals(1, findings.size());
		// Samples stand at x = 9 and 31: from 15 to 25 it is farther than 6 m, by 20 m.
		assertEquals(200, findings.get(0).figure("area"), 10);
		assertEquals(20, findings.get(0).figure("x"), 1);
		assertEquals(Severity.WARNING, findings.get(0).severity());
		Subject.OfCell cell = (Subject.OfCell) findings.get(0).subjects().get(0);
		assertTrue(cell.x() >= 14 && cell.x() <= 24, cell.toString());
	}

	@Test
	void goesByTheDistanceStated() {
		Settings wide = Settings.USUAL.with(CoverageGapRule.METRES, 12);
		assertEquals(List.of(), findings(new CoverageGapRule(), wide, outlined(withGap())));
	}

	@Test
	void looksBetweenSamplesWhereThereIsNoOutline() {
		List<Finding> findings = findings(new CoverageGapRule(), withGap().build());
		assertEquals(1, findings.size());
		assertEquals(Severity.NOTE, findings.get(0).severity());
		SurveyedMap line = new TinyMap().survey("a").sample(0, 0, "ap1", -50).sample(50, 0, "ap1", -50)
				.sample(90, 0, "ap1", -50).build();
		assertTrue(TinyMap.whyNot(new CoverageGapRule(), line).contains("lie on one line"));
	}

	@Test
	void tellsTwoGapsApart() {
		TinyMap map = new TinyMap().survey("a");
		for (int y = 1; y < 20; y += 2) {
			map.sample(20, y, "ap1", -50);
		}
		List<Finding> findings = findings(new CoverageGapRule(), outlined(map));
		assertEquals(2, findings.size());
		assertTrue(findings.get(0).figure("x") < 14 && findings.get(1).figure("x") > 26);
	}

	@Test
	void refusesCellsWithoutNumber() {
		SurveyedMap huge = withGap().build(b -> b.floor(new FloorPlan(TinyMap.SITE, 0,
				Optional.of(Polygon.rectangle(0, 0, 1e7, 1e7)), Optional.empty())));
		assertTrue(TinyMap.whyNot(new CoverageGapRule(), huge).contains("too large"));
	}
}
