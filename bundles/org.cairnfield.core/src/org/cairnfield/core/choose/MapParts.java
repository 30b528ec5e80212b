package org.cairnfield.core.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;

/**
 * A large map in parts that are judged one by one: whole sites, for these hear little of each other, small ones together. In
 * an order drawn by seed, so that the first few stand for all.
 */
final class MapParts {

	/** Up to so many samples a map is judged as a whole. */
	static final int WHOLE = 20_000;
	private static final int SMALL = 5_000;

	private MapParts() {
	}

	/** Samples of each part, ascending; together all of them. A map of one part is one site or small. */
	static List<int[]> of(RadioMap map, long seed) {
		int[] sizes = new int[map.sites().size()];
		IntStream.range(0, map.size()).forEach(s -> sizes[map.site(s)]++);
		int[] partOfSite = new int[sizes.length];
		int parts = 0;
		int inLast = map.size() <= WHOLE ? Integer.MIN_VALUE : 0;
		for (int site : shuffled(sizes.length, seed)) {
			partOfSite[site] = parts;
			inLast += sizes[site];
			if (inLast >= SMALL) {
				parts++;
				inLast = 0;
			}
		}
		List<List<Integer>> samples = new ArrayList<>();
		for (int p = 0; p <= parts; p++) {
			samples.add(new ArrayList<>());
		}
		IntStream.range(0, map.size()).forEach(s -> samples.get(partOfSite[map.site(s)]).add(s));
		return samples.stream().filter(part -> !part.isEmpty())
				.map(part -> part.stream().mapToInt(Integer::intValue).toArray()).toList();
	}

	private static List<Integer> shuffled(int count, long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		List<Integer> order = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			order.add(random.nextInt(i + 1), i);
		}
		return order;
	}
}
