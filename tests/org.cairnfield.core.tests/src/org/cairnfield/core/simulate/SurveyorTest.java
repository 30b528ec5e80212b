package org.cairnfield.core.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.radio.MacAddress;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.core.radio.WifiChannel;
import org.cairnfield.core.task.Progress;
import org.cairnfield.core.task.Workers;
import org.junit.jupiter.api.Test;

class SurveyorTest {

	private static final Instant START = Instant.parse("2031-04-07T08:00:00Z");
	private static final RadioEnvironment STILL = new RadioEnvironment(ItuIndoor.OFFICE_2_4_GHZ, 30, 0, 5, 0.5, 0, 0,
			0);
	private static final SurveyDevice PERFECT = new SurveyDevice("perfect", 0, -200, 1, 0);

	private static SurveyPlan plan(SurveyDevice device, Walk walk) {
		return new SurveyPlan("test", "spring", walk, device, START, 1, 4, 1, 0);
	}

	/** One access point in the corner of two empty floors. */
	private static Campus shed(double powerDbm) {
		Site site = new Site("Shed", "SD", 0, 0, 4,
				List.of(new Floor(0, FloorOutline.rectangle(50, 10), List.of(new Wall(25, 0, 25, 10, 7)), List.of()),
						new Floor(1, FloorOutline.rectangle(50, 10), List.of(), List.of())));
		return new Campus("Shed", List.of(site), List.of(new AccessPoint(MacAddress.documentation(1), 0, 0, 0, 5,
				new WifiChannel(WifiBand.GHZ_2_4, 6), powerDbm)));
	}

	// Level = power less ITU-R P.1238 loss at the distance in space (access point 1.6 m above the receiver).
	@Test
	void meanLevelIsPowerLessPathLossWallsAndFloors() {
		Walk walk = (floor, random) -> List.of(new Place(10, 5), new Place(40, 5));
		RadioMap map = new Surveyor(shed(15), STILL, 1).survey(0, plan(PERFECT, walk), Workers.inline());
		assertEquals(Math.round(15 - ItuIndoor.OFFICE_2_4_GHZ.lossDb(Math.hypot(10, 1.6), 2437, 0)), map.rssiDbm(0));
		assertEquals(Math.round(15 - ItuIndoor.OFFICE_2_4_GHZ.lossDb(Math.hypot(40, 1.6), 2437, 0) - 7),
				map.rssiDbm(1));
		assertEquals(Math.round(15 - ItuIndoor.OFFICE_2_4_GHZ.lossDb(Math.hypot(10, 4 - 1.6), 2437, 1)),
				map.rssiDbm(2));
	}

	@Test
	void deviceAddsItsOffsetAndKeepsToItsRange() {
		Walk near = (floor, random) -> List.of(new Place(0, 5), new Place(20, 5));
		RadioMap plain = new Surveyor(shed(15), STILL, 1).survey(0, plan(PERFECT, near), Workers.inline());
		SurveyDevice lower = new SurveyDevice("lower", -5, -200, 1, 0);
		RadioMap shifted = new Surveyor(shed(15), STILL, 1).survey(0, plan(lower, near), Workers.inline());
		assertEquals(plain.rssiDbm(1) - 5, shifted.rssiDbm(1));
		RadioMap loud = new Surveyor(shed(60), STILL, 1).survey(0, plan(PERFECT, near), Workers.inline());
		assertEquals(-20, loud.rssiDbm(0));
		RadioMap faint = new Surveyor(shed(-50), STILL, 1).survey(0, plan(PERFECT, near), Workers.inline());
		assertTrue(faint.readingCount() < 4, "below -100 dBm nothing is heard");
	}

	@Test
	void weakAccessPointsDropOutGradually() {
		List<Place> still = new ArrayList<>();
		for (int i = 0; i < 2000; i++) {
			still.add(new Place(10, 5));
		}
		double level = 15 - ItuIndoor.OFFICE_2_4_GHZ.lossDb(Math.hypot(10, 1.6), 2437, 0);
		Walk walk = (floor, random) -> floor.level() == 0 ? still : List.of();
		SurveyDevice halfDeaf = new SurveyDevice("half deaf", 0, level, 1.5, 0);
		RadioMap half = new Surveyor(shed(15), STILL, 1).survey(0, plan(halfDeaf, walk), Workers.inline());
		assertEquals(1000, half.readingCount(), 110);
		SurveyDevice lossy = new SurveyDevice("lossy", 0, -200, 1.5, 0.1);
		RadioMap most = new Surveyor(shed(15), STILL, 1).survey(0, plan(lossy, walk), Workers.inline());
		assertEquals(1800, most.readingCount(), 70);
	}

