package org.cairnfield.core.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.RandomMap;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two halves of one simulated survey differ by chance only; what is planted in one of them is found, and nothing else. */
class SiteChangeTest {

	private static final int PLANTED = 12;

	/** What was done to the later survey, or to the earlier one. */
	private record Planted(Set<String> gone, Set<String> come, Map<String, String> replaced) {
	}

	private static RadioMap simulated(long seed) {
		return RandomMap.of(seed, CampusSize.of(1, 2, 120), 1200, Workers.inline());
	}

	private static RadioMap half(RadioMap map, int which) {
		return map.where(s -> s % 2 == which);
	}

	/** @param name the new name of an access point; null for one that is left out */
	private static RadioMap renamed(RadioMap map, Function<String, String> name) {
		RadioMapBuilder copy = new RadioMapBuilder();
		for (int s = 0; s < map.size(); s++) {
			copy.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				String now = name.apply(map.accessPoints().get(map.accessPoint(k)));
				if (now != null) {
					copy.reading(now, map.rssiDbm(k));
				}
			}
		}
		return copy.build();
	}

	/** What is gone hung on another floor than what is new, for a new one in the place of one that is gone replaces it. */
	private static Planted plant(RadioMap map, long seed) {
		List<String> names = new ArrayList<>(map.accessPoints());
		Collections.shuffle(names, new Random(seed));
		Map<Integer, List<String>> byFloor = names.stream()
				.collect(Collectors.groupingBy(name -> homeFloor(map, map.accessPoints().indexOf(name))));
		Map<String, String> replaced = new HashMap<>();
		byFloor.get(0).subList(PLANTED, 2 * PLANTED).forEach(name -> replaced.put(name, name + " again"));
		return new Planted(new HashSet<>(byFloor.get(0).subList(0, PLANTED)),
				new HashSet<>(byFloor.get(1).subList(0, PLANTED)), replaced);
	}

	/** Where it is heard most strongly. */
	private static int homeFloor(RadioMap map, int accessPoint) {
		int loudest = 0;
		int most = Integer.MIN_VALUE;
		for (int s = 0; s < map.size(); s++) {
			int level = map.rssiDbm(s, accessPoint, Integer.MIN_VALUE);
			if (level > most) {
				most = level;
				loudest = s;
			}
		}
		return map.floor(loudest);
	}

	private static Set<String> addresses(SiteChange change, Fate... fates) {
		return change.with(fates).stream().map(AccessPointFate::address).collect(Collectors.toSet());
	}

	/** Precision and recall of at least nine in ten. */
	private static void assertFound(Set<String> planted, Set<String> found, String what) {
		long right = found.stream().filter(planted::contains).count();
		assertTrue(right >= 0.9 * found.size() && right >= 0.9 * planted.size(),
				() -> what + " planted " + planted + ", found " + found);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void findsWhatIsGoneNewAndReplaced(long seed) {
		RadioMap all = simulated(seed);
		Planted planted = plant(all, seed);
		RadioMap before = renamed(half(all, 0), name -> planted.come.contains(name) ? null : name);
		RadioMap after = renamed(half(all, 1),
				name -> planted.gone.contains(name) ? null : planted.replaced.getOrDefault(name, name));
		SiteChange change = SiteChange.between(before, after, 4);
		assertTrue(change.places() > 100, () -> change.places() + " places");
		assertFound(planted.gone, addresses(change, Fate.VANISHED), "gone");
		assertFound(planted.come, addresses(change, Fate.APPEARED).stream().filter(name -> !name.endsWith("again"))
				.collect(Collectors.toSet()), "new");
		Map<String, String> successors = change.with(Fate.REPLACED).stream()
				.collect(Collectors.toMap(AccessPointFate::address, AccessPointFate::successor));
		long right = planted.replaced.entrySet().stream()
				.filter(each -> each.getValue().equals(successors.get(each.getKey()))).count();
		assertTrue(right >= 0.9 * PLANTED && right >= 0.9 * successors.size(), () -> "successors " + successors);
		assertTrue(change.isChanged());
	}

	/** Two that hung on different floors change places, again and again. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void findsWhatWasMoved(long seed) {
		RadioMap all = simulated(seed);
		Planted planted = plant(all, seed);
		Map<String, String> swapped = new HashMap<>();
		List<String> up = new ArrayList<>(planted.come);
		for (String name : planted.gone) {
			String other = up.remove(0);
			swapped.put(name, other);
			swapped.put(other, name);
		}
		RadioMap after = renamed(half(all, 1), name -> swapped.getOrDefault(name, name));
		assertFound(swapped.keySet(), addresses(SiteChange.between(half(all, 0), after, 4), Fate.MOVED), "moved");
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void staysQuietWhereNothingChanged(long seed) {
		RadioMap all = simulated(seed);
		SiteChange change = SiteChange.between(half(all, 0), half(all, 1), 4);
		assertEquals(Set.of(), addresses(change, Fate.VANISHED, Fate.APPEARED, Fate.REPLACED, Fate.MOVED));
		assertFalse(change.isChanged());
	}

	/** A device that misses every third reading hears less everywhere; nothing is gone for that. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void doesNotTakeADeafDeviceForAChange(long seed) {
		RadioMap all = simulated(seed);
		Random random = new Random(seed);
		RadioMap after = renamed(half(all, 1), name -> random.nextInt(3) == 0 ? null : name);
		SiteChange change = SiteChange.between(half(all, 0), after, 4);
		assertEquals(Set.of(), addresses(change, Fate.VANISHED, Fate.REPLACED));
		assertFalse(change.isChanged());
	}

	@Test
	void knowsNothingOfSurveysWithoutAPlaceInCommon() {
		RadioMap before = new RadioMapBuilder().sample("Tide House", 0, 1, 1).reading("a", -50).build();
		RadioMap after = new RadioMapBuilder().sample("Tide House", 1, 1, 1).reading("b", -50).build();
		SiteChange change = SiteChange.between(before, after, ChangeLimits.SAME_PLACE_METRES);
		assertEquals(0, change.places());
		assertEquals(List.of(), change.fates());
		assertFalse(change.isChanged());
	}

	@Test
	void takesTheNearestPlaceOnTheFloor() {
		RadioMap before = new RadioMapBuilder().sample("Tide House", 0, 0, 0).sample("Tide House", 0, 3, 0)
				.sample("Tide House", 1, 1, 0).build();
		RadioMap after = new RadioMapBuilder().sample("Tide House", 0, 1.8, 0).sample("Tide House", 0, 3, 0.5)
				.sample("Tide House", 0, -2.1, 0).build();
		SharedPlaces shared = SharedPlaces.of(before, after, 2);
		assertEquals(1, shared.size());
		assertEquals(1, shared.before(0)[0]);
		assertEquals(2, shared.after(0).length);
	}
}
