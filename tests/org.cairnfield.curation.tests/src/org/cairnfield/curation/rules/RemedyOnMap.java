package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** Applies remedies to a map as an archive would, to see whether they help. */
public final class RemedyOnMap {

	private RemedyOnMap() {
	}

	public static SurveyedMap apply(SurveyedMap map, List<Remedy> remedies) {
		Set<String> gone = new HashSet<>();
		Set<String> swapped = new HashSet<>();
		Set<Remedy.Reading> dropped = new HashSet<>();
		TreeMap<String, Integer> floors = new TreeMap<>();
		TreeMap<String, Double> offsets = map.offsetsDb();
		Set<String> setAside = new TreeSet<>(map.setAside());
		TreeMap<String, String> radios = map.radios();
		for (Remedy remedy : remedies) {
			if (remedy instanceof Remedy.SetAsideSamples r) {
				gone.addAll(r.sampleIds());
			} else if (remedy instanceof Remedy.SetAsideSurvey r) {
				for (int s = 0; s < map.size(); s++) {
					if (map.surveys().get(map.survey(s)).id().equals(r.surveyId())) {
						gone.add(map.sampleId(s));
					}
				}
			} else if (remedy instanceof Remedy.SetAsideAccessPoints r) {
				setAside.addAll(r.addresses());
			} else if (remedy instanceof Remedy.SwapAxes r) {
				swapped.addAll(r.sampleIds());
			} else if (remedy instanceof Remedy.SetFloor r) {
				r.sampleIds().forEach(id -> floors.put(id, r.level()));
			} else if (remedy instanceof Remedy.DropReadings r) {
				dropped.addAll(r.readings());
			} else if (remedy instanceof Remedy.CalibrateDevice r) {
				offsets.put(r.device(), r.offsetDb());
			} else if (remedy instanceof Remedy.GroupAccessPoints r) {
				r.addresses().forEach(a -> radios.put(a, r.addresses().get(0)));
			} else {
				throw new AssertionError(remedy);
			}
		}
		RadioMapBuilder builder = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<Integer> surveys = new ArrayList<>();
		RadioMap radio = map.map();
		radio.accessPoints().forEach(builder::accessPoint);
		for (int s = 0; s < map.size(); s++) {
			String id = map.sampleId(s);
			if (gone.contains(id)) {
				continue;
			}
			double x = swapped.contains(id) ? radio.y(s) : radio.x(s);
			double y = swapped.contains(id) ? radio.x(s) : radio.y(s);
			builder.sample(map.site(s), floors.getOrDefault(id, radio.floor(s)), x, y);
			if (radio.device(s) != RadioMap.NO_DEVICE) {
				builder.device(map.device(s));
			}
			if (radio.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(radio.timeMillis(s));
			}
			for (int k = radio.firstReading(s); k < radio.endReading(s); k++) {
				String address = radio.accessPoints().get(radio.accessPoint(k));
				if (!dropped.contains(new Remedy.Reading(id, address))) {
					builder.reading(address, radio.rssiDbm(k));
				}
			}
			ids.add(id);
			surveys.add(map.survey(s));
		}
		SurveyedMapBuilder result = new SurveyedMapBuilder(builder.build(), ids,
				surveys.stream().mapToInt(Integer::intValue).toArray(), map.surveys());
		map.floors().forEach(result::floor);
		setAside.forEach(result::setAside);
		offsets.forEach(result::offset);
		radios.forEach(result::radio);
		return result.build();
	}

	/** The map after all that the findings offer. */
	public static SurveyedMap applyAll(SurveyedMap map, List<Finding> findings) {
		return apply(map, findings.stream().flatMap(f -> f.remedy().stream()).toList());
	}
}
