package org.cairnfield.core.distance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.map.ScatteredMap;
import org.junit.jupiter.api.Test;

class ComponentsTest {

	@Test
	void joinsSamplesThatShareAnAccessPointThroughOthers() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 0, 0).reading("a", -50);
		b.sample("Lantern Store", 0, 0, 0).reading("z", -50);
		b.sample("Tide House", 0, 0, 0).reading("c", -50).reading("b", -50);
		b.sample("Tide House", 0, 0, 0);
		b.sample("Tide House", 0, 0, 0).reading("a", -50).reading("b", -50);
		b.sample("Tide House", 0, 0, 0);
		Components found = Signals.of(b.build()).components();
		assertEquals(4, found.count());
		int[] expected = { 0, 1, 0, 2, 0, 3 }; // numbered by the first sample; a silent one is alone
		for (int s = 0; s < expected.length; s++) {
			assertEquals(expected[s], found.componentOf(s), "sample " + s);
		}
		assertEquals(3, found.largest());
		assertEquals(2, found.member(0, 1));
		assertEquals(2, found.placeOf(4));
	}

	@Test
	void saysWhichComponentHearsAnAccessPoint() {
		RadioMapBuilder b = new RadioMapBuilder();
		b.accessPoint("unheard");
		b.sample("Tide House", 0, 0, 0).reading("a", -50);
		b.sample("Lantern Store", 0, 0, 0).reading("z", -50);
		Signals signals = Signals.of(b.build());
		assertEquals(-1, signals.componentOfColumn(0));
		assertEquals(0, signals.componentOfColumn(1));
		assertEquals(1, signals.componentOfColumn(2));
	}

	/** Against reachability step by step. */
	@Test
	void equalsWhatSharedAccessPointsReach() {
		for (long seed = 1; seed <= 50; seed++) {
			RadioMap map = ScatteredMap.of(seed, 40);
			Components found = Signals.of(map).components();
			boolean[][] reaches = new boolean[40][40];
			for (int a = 0; a < 40; a++) {
				for (int b = 0; b < 40; b++) {
					reaches[a][b] = a == b || shares(map, a, b);
				}
			}
			for (int via = 0; via < 40; via++) {
				for (int a = 0; a < 40; a++) {
					for (int b = 0; b < 40; b++) {
						reaches[a][b] |= reaches[a][via] && reaches[via][b];
					}
				}
			}
			int members = 0;
			for (int c = 0; c < found.count(); c++) {
				for (int place = 0; place < found.size(c); place++) {
					int s = found.member(c, place);
					assertEquals(c, found.componentOf(s));
					assertEquals(place, found.placeOf(s));
					assertTrue(place == 0 || found.member(c, place - 1) < s);
					members++;
				}
			}
			assertEquals(40, members);
			for (int a = 0; a < 40; a++) {
				for (int b = 0; b < 40; b++) {
					assertEquals(reaches[a][b], found.componentOf(a) == found.componentOf(b), a + " and " + b);
				}
			}
		}
	}

	private static boolean shares(RadioMap map, int a, int b) {
		for (int k = map.firstReading(a); k < map.endReading(a); k++) {
			if (map.rssiDbm(b, map.accessPoint(k), 1) != 1) {
				return true;
			}
		}
		return false;
	}
}
