package org.cairnfield.curation.effect;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.LevelLine;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.SurveyedMapBuilder;

/**
 * A map with remedies applied to it, as the archive would have it afterwards. The archive itself is not needed, and is not
 * touched.
 *
 * @param map     after the remedies
 * @param touched ids of the samples that were left out, moved, or lost readings
 * @param accessPoints addresses that were set aside, grouped, or lost readings
 */
public record RemediedMap(SurveyedMap map, Set<String> touched, Set<String> accessPoints) {

	/** Applies remedies, each once; of several about one sample all count. */
	public static RemediedMap of(SurveyedMap before, Collection<Remedy> remedies) {
		Applied applied = new Applied(before);
		remedies.forEach(applied::add);
		return applied.done();
	}

	/** Applies all that the findings offer. */
	public static RemediedMap ofFindings(SurveyedMap before, Collection<Finding> findings) {
		return of(before, findings.stream().flatMap(finding -> finding.remedy().stream()).toList());
	}

	private static final class Applied {
		private final SurveyedMap before;
		private final Set<String> gone = new HashSet<>();
		private final Set<String> swapped = new HashSet<>();
		private final Map<String, Set<String>> dropped = new HashMap<>();
		private final Map<String, Integer> floors = new HashMap<>();
		/** Of samples that stand for several, the mean levels by address. */
		private final Map<String, Map<String, Integer>> means = new HashMap<>();
		private Map<String, Integer> rows = Map.of();
		private final Set<String> accessPoints = new TreeSet<>();
		private final Set<String> setAside;
		private final TreeMap<String, Double> offsets;
		private final TreeMap<String, String> radios;
		private final Map<String, String> countsAs = new TreeMap<>();
		private final Map<String, LevelLine> corrections = new TreeMap<>();

		Applied(SurveyedMap before) {
			this.before = before;
			setAside = new TreeSet<>(before.setAside());
			offsets = before.offsetsDb();
			radios = before.radios();
		}

		void add(Remedy remedy) {
			if (remedy instanceof Remedy.SetAsideSamples r) {
				gone.addAll(r.sampleIds());
			} else if (remedy instanceof Remedy.SetAsideSurvey r) {
				for (int s = 0; s < before.size(); s++) {
					if (before.surveys().get(before.survey(s)).id().equals(r.surveyId())) {
						gone.add(before.sampleId(s));
					}
				}
			} else if (remedy instanceof Remedy.SetAsideAccessPoints r) {
				setAside.addAll(r.addresses());
				accessPoints.addAll(r.addresses());
			} else if (remedy instanceof Remedy.SwapAxes r) {
				swapped.addAll(r.sampleIds());
			} else if (remedy instanceof Remedy.SetFloor r) {
				r.sampleIds().forEach(id -> floors.put(id, r.level()));
			} else if (remedy instanceof Remedy.DropReadings r) {
				r.readings().forEach(reading -> {
					dropped.computeIfAbsent(reading.sampleId(), id -> new HashSet<>()).add(reading.address());
					accessPoints.add(reading.address());
				});
			} else if (remedy instanceof Remedy.AverageSamples r) {
				r.groups().forEach(this::average);
			} else if (remedy instanceof Remedy.CalibrateDevice r) {
				offsets.put(r.device(), r.offsetDb());
			} else if (remedy instanceof Remedy.GroupAccessPoints r) {
				r.addresses().forEach(address -> radios.put(address, r.addresses().get(0)));
				accessPoints.addAll(r.addresses());
			} else if (remedy instanceof Remedy.CountAs r) {
				countsAs.putAll(r.others());
				accessPoints.addAll(r.others().keySet());
			} else if (remedy instanceof Remedy.MapFrom r) {
				for (int s = 0; s < before.size(); s++) {
					if (before.site(s).equals(r.site())
							&& before.surveys().get(before.survey(s)).date().map(r.from()::isAfter).orElse(false)) {
						gone.add(before.sampleId(s));
					}
				}
			} else if (remedy instanceof Remedy.CorrectDevice r) {
				corrections.put(r.device(), r.line());
			} else {
				throw new IllegalArgumentException("no change of a map is known for " + remedy);
			}
		}

		private void average(List<String> group) {
			rows = rows.isEmpty() ? rows() : rows;
			List<Integer> samples = group.stream().filter(rows::containsKey).map(rows::get).toList();
			if (samples.size() > 1) {
				means.put(before.sampleId(samples.get(0)),
						Remedy.AverageSamples.mean(samples.stream().map(this::levels).toList()));
				samples.stream().skip(1).forEach(s -> gone.add(before.sampleId(s)));
			}
		}

		private Map<String, Integer> rows() {
			Map<String, Integer> all = new HashMap<>();
			for (int s = 0; s < before.size(); s++) {
				all.put(before.sampleId(s), s);
			}
			return all;
		}

		private Map<String, Integer> levels(int s) {
			RadioMap radio = before.map();
			Map<String, Integer> levels = new TreeMap<>();
			for (int k = radio.firstReading(s); k < radio.endReading(s); k++) {
				levels.put(radio.accessPoints().get(radio.accessPoint(k)), radio.rssiDbm(k));
			}
			return levels;
		}

		RemediedMap done() {
			RadioMapBuilder builder = new RadioMapBuilder();
			List<String> ids = new ArrayList<>();
			List<Integer> surveys = new ArrayList<>();
			RadioMap radio = before.map();
			radio.accessPoints().forEach(builder::accessPoint);
			for (int s = 0; s < before.size(); s++) {
				if (!gone.contains(before.sampleId(s))) {
					copy(radio, s, builder);
					ids.add(before.sampleId(s));
					surveys.add(before.survey(s));
				}
			}
			SurveyedMapBuilder after = new SurveyedMapBuilder(builder.build(), ids,
					surveys.stream().mapToInt(Integer::intValue).toArray(), before.surveys());
			before.floors().forEach(after::floor);
			radio.sites().forEach(site -> after.site(site, before.siteNamed(site).id()));
			radio.devices().forEach(device -> after.device(device, before.deviceNamed(device).id()));
			setAside.forEach(after::setAside);
			offsets.forEach(after::offset);
			radios.forEach(after::radio);
			after.readingOf(before.readingOfKey());
			countsAs.forEach(after::countsAs);
			corrections.forEach(after::correction);
			Set<String> touched = new HashSet<>(gone);
			touched.addAll(swapped);
			touched.addAll(floors.keySet());
			touched.addAll(dropped.keySet());
			touched.addAll(means.keySet());
			return new RemediedMap(after.build(), touched, accessPoints);
		}

		private void copy(RadioMap radio, int s, RadioMapBuilder builder) {
			String id = before.sampleId(s);
			boolean swap = swapped.contains(id);
			builder.sample(before.site(s), floors.getOrDefault(id, radio.floor(s)), swap ? radio.y(s) : radio.x(s),
					swap ? radio.x(s) : radio.y(s));
			if (radio.device(s) != RadioMap.NO_DEVICE) {
				builder.device(before.device(s));
			}
			if (radio.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(radio.timeMillis(s));
			}
			Set<String> without = dropped.getOrDefault(id, Set.of());
			for (int k = radio.firstReading(s); k < radio.endReading(s) && !means.containsKey(id); k++) {
				if (!without.contains(radio.accessPoints().get(radio.accessPoint(k)))) {
					builder.reading(radio.accessPoint(k), radio.rssiDbm(k));
				}
			}
			means.getOrDefault(id, Map.of()).forEach((address, dbm) -> {
				if (!without.contains(address)) {
					builder.reading(address, dbm);
				}
			});
		}
	}
}
