package org.cairnfield.core.simulate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.task.Workers;

/**
 * Surveys of any random campus in two seasons, by a device a season, with one fault or more of every kind, to score
 * what finds them on campuses that it was not made for. Which site, floor and sample a fault falls on is chance. The
 * same for the same seed.
 */
public final class FaultyCampus {

	private static final Instant SPRING_START = Instant.parse("2032-04-05T07:30:00Z");
	private static final Instant AUTUMN_START = Instant.parse("2032-10-11T07:30:00Z");
	private static final Instant TEST_START = Instant.parse("2032-11-08T09:00:00Z");
	private static final Planting SINGLE = new Planting(0.01, 0.003, 0.01, 0.005, 0.005, 0.002);

	private final long key;
	private final long seed;
	private final List<PlantedFault> truth = new ArrayList<>();

	private FaultyCampus(long seed) {
		this.seed = seed;
		key = Streams.key(seed, "faulty campus");
	}

	/**
	 * Training surveys, two a site, and a sound test survey of each site in autumn. A second or two on the calling thread.
	 *
	 * @param size at most 250 access points, so that all have addresses for documentation
	 */
	public static SimulatedArchive surveys(long seed, CampusSize size) {
		return new FaultyCampus(seed).make(size);
	}

	private SplittableRandom chance(String purpose) {
		return Streams.random(Streams.key(key, purpose));
	}

	private SimulatedArchive make(CampusSize size) {
		Campus spring = Campus.random(seed, size);
		Campus autumn = CampusChanges.overSummer(spring, chance("changes"), truth);
		double offsetDb = (chance("offset").nextBoolean() ? 1 : -1) * chance("offset size").nextDouble(4, 8);
		SurveyDevice first = SurveyDevice.of("Handset A", 0);
		SurveyDevice second = SurveyDevice.of("Handset B", offsetDb);
		truth.add(new PlantedFault(FaultKind.DEVICE_OFFSET, "", "", "",
				String.format(Locale.ROOT, "%s reads %.1f dB more than %s", second.name(), offsetDb, first.name())));
		SurveyFaults faults = new SurveyFaults(key, truth);
		List<SimulatedSurvey> surveys = new ArrayList<>();
		int sites = spring.sites().size();
		int[] siteOf = new int[6];
		SplittableRandom where = chance("sites");
		for (int i = 0; i < siteOf.length; i++) {
			siteOf[i] = where.nextInt(sites);
		}
		List<AccessPoint> doubled = CampusChanges.some(spring.accessPoints(), 3, chance("second addresses"));
		for (int season = 0; season < 2; season++) {
			for (int site = 0; site < sites; site++) {
				Campus campus = season == 0 ? spring : autumn;
				SimulatedSurvey survey = walk(campus, site, season, season == 0 ? first : second);
				if (site == siteOf[0]) {
					survey = faults.leaveOutPart(survey, campus.sites().get(site), season == 0);
				}
				survey = faults.single(survey, SINGLE);
				survey = CourierHotspot.walkThrough(survey, campus.sites().get(site), seed, truth);
				survey = faults.secondAddresses(survey, doubled, season == 0);
				survey = season == 0 && site == siteOf[1] ? faults.swapCorridor(survey, campus.sites().get(site))
						: survey;
				survey = season == 1 && site == siteOf[2] ? faults.mislabelRun(survey) : survey;
				survey = season == 1 && site == siteOf[3] ? faults.stuckLevel(survey) : survey;
				survey = season == 0 && site == siteOf[4] ? faults.notHeardCode(survey) : survey;
				survey = season == 1 && site == siteOf[5] ? new RecordFaults(key, truth).plant(survey) : survey;
				survey = faults.cachedScans(survey, 0.02);
				surveys.add(survey);
			}
		}
		surveys.add(faults.importAgain(surveys.get(where.nextInt(surveys.size()))));
		for (int site = 0; site < sites; site++) {
			surveys.add(test(autumn, site, second));
		}
		return new SimulatedArchive(spring, surveys, truth);
	}

	/** A visitor's way, with nothing planted in it. */
	private SimulatedSurvey test(Campus campus, int site, SurveyDevice device) {
		Site place = campus.sites().get(site);
		String name = place.code().toLowerCase(Locale.ROOT) + "-test";
		Instant start = TEST_START.plusSeconds(86_400L * site);
		SurveyPlan plan = SurveyPlan.of(name, "autumn", Walk.wander(60, 2.5), device, start);
		RadioMap map = new Surveyor(campus, RadioEnvironment.museum(), seed).survey(site, plan, Workers.inline());
		return new SimulatedSurvey(name, SimulatedSurvey.Role.TEST, place.name(), device.name(), "R.T.",
				start.atZone(ZoneOffset.UTC).toLocalDate(), map, MarrowQuay.ids(name, map.size()));
	}

	private SimulatedSurvey walk(Campus campus, int site, int season, SurveyDevice device) {
		Site place = campus.sites().get(site);
		String name = place.code().toLowerCase(Locale.ROOT) + (season == 0 ? "-spring" : "-autumn");
		Instant start = (season == 0 ? SPRING_START : AUTUMN_START).plusSeconds(86_400L * site);
		SurveyPlan plan = SurveyPlan.of(name, season == 0 ? "spring" : "autumn",
				Walk.corridorsAndGrid(2.2, 3, season == 0 ? 0.3 : 0.8), device, start);
		RadioMap map = new Surveyor(campus, RadioEnvironment.museum(), seed).survey(site, plan, Workers.inline());
		LocalDate date = start.atZone(ZoneOffset.UTC).toLocalDate();
		return new SimulatedSurvey(name, SimulatedSurvey.Role.TRAINING, place.name(), device.name(),
				season == 0 ? "J.K." : "M.O.", date, map, MarrowQuay.ids(name, map.size()));
	}
}
