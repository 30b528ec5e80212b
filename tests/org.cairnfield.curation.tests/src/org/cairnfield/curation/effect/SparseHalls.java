package org.cairnfield.curation.effect;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.simulate.AccessPoint;
import org.cairnfield.core.simulate.Campus;
import org.cairnfield.core.simulate.CampusSize;
import org.cairnfield.core.simulate.ItuIndoor;
import org.cairnfield.core.simulate.Place;
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
 * A house in which nothing is wrong, and yet many samples resemble other floors: floors hear one another well, every second one has no
 * access point of its own, places are few and far apart. Two of four people noted each place, with handsets of their own, eight scans
 * each.
 */
public final class SparseHalls {

	private static final RadioEnvironment HALLS = new RadioEnvironment(ItuIndoor.COMMERCIAL_1_9_GHZ, 12, 5, 5, 0.95, 5,
			2, 0);
	private static final int[] PLACES = { 14, 40, 22, 60 };
	private static final int PEOPLE = 4;

	private SparseHalls() {
	}

	public static MeasuredSet of(long seed) {
		Campus campus = campus(seed);
		Surveyor surveyor = new Surveyor(campus, HALLS, seed);
		RadioMapBuilder map = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<Survey> surveys = new ArrayList<>();
		List<Integer> surveyOf = new ArrayList<>();
		for (int person = 0; person < PEOPLE; person++) {
			SurveyDevice handset = new SurveyDevice("Handset " + person, 2.5 * person - 3.5, -91 + 5 * person, 1.5,
					0.1);
			SurveyPlan plan = SurveyPlan.of("person-" + person, "spring", walk(person), handset,
					Instant.parse("2033-04-04T08:00:00Z").plusSeconds(86_400L * person)).repeated(8);
			RadioMap survey = surveyor.survey(0, plan, Workers.inline());
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
				surveyor.survey(0, test, Workers.inline()));
	}

	private static Campus campus(long seed) {
		Campus campus = Campus.random(seed, new CampusSize(1, PLACES.length, 60, false, 110, 15));
		for (AccessPoint accessPoint : campus.accessPoints()) {
			if (accessPoint.level() % 2 == 0) {
				campus = campus.withMoved(accessPoint.address(), accessPoint.level() + 1, accessPoint.x(),
						accessPoint.y());
			}
		}
		return campus;
	}

	/** Half of the places of each floor. */
	private static Walk walk(int person) {
		return (floor, random) -> {
			List<Place> all = Walk.spread(PLACES[floor.level()]).places(floor, random);
			return IntStream.range(0, all.size()).filter(i -> (i + person) % PEOPLE < PEOPLE / 2).mapToObj(all::get)
					.toList();
		};
	}
}