	@Test
	void sameSeedGivesTheSameWhateverTheWorkers() {
		Campus campus = Campus.random(4, CampusSize.of(2, 2, 40));
		SurveyPlan plan = SurveyPlan.of("s", "spring", Walk.grid(3, 0.5), SurveyDevice.of("d", 0), START);
		Surveyor surveyor = new Surveyor(campus, RadioEnvironment.museum(), 9);
		String alone = MapText.of(surveyor.surveyAll(plan, Workers.inline()));
		ExecutorService threads = Executors.newFixedThreadPool(3);
		try {
			assertEquals(alone, MapText.of(surveyor.surveyAll(plan, Workers.on(threads, 3, Progress.NONE))));
		} finally {
			threads.shutdown();
		}
		Surveyor other = new Surveyor(campus, RadioEnvironment.museum(), 10);
		assertNotEquals(alone, MapText.of(other.surveyAll(plan, Workers.inline())));
	}

	@Test
	void oneAccessPointMoreLeavesTheOthersReadingsAlone() {
		Campus campus = Campus.random(4, CampusSize.of(1, 2, 20));
		List<AccessPoint> more = new ArrayList<>(campus.accessPoints());
		more.add(0,
				new AccessPoint(MacAddress.documentation(200), 0, 0, 3, 3, new WifiChannel(WifiBand.GHZ_2_4, 1), 10));
		SurveyPlan plan = SurveyPlan.of("s", "spring", Walk.grid(4, 0.5), SurveyDevice.of("d", 0), START);
		RadioMap before = new Surveyor(campus, RadioEnvironment.museum(), 9).survey(0, plan, Workers.inline());
		RadioMap after = new Surveyor(new Campus("more", campus.sites(), more), RadioEnvironment.museum(), 9).survey(0,
				plan, Workers.inline());
		String added = MacAddress.documentation(200).toString();
		assertTrue(after.accessPoints().contains(added));
		assertEquals(MapText.of(before), MapText.of(after).replaceAll(" " + added + "=-\\d+", ""));
	}

	@Test
	void clockRunsWithTheWalk() {
		SurveyPlan plan = plan(PERFECT, (floor, random) -> List.of(new Place(10, 5), new Place(16, 5))).repeated(2);
		RadioMap map = new Surveyor(shed(15), STILL, 1).survey(0, plan, Workers.inline());
		assertEquals(8, map.size());
		long start = START.toEpochMilli();
		assertEquals(start, map.timeMillis(0));
		assertEquals(start + 4000, map.timeMillis(1));
		// Twice 4 s recording, then 6 m at 1 m/s.
		assertEquals(start + 14_000, map.timeMillis(2));
		assertEquals(map.x(0), map.x(1), 0);
	}

	@Test
	void walksStayInsideKeepToTheirWayAndDiffer() {
		Floor floor = new FloorLayout(3, 8, 4, 12).draw(0, FloorOutline.lShape(50, 36, 24, 16));
		Set<Place> training = new HashSet<>(Walk.corridorsAndGrid(2, 2.2, 0.3).places(floor, Streams.random(1)));
		List<Place> test = Walk.wander(100, 2).places(floor, Streams.random(1));
		assertEquals(100, test.size());
		for (Place place : test) {
			assertTrue(floor.outline().contains(place.x(), place.y()));
		}
		assertTrue(training.stream().allMatch(p -> floor.outline().contains(p.x(), p.y())));
		// The corridor, 50 m long, is walked along its middle line and nowhere else.
		List<Place> inCorridor = training.stream().filter(p -> floor.corridors().get(0).contains(p.x(), p.y()))
				.filter(p -> !floor.corridors().get(1).contains(p.x(), p.y())).toList();
		assertTrue(inCorridor.size() >= 22, inCorridor.size() + " in the corridor");
		assertTrue(inCorridor.stream().allMatch(p -> p.y() == 10));
		assertTrue(test.stream().noneMatch(training::contains));
		List<Place> spread = Walk.spread(137).places(floor, Streams.random(1));
		assertEquals(137, new HashSet<>(spread).size());
	}
}
