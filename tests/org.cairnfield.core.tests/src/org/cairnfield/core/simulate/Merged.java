package org.cairnfield.core.simulate;

import java.util.List;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;

/** Several surveys as one map. */
final class Merged {

	private Merged() {
	}

	static RadioMap of(List<SimulatedSurvey> surveys) {
		RadioMapBuilder builder = new RadioMapBuilder();
		for (SimulatedSurvey survey : surveys) {
			RadioMap map = survey.map();
			for (int s = 0; s < map.size(); s++) {
				builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
				builder.device(survey.device()).time(map.timeMillis(s));
				for (int k = map.firstReading(s); k < map.endReading(s); k++) {
					builder.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
				}
			}
		}
		return builder.build();
	}
}
