package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.cairnfield.core.text.Words;

/** Cuts a map into the units of a scope, and tells whether a unit is what it was. */
public final class Units {

	/**
	 * A unit and all that an outcome for it can depend on, as one number.
	 */
	record Unit(RuleInput input, long key) {
	}

	private final SurveyedMap map;
	private final long[] nameKey;
	private final Map<String, String> radios;

	Units(SurveyedMap map) {
		this.map = map;
		radios = map.radios();
		nameKey = map.map().accessPoints().stream().mapToLong(ContentKeys::of).toArray();
	}

	/** The units, by name. A survey without samples in the map is none. */
	List<Unit> of(RuleScope scope) {
		return parts(map, scope).stream().map(part -> new Unit(part, key(part.map(), scope))).toList();
	}

	/** Likewise, without keys. */
	public static List<RuleInput> parts(SurveyedMap map, RuleScope scope) {
		Map<String, int[]> members = switch (scope) {
		case ARCHIVE -> Map.of("", IntStream.range(0, map.size()).toArray());
		case SURVEY -> grouped(map, s -> map.surveys().get(map.survey(s)).id());
		case SITE -> grouped(map, map::site);
		case FLOOR -> grouped(map, s -> Words.bind(Messages.Units_floor, map.site(s), map.map().floor(s)));
		};
		List<RuleInput> parts = new ArrayList<>();
		members.forEach((name, samples) -> parts
				.add(new RuleInput(samples.length == map.size() ? map : map.only(samples), scope, name)));
		return parts;
	}

	private static Map<String, int[]> grouped(SurveyedMap map, IntFunction<String> nameOf) {
		Map<String, int[]> groups = new TreeMap<>();
		Map<String, Integer> sizes = new TreeMap<>();
		for (int s = 0; s < map.size(); s++) {
			String name = nameOf.apply(s);
			int size = sizes.merge(name, 1, Integer::sum);
			int[] group = groups.computeIfAbsent(name, n -> new int[16]);
			if (size > group.length) {
				group = Arrays.copyOf(group, 2 * group.length);
				groups.put(name, group);
			}
			group[size - 1] = s;
		}
		groups.replaceAll((name, group) -> Arrays.copyOf(group, sizes.get(name)));
		return groups;
	}

	/** Order counts: an outcome may name the first of equals. */
	private long key(SurveyedMap part, RuleScope scope) {
		boolean[] heard = new boolean[nameKey.length];
		Arrays.fill(heard, scope == RuleScope.ARCHIVE);
		Set<Integer> surveys = new TreeSet<>();
		Set<String> sites = new TreeSet<>();
		Set<String> devices = new TreeSet<>();
		long key = ContentKeys.join(part.readingOfKey(), scope.ordinal());
		for (int s = 0; s < part.size(); s++) {
			key = ContentKeys.join(key, part.contentKey(s));
			key = ContentKeys.join(key, ContentKeys.of(part.sampleId(s)));
			key = ContentKeys.join(key, ContentKeys.of(part.device(s)));
			surveys.add(part.survey(s));
			sites.add(part.site(s));
			devices.add(part.device(s));
			for (int k = part.map().firstReading(s); k < part.map().endReading(s); k++) {
				heard[part.map().accessPoint(k)] = true;
			}
		}
		for (int a = 0; a < heard.length; a++) {
			if (heard[a]) {
				key = ContentKeys.join(key, nameKey[a]);
				String address = part.map().accessPoints().get(a);
				key = ContentKeys.join(key, part.isSetAside(address) ? 1 : 0);
				key = ContentKeys.join(key, ContentKeys.of(radios.getOrDefault(address, "")));
			}
		}
		for (String device : devices) {
			key = ContentKeys.join(key, ContentKeys.of(part.deviceNamed(device).id()));
		}
		for (int survey : surveys) {
			key = ContentKeys.join(key, ContentKeys.of(part.surveys().get(survey).toString()));
		}
		for (FloorPlan floor : part.floors()) {
			key = sites.contains(floor.site()) ? ContentKeys.join(key, floor.key()) : key;
		}
		for (Map.Entry<String, Double> offset : part.offsetsDb().entrySet()) {
			if (devices.contains(offset.getKey())) {
				key = ContentKeys.join(key, ContentKeys.of(offset.getKey()));
				key = ContentKeys.join(key, Double.doubleToLongBits(offset.getValue()));
			}
		}
		return key;
	}
}
