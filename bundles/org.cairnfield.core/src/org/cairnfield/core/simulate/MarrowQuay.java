package org.cairnfield.core.simulate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/**
 * The surveys of the invented Marrow Quay Museums: three sites in spring with one device and in autumn with
 * another, a visitor's walk through each on a later day for testing, and faults on purpose; then one of them in
 * the next spring. The same for the same seed.
 */
public final class MarrowQuay {

	/** A long hall and a side wing, 3 floors. */
	public static final String SAILMAKERS_HALL = "Sailmakers' Hall";
	/** 2 floors. */
	public static final String TIDE_HOUSE = "Tide House";
	/** A narrow warehouse, 4 floors. */
	public static final String LANTERN_STORE = "Lantern Store";
	/** The seed of the demo. */
	public static final long DEFAULT_SEED = 1;

	static final String SPRING = "spring";
	static final String AUTUMN = "autumn";
	static final String NEXT_SPRING = "next spring";
	static final String TEST = "test";

	private static final SurveyDevice SPRING_DEVICE = SurveyDevice.of("Wrist guide A", 0);
	private static final SurveyDevice AUTUMN_DEVICE = SurveyDevice.of("Wrist guide B", -5);

	private MarrowQuay() {
	}

	/** All surveys with their faults, computed on the calling thread; about a second. */
	public static SimulatedArchive surveys(long seed) {
		return MarrowQuayFaults.plant(clean(seed), seed);
	}

	/** The same surveys before anything was planted. */
	public static SimulatedArchive clean(long seed) {
		Campus spring = Campus.marrowQuay();
		Campus autumn = MarrowQuayFaults.afterMove(spring);
		List<SimulatedSurvey> surveys = new ArrayList<>();
		for (int site = 0; site < spring.sites().size(); site++) {
			String code = spring.sites().get(site).code().toLowerCase(Locale.ROOT);
			SurveyPlan plan = SurveyPlan.of(code + "-" + SPRING, SPRING, Walk.corridorsAndGrid(2.2, 3, 0.3),
					SPRING_DEVICE, Instant.parse("2031-04-07T07:30:00Z").plusSeconds(86_400L * site));
			surveys.add(survey(spring, site, plan, "J.K.", SimulatedSurvey.Role.TRAINING, seed));
		}
		for (int site = 0; site < spring.sites().size(); site++) {
			String code = spring.sites().get(site).code().toLowerCase(Locale.ROOT);
			SurveyPlan plan = SurveyPlan.of(code + "-" + AUTUMN, AUTUMN, Walk.corridorsAndGrid(2.2, 3, 0.8),
					AUTUMN_DEVICE, Instant.parse("2031-10-13T07:30:00Z").plusSeconds(86_400L * site));
			surveys.add(survey(autumn, site, plan, "M.O.", SimulatedSurvey.Role.TRAINING, seed));
		}
		for (int site = 0; site < spring.sites().size(); site++) {
			String code = spring.sites().get(site).code().toLowerCase(Locale.ROOT);
			SurveyPlan plan = SurveyPlan.of(code + "-" + TEST, AUTUMN, Walk.wander(56, 2.5), AUTUMN_DEVICE,
					Instant.parse("2031-11-17T09:00:00Z").plusSeconds(3 * 3600L * site));
			surveys.add(survey(autumn, site, plan, "R.T.", SimulatedSurvey.Role.TEST, seed));
		}
		return new SimulatedArchive(spring, surveys, List.of());
	}

	/** What comes later: the Sailmakers' Hall in the next spring, with the spring's device, part of the network having changed over the winter. */
	public static SimulatedArchive later(long seed) {
		List<PlantedFault> truth = new ArrayList<>();
		Campus campus = MarrowQuayWinter.after(MarrowQuayFaults.afterMove(Campus.marrowQuay()), seed, truth);
		SurveyPlan plan = SurveyPlan.of("sh-next-spring", NEXT_SPRING, Walk.corridorsAndGrid(2.2, 3, 0.3),
				SPRING_DEVICE,
				Instant.parse("2032-04-05T07:30:00Z"));
		return new SimulatedArchive(campus,
				List.of(survey(campus, MarrowQuayWinter.SITE, plan, "J.K.", SimulatedSurvey.Role.TRAINING, seed)),
				truth);
	}

	private static SimulatedSurvey survey(Campus campus, int site, SurveyPlan plan, String surveyor,
			SimulatedSurvey.Role role, long seed) {
		RadioMap map = new Surveyor(campus, RadioEnvironment.museum(), seed).survey(site, plan, Workers.inline());
		LocalDate date = plan.start().atZone(ZoneOffset.UTC).toLocalDate();
		Site where = campus.sites().get(site);
		return new SimulatedSurvey(plan.name(), role, where.name(), plan.device().name(), surveyor, date, map,
				ids(plan.name(), map.size()));
	}

	/** Ids such as {@code SH-SPRING-0001}. */
	static List<String> ids(String survey, int count) {
		List<String> ids = new ArrayList<>(count);
		for (int i = 1; i <= count; i++) {
			ids.add(String.format(Locale.ROOT, "%s-%04d", survey.toUpperCase(Locale.ROOT), i));
		}
		return ids;
	}

	/** The same survey with other samples under the same ids. */
	static SimulatedSurvey with(SimulatedSurvey survey, RadioMap map) {
		return new SimulatedSurvey(survey.name(), survey.role(), survey.site(), survey.device(), survey.surveyor(),
				survey.date(), map, survey.sampleIds());
	}
}
