package org.cairnfield.curation.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.junit.jupiter.api.Test;

class WaiversTest {

	private static final Instant WHEN = Instant.parse("2031-04-09T10:00:00Z");

	/** A survey in which samples at those places heard nothing. */
	private static SurveyedMap emptyAt(double... xs) {
		TinyMap map = new TinyMap().survey("a");
		for (double x : xs) {
			map.sample(x, 0);
		}
		for (int i = 0; i < 30; i++) {
			map.sample(i, 5, "ap1", -50, "ap2", -60, "ap3", -70);
		}
		return map.build();
	}

	private static Finding finding(double... xs) {
		return TinyMap.findings(new FewReadingsRule(), emptyAt(xs)).get(0);
	}

	@Test
	void goByContentAndNotByIdOrRow() {
		Waiver waiver = Waiver.of(finding(3, 7), "behind the boiler", "J.K.", WHEN);
		// The same two samples in other rows, and so under other ids.
		assertTrue(waiver.covers(finding(7, 3)));
		assertEquals(finding(3, 7).contentKey(), finding(7, 3).contentKey());
		assertNotEquals(finding(3, 7).contentKey(), finding(3, 8).contentKey());
	}

	@Test
	void coverFewerSubjectsButNotMore() {
		Waiver waiver = Waiver.of(finding(3, 7), "behind the boiler", "J.K.", WHEN);
		assertTrue(waiver.covers(finding(3)));
		assertFalse(waiver.covers(finding(3, 7, 9)));
		assertFalse(waiver.covers(finding(9)));
	}

	@Test
	void holdForTheirRuleOnly() {
		Finding finding = finding(3);
		Finding sameOfAnother = new Finding("another-rule", finding.severity(), "…", finding.subjects(), List.of(),
				List.of(), finding.remedy());
		Waivers waivers = new Waivers(List.of(Waiver.of(finding, "known", "J.K.", WHEN)));
		assertEquals(List.of(sameOfAnother), waivers.open(List.of(finding, sameOfAnother)));
		assertFalse(Waiver.of(finding, "known", "J.K.", WHEN).covers(sameOfAnother));
		assertEquals("known", waivers.covering(finding).orElseThrow().reason());
	}

	@Test
	void areValues() {
		Waiver waiver = Waiver.of(finding(3, 7), "known", "J.K.", WHEN);
		assertEquals(waiver, new Waiver(waiver.rule(), waiver.subjectKeys(), "known", "J.K.", WHEN));
		waiver.subjectKeys()[0]++;
		assertTrue(waiver.covers(finding(3, 7)), "handing out keys gives nobody a hold on them");
		assertThrows(IllegalArgumentException.class, () -> Waiver.of(finding(3), "  ", "J.K.", WHEN));
	}
}
