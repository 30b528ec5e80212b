package org.cairnfield.ui.review.internal.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cairnfield.curation.decide.LedgerEntry;
import org.cairnfield.curation.decide.ReviewState;
import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.propose.AdviceRates;
import org.cairnfield.curation.propose.Effect;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.Outlook;
import org.cairnfield.curation.propose.Warning;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.ui.review.internal.evidence.EvidenceText.Line;
import org.cairnfield.ui.review.internal.evidence.EvidenceText.Style;
import org.junit.jupiter.api.Test;

class EvidenceTextTest {

	private static Evidence evidence(String id, int cluster, double r) {
		return evidence(id, true, cluster, r, cluster);
	}

	private static Evidence evidence(String id, boolean made, int cluster, double r, int nearestCluster,
			Warning... warnings) {
		Set<Warning> all = EnumSet.noneOf(Warning.class);
		all.addAll(Set.of(warnings));
		return new Evidence(new SampleKey("sh-spring", id), 0, made, cluster, r, 0.11, new SampleKey("sh-spring", "C"),
				new SampleKey("sh-spring", "N"), 12, nearestCluster, 1.8, new SampleKey("sh-spring", "M"), true, 0.9, 5,
				5, 2.4, 0.5, 0.8,
				1.2, 3.4, 0.4, outlook(), all);
	}

	/** −0.8 m at 3 of 120 positions in the cluster, nothing elsewhere. */
	private static Outlook outlook() {
		return new Outlook(new Effect(-0.02, 0.01, 3, 120, 0, 0.4), new Effect(0.01, 0.02, 2, 120, 0, 0.3),
				new Effect(0, 0, 0, 120, 0, 1));
	}

	private static List<Line> lines(Evidence evidence, Standing standing) {
		return EvidenceText.of(evidence, "Tide House, floor 1", standing, "from 120 positions",
				new AdviceRates.Rate(40, 31), ZoneOffset.UTC);
	}

	private static boolean says(List<Line> lines, String text) {
		return lines.stream().anyMatch(line -> line.text().contains(text));
	}

	private static LedgerEntry entry(String id, Decision decision, String reason, String supersedes) {
		return new LedgerEntry(id, "archive", evidence("A", 7, 0.9).sample(), 7, decision, reason, null, "mq",
				Instant.parse("2026-03-12T10:15:00Z"), supersedes, Round.FIRST, null, null, null, null);
	}

	@Test
	void namesWhoEnteredAVerdictForItsPerson() {
		LedgerEntry entered = new LedgerEntry("v", "archive", evidence("A", 7, 0.9).sample(), 7, Decision.APPROVE, null,
				null, "mq",
				Instant.parse("2026-03-12T10:15:00Z"), null, Round.FIRST, null, null, null, "A. Clerk");
		assertTrue(EvidenceText.line(entered, ZoneOffset.UTC).contains("mq, entered by A. Clerk, "),
				EvidenceText.line(entered, ZoneOffset.UTC));
		assertFalse(EvidenceText.line(entry("v", Decision.APPROVE, null, null), ZoneOffset.UTC).contains("entered"));
	}

	private static Standing standing(ReviewState state, List<LedgerEntry> entries, LedgerEntry first, boolean stale,
			boolean hidden) {
		return new Standing(evidence("A", 7, 0.9).sample(), Optional.empty(), true, state, entries,
				Optional.ofNullable(first),
				Optional.empty(), Optional.empty(), stale, false, hidden);
	}

	@Test
	void asksThreeQuestionsAndAnswersWithFigures() {
		List<Line> lines = lines(evidence("A", 7, 0.943), null);
		List<String> questions = lines.stream().filter(line -> line.style() == Style.QUESTION).map(Line::text).toList();
		assertEquals(List.of("Advice: approve; positions get measurably better",
				"Does it belong there?  nothing against it", "Is its place right?  nothing against it",
				"Are its readings sound?  nothing against it"), questions);
		assertTrue(says(lines, "cluster 7, strength r 0.94, margin 0.110"));
		assertTrue(says(lines, "to the cluster on this floor: 1.8 m"));
		assertTrue(says(lines, "The effects of homes are computed from 120 positions."));
		assertTrue(says(lines, "Such advice was right in 78 % of 40 cases here, at places that had no part in it."));
	}

