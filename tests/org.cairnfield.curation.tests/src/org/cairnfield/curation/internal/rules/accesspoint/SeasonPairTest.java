package org.cairnfield.curation.internal.rules.accesspoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class SeasonPairTest {

	/** The same round in spring and autumn, in autumn by a device that reads 7 dB less. */
	private static SeasonPair pair() {
		TinyMap map = new TinyMap().survey("spring", LocalDate.of(2031, 4, 7));
		for (int i = 0; i < 28; i += 2) {
			map.hears(i, 9, TinyMap.senders());
		}
		map.survey("autumn", LocalDate.of(2031, 10, 13)).device("B");
		for (int i = 0; i < 28; i += 2) {
			map.hears(i, 9, i, 9, TinyMap.senders(), -7);
		}
		return SeasonPair.of(new RuleInput(map.build(), RuleScope.SITE, TinyMap.SITE), 1);
	}

	@Test
	void takesOutWhatTheDevicesReadApart() {
		SeasonPair pair = pair();
		assertEquals(14, pair.size());
		int compared = 0;
		for (double[] changes : pair.changes()) {
			for (double change : changes) {
				assertEquals(0, change, 1);
				compared++;
			}
		}
		assertTrue(compared > 40, compared + " levels compared");
	}

	@Test
	void countsWhereAnAccessPointIsHeard() {
		SeasonPair pair = pair();
		assertTrue(pair.isHeardWellInBoth(4, 3), "the one in the middle");
		assertFalse(pair.isHeardWellInBoth(4, 15));
		assertTrue(pair.wasHeardThen(0) && pair.isHeardNow(0));
		assertFalse(pair.isStuck(4));
		int[] near = pair.places(true, -45);
		// −30 dBm at 1 m and 30 dB a decade: −45 dBm at 3.16 m; it hangs at x 15, the round passes at y 9.
		assertEquals(4, near[4]);
	}
}
