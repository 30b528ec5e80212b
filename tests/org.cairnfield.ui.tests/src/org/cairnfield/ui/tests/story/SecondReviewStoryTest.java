package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Round;
import org.cairnfield.model.Verdict;
import org.cairnfield.ui.tests.robot.Hand;
import org.cairnfield.ui.tests.robot.PictureOnFailure;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.tests.robot.Widgets;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A band is approved after a sampled audit; another is seen by two persons, the second of whom knows nothing of the first. */
@ExtendWith(PictureOnFailure.class)
@Order(8)
class SecondReviewStoryTest {

	private static final String FIRST = "M.Q.";
	private static final String SECOND = "J.T.";
	private static final String THIRD = "R.S.";
	private static final String FAR = "pool: too far from the cluster";
	private static final String NOTE = "by the goods lift";

	@TempDir
	static Path folder;

	@AfterEach
	void showAll() {
		ReviewStage.showAll();
	}

	@AfterAll
	static void goBack() {
		ReviewStage.goBack();
	}

	@Test
	void approvesABandOnlyAfterItsAudit() throws Exception {
		ReviewStage.person(FIRST);
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "audit"), 188);
		int close = (int) Ui.ask(() -> review.split.getProposals().all().stream()
				.filter(p -> Bands.USUAL.of(p.strengthR()).get().name().equals("close")).count()).longValue();
		ReviewStage.waitForText("review.audit.plan", "proposals with a mark");
		Matcher marked = Pattern.compile("(\\d+) proposals with a mark are left to look at one by one")
				.matcher(ReviewStage.text("review.audit.plan"));
		assertTrue(marked.find(), ReviewStage.text("review.audit.plan"));
		int lot = close - Integer.parseInt(marked.group(1));
		int size = auditSize(lot);
		assertTrue(size > 0 && size < lot, size + " of " + lot);
		ReviewStage.waitForText("review.audit.plan",
				"look at " + size + " drawn of its " + lot + " proposals without a mark");
		Button approve = Widgets.byId(Button.class, "review.audit.approve");
		assertFalse(Ui.ask(approve::isEnabled), "nobody has looked yet");
		Hand.click(Widgets.byId(Button.class, "review.audit.look"));
		Ui.waitUntil("those drawn are listed", () -> review.queue.getItemCount() == size);
		review.focusQueue();
		for (int i = 1; i < size; i++) {
			review.decide("a", Decision.APPROVE);
		}
		ReviewStage.waitForText("review.audit.plan", "Looked at: " + (size - 1) + " of " + size + ", 0 not approved");
		assertFalse(Ui.ask(approve::isEnabled), "one is left");
		review.key("a");
		ReviewStage.waitForText("review.audit.plan", "The rest, " + (lot - size) + ", may be approved");
		List<Verdict> looked = review.verdicts();
		assertEquals(size, looked.size());
		Hand.click(approve);
		Ui.waitUntil("the rest is approved", () -> review.ledger().size() == lot);
		List<Verdict> all = review.verdicts();
		assertEquals(looked, all.subList(0, size));
		assertEquals(lot, all.stream().map(Verdict::getSample).distinct().count());
		String audit = all.get(0).getBatch();
		assertTrue(audit.startsWith("audit-close"), audit);
		for (Verdict verdict : all) {
			assertEquals(audit, verdict.getBatch());
			assertEquals(Decision.APPROVE, verdict.getDecision());
			assertEquals(FIRST, verdict.getPerson());
		}
		for (Verdict unseen : all.subList(size, lot)) {
			assertEquals(ReasonCode.BAND_AUDITED.code(), unseen.getReasonCode());
			assertTrue(unseen.getText().contains(size + " of " + lot + " proposals"), unseen.getText());
		}
	}

	/**
	 * The fewest to look at so that a lot with more than 5 % wrong shows one of them with a probability of 95 %: drawing
	 * without putting back, step by step.
	 */
	private static int auditSize(int lot) {
		int wrong = lot / 20 + 1;
		double noneSeen = 1;
		int size = 0;
		while (noneSeen > 0.05) {
			noneSeen *= (double) (lot - wrong - size) / (lot - size);
			size++;
		}
		return size;
	}

	@Test
	void letsASecondPersonDecideBlindAndAThirdSettle() throws Exception {
		ReviewStage.person(FIRST);
		ReviewStage review = ReviewStage.of(ReviewStage.open(folder, "blind"), 169);
		ReviewStage.second("fair");
		String untouched = review.count();
		int fair = (int) Ui.ask(() -> review.split.getProposals().all().stream()
				.filter(p -> Bands.USUAL.of(p.strengthR()).get().name().equals("fair")).count()).longValue();
		review.filter("fair", fair);
		String one = "aaaaappp";
		Map<String, Decision> first = new LinkedHashMap<>();
		for (char key : one.toCharArray()) {
			first.put(review.inHand(), decide(review, key).getDecision());
		}
		ReviewStage.waitForText("review.agreement", one.length() + " verdicts wait for a second reviewer.");
		review.focusQueue();
		review.key("a");
		ReviewStage.waitForText("review.message", "somebody else has to give the second");
		assertEquals(one.length(), review.verdicts().size(), "nobody is their own second");

		ReviewStage.person(SECOND);
		assertEquals(untouched, review.count(), "as if nobody had decided");
		review.filter("fair 2nd", one.length());
		assertEquals(first.keySet(), new HashSet<>(review.listed()));
		tellsNothing(review, first.keySet());
		String two = "aaappppa";
		long[][] table = new long[2][2];
		Set<String> differing = new HashSet<>();
		for (char key : two.toCharArray()) {
			String sample = review.inHand();
			tellsNothing(review, Set.of(sample));
			Verdict given = decide(review, key);
			assertEquals(Round.SECOND, given.getRound());
			assertNull(given.getSupersedes());
			table[first.get(sample).equals(Decision.APPROVE) ? 0 : 1][key == 'a' ? 0 : 1]++;
			if (first.get(sample) != given.getDecision()) {
				differing.add(sample);
			}
		}
		ReviewStage.waitForText("review.agreement",
				String.format(Locale.ROOT, "Two reviewers on %d samples: agree on %.0f %%, Cohen's κ %.2f ",
						one.length(), 100.0 * (table[0][0] + table[1][1]) / one.length(), kappa(table)));
		assertTrue(ReviewStage.text("review.agreement").contains(differing.size() + " to settle, 0 wait"),
				ReviewStage.text("review.agreement"));

		ReviewStage.person(THIRD);
		ReviewStage.showAll();
		Hand.choose(Widgets.byId(Combo.class, "review.shown"), "disagreements");
		Ui.waitUntil("they are listed", () -> review.queue.getItemCount() == differing.size());
		assertEquals(differing, new HashSet<>(review.listed()));
		review.focusQueue();
		String settled = review.inHand();
		assertTrue(review.evidence().contains(FIRST) && review.evidence().contains(SECOND), review.evidence());
		review.because("approve: the reviewer knows the place", "I was there with both");
		Verdict last = review.decide("a", Decision.APPROVE);
		assertEquals(Round.RESOLUTION, last.getRound());
		assertEquals(THIRD, last.getPerson());
		review.waitForState(settled, "✔ approved");
		ReviewStage.waitForText("review.agreement", differing.size() - 1 + " to settle");
	}

	/** What the first person sends to the pool carries words that the second must not see. */
	private static Verdict decide(ReviewStage review, char key) {
		if (key == 'p') {
			review.because(FAR, NOTE);
		}
		return review.decide(String.valueOf(key), key == 'a' ? Decision.APPROVE : Decision.POOL);
	}

	/** Neither the queue nor the evidence nor any other text of the review says what the first person decided. */
	private static void tellsNothing(ReviewStage review, Set<String> samples) {
		samples.forEach(sample -> assertEquals("2nd review", review.state(sample)));
		for (String text : List.of(review.evidence(), review.message(), ReviewStage.text("review.agreement"))) {
			for (String first : List.of(FIRST, NOTE, "κ", "Verdicts:", "agree on")) {
				assertFalse(text.contains(first), text);
			}
		}
		assertFalse(review.message().contains(" approved") && review.message().contains(samples.iterator().next()),
				review.message());
	}

	/** Cohen 1960: what they agree on beyond chance, by the share that each approves. */
	private static double kappa(long[][] table) {
		double all = table[0][0] + table[0][1] + table[1][0] + table[1][1];
		double observed = (table[0][0] + table[1][1]) / all;
		double one = (table[0][0] + table[0][1]) / all;
		double two = (table[0][0] + table[1][0]) / all;
		double expected = one * two + (1 - one) * (1 - two);
		return (observed - expected) / (1 - expected);
	}
}
