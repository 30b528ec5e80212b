package org.cairnfield.curation.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.propose.Bands;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.GateResult;
import org.cairnfield.curation.release.GateSet;
import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReviewPolicyTest {

	private final ReviewFixture f = new ReviewFixture();
	private final ReviewPolicy strict = new ReviewPolicy(Bands.parse("weak -1; strong 0.7"), Set.of("weak", "strong"),
			0.02, 0.99);

	@Test
	void isReadAsItIsWritten() {
		assertEquals("bands: weak -1.0; strong 0.7 | second: strong, weak | limit: 0.02 | confidence: 0.99",
				strict.toString());
		assertEquals(strict, ReviewPolicy.parse(strict.toString()));
		assertEquals(ReviewPolicy.USUAL, ReviewPolicy.parse(ReviewPolicy.USUAL.toString()));
		assertEquals(ReviewPolicy.USUAL.withSecond(Set.of("fair")), ReviewPolicy.parse("second: fair"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '!', value = { "bands: weak! a band is a name", "second: huge! there is no band 'huge'",
			"limit: much! 'much' is no share",
			"limit: 2! lie between 0 and 1", "colour: red! 'colour: red' is no part of a review policy" })
	void saysWhatIsWrong(String text, String why) {
		String said = assertThrows(IllegalArgumentException.class, () -> ReviewPolicy.parse(text)).getMessage();
		assertTrue(said.contains(why.strip()), said);
		f.archive.setReviewPolicy(text);
		ReviewRefused refused = assertThrows(ReviewRefused.class, () -> ReviewPolicy.of(f.archive));
		assertTrue(refused.getMessage().contains(why.strip()) && refused.getMessage().endsWith("set it again"),
				refused.getMessage());
	}

	@Test
	void belongsToTheArchiveAndChangesItOnlyWhereItIsNotTheUsualOne() throws Exception {
		String digest = OpenArchive.digest(f.archive);
		assertFalse(new SetReviewPolicyCommand(f.archive, ReviewPolicy.USUAL).canExecute());
		f.run(new SetReviewPolicyCommand(f.archive, strict));
		assertEquals(strict, ReviewPolicy.of(f.archive));
		assertNotEquals(digest, OpenArchive.digest(f.archive));
		f.run(new SetReviewPolicyCommand(f.archive, ReviewPolicy.USUAL));
		assertNull(f.archive.getReviewPolicy());
		assertEquals(digest, OpenArchive.digest(f.archive));
		f.stack.undo();
		assertEquals(strict, ReviewPolicy.of(f.archive));
	}

	private GateResult secondReview(GateSet gates) {
		return GateCheck.of(f.archive, gates, null, PackRequest.USUAL, Workers.inline()).results().stream()
				.filter(result -> result.gate() == Gate.SECOND_REVIEW).findFirst().orElseThrow();
	}

	@Test
	void isWhatTheGatesJudgeBy() {
		SampleKey one = f.sample(0);
		f.run(f.by("M.Q.").approve(one, "fits", null));
		assertEquals(0, secondReview(GateSet.USUAL).figure());
		f.run(new SetReviewPolicyCommand(f.archive, strict));
		GateResult result = secondReview(GateSet.USUAL);
		assertEquals(1, result.figure());
		assertEquals("bands strong, weak", result.evidence());
	}

	@Test
	void isJoinedByBandsThatTheFileOfGatesNames() {
		GateSet gates = GateSet.parse("second-review-bands = fair");
		assertEquals(Set.of("fair"), gates.policy(f.archive).secondBands());
		f.run(new SetReviewPolicyCommand(f.archive, ReviewPolicy.USUAL.withSecond(Set.of("close"))));
		assertEquals(Set.of("fair", "close"), gates.policy(f.archive).secondBands());
		f.run(new SetReviewPolicyCommand(f.archive, strict));
		assertTrue(assertThrows(ReviewRefused.class, () -> gates.policy(f.archive)).getMessage()
				.contains("gates.txt: there is no band 'fair'"));
	}
}
