package org.cairnfield.ui.internal.exchange.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.Exchanged;
import org.cairnfield.archive.history.SavePoint;
import org.junit.jupiter.api.Test;

class ExchangeTextTest {

	private static final SavePoint ANN = point("aaaaaaaa1", "A. Steward");
	private static final SavePoint BEN = point("bbbbbbbb2", "B. Reviewer");

	private static SavePoint point(String id, String person) {
		return new SavePoint(id, person, Instant.parse("2031-05-02T10:00:00Z"), "2 samples moved", "2 samples moved\n",
				List.of());
	}

	private static Exchanged exchanged(List<SavePoint> received, List<SavePoint> sent, int conflicts, String... notes) {
		return new Exchanged(received, sent, Optional.empty(), conflicts, List.of(notes));
	}

	@Test
	void namesWhoseWorkCameIn() {
		assertEquals("Exchanged: received 3 save points from A. Steward, B. Reviewer, sent 1 save point.",
				ExchangeText.done(exchanged(List.of(BEN, ANN, BEN), List.of(ANN), 0)));
		assertEquals("Exchanged: received nothing, sent 2 save points. Note: 1.0.0 was released by others before you.",
				ExchangeText
						.done(exchanged(List.of(), List.of(ANN, ANN), 0, "1.0.0 was released by others before you")));
		assertEquals("Nothing to exchange. You and the others have the same save points.",
				ExchangeText.done(exchanged(List.of(), List.of(), 0)));
	}

	@Test
	void saysHowFarBothAreApart() {
		assertEquals("Ahead 1, behind 2. After the exchange there would be 1 conflict to decide.",
				ExchangeText.apart(exchanged(List.of(BEN, BEN), List.of(ANN), 1)));
		assertEquals("Ahead 1, behind 0.", ExchangeText.apart(exchanged(List.of(), List.of(ANN), 1)),
				"what is open here was open before");
		assertEquals("You and the others have the same save points.",
				ExchangeText.apart(exchanged(List.of(), List.of(), 0)));
	}

	@Test
	void listsWhatCameInFirst() {
		List<String[]> lines = ExchangeText.lines(exchanged(List.of(BEN), List.of(ANN), 0));
		assertEquals(List.of("Received B. Reviewer bbbbbbbb", "Sent A. Steward aaaaaaaa"),
				lines.stream().map(line -> line[0] + ' ' + line[2] + ' ' + line[4]).toList());
		assertEquals(ExchangeText.TITLES.size(), lines.get(0).length);
	}
}
