package org.cairnfield.spark;

import java.util.SplittableRandom;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** Small maps that are hard to spread: many components, faint samples, equal fingerprints and equal distances. */
final class RandomMaps {

	private RandomMaps() {
	}

	static RadioMap of(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		int sites = random.nextInt(1, 12);
		int spread = random.nextInt(2, 30);
		int samples = random.nextInt(20, 250);
		RadioMapBuilder builder = new RadioMapBuilder();
		for (int s = 0; s < samples; s++) {
			int site = random.nextInt(sites);
			builder.sample("Site " + site, random.nextInt(2), random.nextInt(40), random.nextInt(30));
			int heard = random.nextInt(random.nextInt(10) == 0 ? 0 : 1, 6);
			for (int a = 0; a < 6 && heard > 0; a++) {
				if (random.nextInt(6 - a) < heard) {
					builder.reading("ap " + site + ' ' + a, -90 + random.nextInt(random.nextInt(4) == 0 ? 2 : spread));
					heard--;
				}
			}
		}
		return builder.build();
	}
}
