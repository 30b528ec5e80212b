package org.cairnfield.core.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** One sample of a map taken apart, to be changed and put back. */
final class DraftSample {

	String site;
	int floor;
	double x;
	double y;
	String device;
	long timeMillis;
	/** Level in dBm by index of the access point in the map it came from. */
	final TreeMap<Integer, Integer> readings = new TreeMap<>();

	static List<DraftSample> of(RadioMap map) {
		List<DraftSample> drafts = new ArrayList<>(map.size());
		for (int s = 0; s < map.size(); s++) {
			DraftSample draft = new DraftSample();
			draft.site = map.sites().get(map.site(s));
			draft.floor = map.floor(s);
			draft.x = map.x(s);
			draft.y = map.y(s);
			draft.device = map.device(s) == RadioMap.NO_DEVICE ? null : map.devices().get(map.device(s));
			draft.timeMillis = map.timeMillis(s);
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				draft.readings.put(map.accessPoint(k), map.rssiDbm(k));
			}
			drafts.add(draft);
		}
		return drafts;
	}

	/**
	 * @param accessPoints names of the access points; those of the map the drafts came from, new ones behind. All
	 *                     keep their index, heard or not
	 */
	static RadioMap build(List<DraftSample> drafts, List<String> accessPoints) {
		RadioMapBuilder builder = new RadioMapBuilder();
		accessPoints.forEach(builder::accessPoint);
		for (DraftSample draft : drafts) {
			builder.sample(draft.site, draft.floor, draft.x, draft.y);
			if (draft.device != null) {
				builder.device(draft.device);
			}
			if (draft.timeMillis != RadioMap.NO_TIME) {
				builder.time(draft.timeMillis);
			}
			for (Map.Entry<Integer, Integer> reading : draft.readings.entrySet()) {
				builder.reading(reading.getKey(), reading.getValue());
			}
		}
		return builder.build();
	}
}
