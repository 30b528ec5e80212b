package org.cairnfield.curation.effect;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.Campus;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.ItuIndoor;
import org.cairnfield.core.simulate.RadioEnvironment;
import org.cairnfield.core.simulate.SurveyDevice;
import org.cairnfield.core.simulate.SurveyPlan;
import org.cairnfield.core.simulate.Surveyor;
import org.cairnfield.core.simulate.Walk;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.SimulatedSurveys;
import org.cairnfield.curation.rules.Survey;
import org.cairnfield.curation.rules.SurveyedMapBuilder;

/**
 * A house whose floors hear one another well, surveyed by several scans at few places, far apart and not equally many on each floor.
 * Nothing is wrong with it, and yet many samples have neighbours on other floors.
 */
final class SparseHalls {

	private static final RadioEnvironment HALLS = new RadioEnvironment(ItuIndoor.COMMERCIAL_1_9_GHZ, 12, 5, 5, Double.parseDouble(System.getProperty("fc", "0.7")), 5, 2, 0);
	private static final int[] PLACES = { 14, 40, 22, 60 };

	private SparseHalls() {
	}

	static MeasuredSet of(long seed) {
		Campus campus = Campus.random(seed, new CampusSize(1, PLACES.length, 60, false, 110, 15));
		for (org.cairnfield.core.simulate.AccessPoint a : List.copyOf(campus.accessPoints())) {
			if (a.level() % 2 == 0) {
				campus = campus.withMoved(a.address(), a.level() + 1, a.x(), a.y());
			}
		}
		RadioMapBuilder map = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<Survey> surveys = new ArrayList<>();
		List<Integer> surveyOf = new ArrayList<>();
		for (int person = 0; person < 4; person++) {
			int own = person;
			Walk walk = (floor, random) -> {
				List<org.cairnfield.core.simulate.Place> all = Walk.spread(PLACES[floor.level()]).places(floor, random);
				return java.util.stream.IntStream.range(0, all.size()).filter(i -> (i + own) % 4 < 2).mapToObj(all::get).toList();
			};
			SurveyPlan plan = SurveyPlan.of("person-" + person, "spring", walk, new SurveyDevice("Handset " + person, 2.5 * person - 3.5, -91 + person * Integer.getInteger("sens", 5), 1.5, Double.parseDouble(System.getProperty("drop", "0.1"))),
					Instant.parse("2033-04-04T08:00:00Z").plusSeconds(86_400L * person)).repeated(own % 2 == 0 ? Integer.getInteger("ra", 12) : Integer.getInteger("rb", 1));
			RadioMap survey = new Surveyor(campus, HALLS, seed).survey(0, plan, Workers.inline());
			SimulatedSurveys.append(survey, map);
			for (int s = 0; s < survey.size(); s++) {
				ids.add(plan.name() + "-" + s);
				surveyOf.add(person);
			}
			surveys.add(Survey.undated(plan.name(), campus.sites().get(0).name()));
		}
		SurveyPlan test = SurveyPlan.of("test", "spring", Walk.wander(150, 3), SurveyDevice.of("Handset T", 0),
				Instant.parse("2033-05-04T08:00:00Z"));
		return new MeasuredSet("sparse halls " + seed, new SurveyedMapBuilder(map.build(), ids,
				surveyOf.stream().mapToInt(Integer::intValue).toArray(), surveys).build(),
				new Surveyor(campus, HALLS, seed).survey(0, test, Workers.inline()));
	}
}
