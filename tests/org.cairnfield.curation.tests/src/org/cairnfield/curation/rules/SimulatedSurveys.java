package org.cairnfield.curation.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cairnfield.core.geometry.Polygon;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.Floor;
import org.cairnfield.core.simulate.Place;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.simulate.Site;

/** The training surveys of a simulated archive as rules see them, with the outlines of its floors. */
public final class SimulatedSurveys {

	private SimulatedSurveys() {
	}

	public static SurveyedMap of(SimulatedArchive archive) {
		return of(archive, archive.surveys(SimulatedSurvey.Role.TRAINING));
	}

	public static SurveyedMap of(SimulatedArchive archive, List<SimulatedSurvey> surveys) {
		RadioMapBuilder builder = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<Integer> surveyOf = new ArrayList<>();
		List<Survey> infos = new ArrayList<>();
		for (SimulatedSurvey survey : surveys) {
			append(survey.map(), builder);
			ids.addAll(survey.sampleIds());
			for (int s = 0; s < survey.map().size(); s++) {
				surveyOf.add(infos.size());
			}
			infos.add(new Survey(survey.name(), survey.site(), Optional.of(survey.date()), survey.surveyor(),
					Optional.empty()));
		}
		SurveyedMapBuilder map = new SurveyedMapBuilder(builder.build(), ids,
				surveyOf.stream().mapToInt(Integer::intValue).toArray(), infos);
		for (Site site : archive.campus().sites()) {
			for (Floor floor : site.floors()) {
				List<Place> corners = floor.outline().corners();
				map.floor(new FloorPlan(site.name(), floor.level(),
						Optional.of(new Polygon(corners.stream().mapToDouble(Place::x).toArray(),
								corners.stream().mapToDouble(Place::y).toArray())),
						Optional.of(site.floorHeightMetres())));
			}
		}
		return map.build();
	}

	/** All samples of a map behind those in the builder, access points matched by name. */
	public static void append(RadioMap map, RadioMapBuilder builder) {
		for (int s = 0; s < map.size(); s++) {
			builder.sample(map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s));
			if (map.device(s) != RadioMap.NO_DEVICE) {
				builder.device(map.devices().get(map.device(s)));
			}
			if (map.timeMillis(s) != RadioMap.NO_TIME) {
				builder.time(map.timeMillis(s));
			}
			for (int k = map.firstReading(s); k < map.endReading(s); k++) {
				builder.reading(map.accessPoints().get(map.accessPoint(k)), map.rssiDbm(k));
			}
		}
	}
}
