package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.cairnfield.core.map.RadioMap;

/** Some samples cut in two by their places, at random but always alike: one half proposes, the other judges. */
final class Halves {

	private static final long SEED = 3;

	private Halves() {
	}

	/** Two lists of samples. */
	static int[][] of(RadioMap map, int[] samples) {
		Set<List<Object>> places = new LinkedHashSet<>();
		Arrays.stream(samples).forEach(s -> places.add(place(map, s)));
		List<List<Object>> shuffled = new ArrayList<>(places);
		Collections.shuffle(shuffled, new Random(SEED));
		Map<List<Object>, Integer> half = new HashMap<>();
		for (int p = 0; p < shuffled.size(); p++) {
			half.put(shuffled.get(p), p % 2);
		}
		return new int[][] { Arrays.stream(samples).filter(s -> half.get(place(map, s)) == 0).toArray(),
				Arrays.stream(samples).filter(s -> half.get(place(map, s)) == 1).toArray() };
	}

	private static List<Object> place(RadioMap map, int sample) {
		return List.of(map.site(sample), map.floor(sample), map.x(sample), map.y(sample));
	}
}
