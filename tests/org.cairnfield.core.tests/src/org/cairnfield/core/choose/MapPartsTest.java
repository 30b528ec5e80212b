package org.cairnfield.core.choose;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;

class MapPartsTest {

	/** Sites by turns, a reading a sample. */
	private static RadioMap map(int samples, int sites) {
		RadioMapBuilder b = new RadioMapBuilder();
		for (int s = 0; s < samples; s++) {
			b.sample("house " + s % sites, 0, s, 0).reading("a", -50);
		}
		return b.build();
	}

	@Test
	void aMapThatIsNotLargeIsOnePart() {
		List<int[]> parts = MapParts.of(map(MapParts.WHOLE, 7), 1);
		assertEquals(1, parts.size());
		assertArrayEquals(IntStream.range(0, MapParts.WHOLE).toArray(), parts.get(0));
		assertEquals(1, MapParts.of(map(MapParts.WHOLE + 1, 1), 1).size());
	}

	@Test
	void aLargeOneIsCutBetweenSites() {
		RadioMap map = map(MapParts.WHOLE + 5_000, 10);
		List<int[]> parts = MapParts.of(map, 1);
		assertEquals(5, parts.size()); // two sites of 2,500 each
		int[] partOfSite = new int[10];
		Arrays.fill(partOfSite, -1);
		int count = 0;
		for (int p = 0; p < parts.size(); p++) {
			int[] samples = parts.get(p);
			assertArrayEquals(Arrays.stream(samples).sorted().toArray(), samples);
			for (int s : samples) {
				int site = map.site(s);
				assertTrue(partOfSite[site] < 0 || partOfSite[site] == p, "a site in two parts");
				partOfSite[site] = p;
			}
			count += samples.length;
		}
		assertEquals(map.size(), count);
	}

	@Test
	void theSeedDrawsTheOrder() {
		RadioMap map = map(MapParts.WHOLE + 5_000, 10);
		assertArrayEquals(MapParts.of(map, 1).toArray(), MapParts.of(map, 1).toArray());
		assertNotEquals(Arrays.deepToString(MapParts.of(map, 1).toArray()),
				Arrays.deepToString(MapParts.of(map, 2).toArray()));
	}
}