	@Test
	void putsWhatEachHomeWouldDoIntoATable() {
		assertEquals(
				List.of(new HomeRow("C7", "3/120", "−0.80 ± 0.40", "+0.40"),
						new HomeRow("pool", "0/120", "no change", "+1.00")),
				HomeRow.of(evidence("A", 7, 0.94)));
		assertEquals(new HomeRow("C2", "2/120", "≈ +0.60 ± 1.20", "+0.30"),
				HomeRow.of(evidence("A", true, 7, 0.9, 2)).get(1));
		assertEquals(List.of(new HomeRow("pool", "none asked", "unknown", "unknown")),
				HomeRow.of(Evidence.gone(new SampleKey("sh-spring", "A"), null, false)));
	}

	@Test
	void putsEachWarningUnderItsQuestion() {
		List<Line> lines = lines(evidence("A", true, 7, 0.9, 2, Warning.NEAREST_DIFFERS, Warning.READINGS_DOUBTFUL),
				null);
		int belongs = lines.indexOf(new Line(Style.QUESTION, "Does it belong there?  nothing against it"));
		assertEquals(new Line(Style.PLAIN, "its nearest labelled sample is in cluster 2, not 7"),
				lines.get(belongs + 1), "no mark, but told");
		int readings = lines.indexOf(new Line(Style.QUESTION, "Are its readings sound?  look closer"));
		assertEquals(Style.WARNING, lines.get(readings + 1).style());
		assertEquals(1, lines.stream().filter(line -> line.style() == Style.WARNING).count());
	}

	@Test
	void strikesSupersededVerdictsThrough() {
		LedgerEntry old = entry("1", Decision.APPROVE, "fits", null);
		LedgerEntry now = entry("2", Decision.REJECT, "far", "1");
		List<Line> lines = lines(evidence("A", 7, 0.9),
				standing(ReviewState.REJECTED, List.of(old, now), now, false, false));
		assertTrue(lines.contains(new Line(Style.STRUCK, "approve: the evidence agrees  mq, 12 Mar 2026, 10:15")));
		assertTrue(lines
				.contains(new Line(Style.PLAIN, "out of the map: too far from the cluster  mq, 12 Mar 2026, 10:15")));
	}

	@Test
	void strikesStaleVerdictsThroughAndSaysWhy() {
		LedgerEntry old = entry("1", Decision.APPROVE, "fits", null);
		List<Line> lines = lines(evidence("A", 7, 0.9), standing(ReviewState.STALE, List.of(old), old, true, false));
		assertEquals(1, lines.stream().filter(line -> line.style() == Style.STRUCK).count());
		assertTrue(says(lines, "no longer counts"));
	}

	@Test
	void tellsASecondReviewerNothingOfTheFirst() {
		List<Line> lines = lines(evidence("A", 7, 0.9), standing(ReviewState.UNDECIDED, List.of(), null, false, true));
		assertTrue(says(lines, "Somebody else has decided"));
		assertFalse(says(lines, "approve:"));
	}

	@Test
	void neverCallsStrengthQuality() {
		assertTrue(says(lines(evidence("A", 7, 0.9), null), "r says where it fits, not whether it is good."));
	}

	@Test
	void writesChangesWithASignUnlessTheyRoundToNothing() {
		assertEquals("+0.40", EvidenceText.signed(0.4, 2));
		assertEquals("−0.40", EvidenceText.signed(-0.4, 2));
		assertEquals("±0.00", EvidenceText.signed(-0.001, 2));
	}
}
