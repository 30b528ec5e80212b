package org.cairnfield.curation.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.cairnfield.model.values.SampleKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShareTest {

	private static ProposalPlace place(String sample) {
		return new ProposalPlace(new SampleKey("th-spring", sample), "close", "th", 2);
	}

	private static boolean has(String share) {
		return Share.parse(share).has(place("TH-0412"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "band close", "band very close", "site th", "floor th/2", "floor th/-1", "part 2/3",
			"part 1/1" })
	void writesWhatItReads(String text) {
		assertEquals(text, Share.parse(text).toString());
		assertEquals(Share.parse(text), Share.parse("  " + text.replaceFirst(" ", "   ") + " "));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "band", "close", "half 1/2", "floor th", "floor 2", "floor th/x", "part 2", "part 0/3",
			"part 4/3", "part 1/100", "part -1/3",
			"site a b", "site a/b" })
	void refusesWhatIsNoShare(String text) {
		assertFalse(assertThrows(IllegalArgumentException.class, () -> Share.parse(text)).getMessage().isBlank());
		assertEquals(text, Share.kept(text).toString(), "it is kept as it is written");
		assertFalse(Share.kept(text).has(place("TH-0412")));
	}

	@Test
	void hasTheProposalsOfItsBandSiteOrFloorAlone() {
		assertTrue(has("band close") && has("band CLOSE") && has("site th") && has("floor th/2"));
		assertFalse(has("band fair") || has("site t") || has("floor th/1") || has("floor sh/2"));
		ProposalPlace gone = new ProposalPlace(new SampleKey("th-spring", "TH-0412"), "close", "", null);
		assertFalse(Share.parse("site th").has(gone) || Share.parse("floor th/2").has(gone));
	}

	@Test
	void cutsEachSampleIntoOnePartOfAboutTheSameSize() {
		int[] sizes = new int[3];
		for (int i = 0; i < 3000; i++) {
			ProposalPlace sample = place("TH-" + i);
			List<Integer> parts = IntStream.rangeClosed(1, 3).filter(part -> new Share.OfPart(part, 3).has(sample))
					.boxed().toList();
			assertEquals(1, parts.size(), sample::toString);
			sizes[parts.get(0) - 1]++;
		}
		for (int size : sizes) {
			assertEquals(1000, size, 100); // four standard deviations of a fair draw
		}
	}

	/** A change of these would give everybody's samples to somebody else. */
	@Test
	void cutsAsEveryOtherComputerDoes() {
		assertEquals(List.of(3, 2, 3, 2, 1, 3, 1, 2), IntStream.range(0, 8).mapToObj(i -> IntStream.rangeClosed(1, 3)
				.filter(part -> new Share.OfPart(part, 3).has(place("TH-" + i))).findFirst().orElseThrow()).toList());
	}
}
