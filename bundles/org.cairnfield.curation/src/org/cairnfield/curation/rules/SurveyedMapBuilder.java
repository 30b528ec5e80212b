package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** Puts a {@link SurveyedMap} together from what somebody's archive holds. */
public final class SurveyedMapBuilder {

	private final RadioMap map;
	private final List<String> sampleIds;
	private final int[] survey;
	private final List<Survey> surveys;
	private final List<FloorPlan> floors = new ArrayList<>();
	private final Set<String> setAside = new TreeSet<>();
	private final TreeMap<String, String> radios = new TreeMap<>();
	private final TreeMap<String, Double> offsetsDb = new TreeMap<>();
	private final Map<String, String> countsAs = new HashMap<>();
	private final Map<String, LevelLine> corrections = new HashMap<>();
	private long readingOfKey;
	private final Map<String, String> siteIds = new HashMap<>();
	private final Map<String, String> deviceIds = new HashMap<>();

	/**
	 * @param map       all samples that are in the map, with all they heard
	 * @param sampleIds unique ids, one a sample
	 * @param survey    index into {@code surveys}, one a sample
	 * @param surveys   with unique ids
	 * @throws IllegalArgumentException where lengths differ or an id occurs twice
	 */
	public SurveyedMapBuilder(RadioMap map, List<String> sampleIds, int[] survey, List<Survey> surveys) {
		if (sampleIds.size() != map.size() || survey.length != map.size()) {
			throw new IllegalArgumentException(
					map.size() + " samples, " + sampleIds.size() + " ids, " + survey.length + " surveys");
		}
		if (new HashSet<>(sampleIds).size() != sampleIds.size()) {
			throw new IllegalArgumentException("a sample id occurs twice");
		}
		if (surveys.stream().map(Survey::id).distinct().count() != surveys.size()) {
			throw new IllegalArgumentException("a survey id occurs twice");
		}
		for (int each : survey) {
			Objects.checkIndex(each, surveys.size());
		}
		this.map = map;
		this.sampleIds = List.copyOf(sampleIds);
		this.survey = survey.clone();
		this.surveys = List.copyOf(surveys);
	}

	/** The id of a site that has a name of its own; one that is not told has its name for an id. */
	public SurveyedMapBuilder site(String name, String id) {
		siteIds.put(name, id);
		return this;
	}

	/** Likewise for a device. */
	public SurveyedMapBuilder device(String name, String id) {
		deviceIds.put(name, id);
		return this;
	}

	/** What is known of a floor. */
	public SurveyedMapBuilder floor(FloorPlan floor) {
		floors.add(floor);
		return this;
	}

	/** An access point that is set aside. */
	public SurveyedMapBuilder setAside(String address) {
		setAside.add(address);
		return this;
	}

	/** An address known to be one of a radio's. */
	public SurveyedMapBuilder radio(String address, String radio) {
		radios.put(address, radio);
		return this;
	}

	/** Readings of an address count for another one; where a sample heard both, the stronger stands. */
	public SurveyedMapBuilder countsAs(String address, String other) {
		countsAs.put(address, other);
		return this;
	}

	/** By which line levels of a device become those of the reference device. */
	public SurveyedMapBuilder correction(String device, LevelLine line) {
		corrections.put(device, line);
		return this;
	}

	/** What was done to the readings of the map that is given, see {@link SurveyedMap#readingOfKey}. */
	public SurveyedMapBuilder readingOf(long key) {
		readingOfKey = key;
		return this;
	}

	/** By how much a device reads too high. */
	public SurveyedMapBuilder offset(String device, double offsetDb) {
		offsetsDb.put(device, offsetDb);
		return this;
	}

	public SurveyedMap build() {
		List<String> names = map.accessPoints();
		long[] nameKey = names.stream().mapToLong(ContentKeys::of).toArray();
		long[] keys = new long[map.size()];
		for (int s = 0; s < keys.length; s++) {
			long sum = map.heard(s);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				sum += ContentKeys.pair(nameKey[map.accessPoint(k)], map.rssiDbm(k));
			}
			keys[s] = sum;
		}
		return new SurveyedMap(kept(), sampleIds, survey, surveys, List.copyOf(floors), Set.copyOf(setAside), radios,
				offsetsDb, Map.copyOf(siteIds), Map.copyOf(deviceIds), keys, ownReadingOfKey());
	}

	private long ownReadingOfKey() {
		long key = readingOfKey;
		for (Map.Entry<String, String> each : new TreeMap<>(countsAs).entrySet()) {
			key = ContentKeys.join(key, ContentKeys.of(each.getKey() + '\n' + each.getValue()));
		}
		for (Map.Entry<String, LevelLine> each : new TreeMap<>(corrections).entrySet()) {
			key = ContentKeys.join(key, ContentKeys.of(each.getKey() + '\n' + each.getValue()));
		}
		return key;
	}

	private RadioMap kept() {
		if (countsAs.isEmpty() && corrections.isEmpty() && map.accessPoints().stream().noneMatch(setAside::contains)) {
			return map;
		}
		RadioMapBuilder kept = new RadioMapBuilder();
		map.accessPoints().forEach(kept::accessPoint);
		int[] column = columns(kept);
		SortedMap<Integer, Integer> strongest = new TreeMap<>();
		for (int s = 0; s < map.size(); s++) {
			copyPlace(map, s, kept);
			LevelLine line = map.device(s) == RadioMap.NO_DEVICE ? null
					: corrections.get(map.devices().get(map.device(s)));
			strongest.clear();
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				int accessPoint = column[map.accessPoint(k)];
				int dbm = line == null ? map.rssiDbm(k) : line.of(map.rssiDbm(k));
				if (accessPoint >= 0 && countsAs.isEmpty()) { // none meets another
					kept.reading(accessPoint, dbm);
				} else if (accessPoint >= 0) {
					strongest.merge(accessPoint, dbm, Math::max);
				}
			}
			strongest.forEach((accessPoint, dbm) -> kept.reading(accessPoint, dbm));
		}
		return kept.build();
	}

	/** Where the readings of each access point go; −1 for those of one that is set aside, or counts as such a one. */
	private int[] columns(RadioMapBuilder kept) {
		return map.accessPoints().stream().mapToInt(address -> {
			String other = countsAs.getOrDefault(address, address);
			return setAside.contains(address) || setAside.contains(other) ? -1 : kept.accessPoint(other);
		}).toArray();
	}

	private static void copyPlace(RadioMap from, int sample, RadioMapBuilder to) {
		to.sample(from.sites().get(from.site(sample)), from.floor(sample), from.x(sample), from.y(sample));
		if (from.device(sample) != RadioMap.NO_DEVICE) {
			to.device(from.devices().get(from.device(sample)));
		}
		if (from.timeMillis(sample) != RadioMap.NO_TIME) {
			to.time(from.timeMillis(sample));
		}
	}
}
