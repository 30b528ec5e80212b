package org.cairnfield.curation.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.cairnfield.core.map.RadioMapBuilder;
import org.cairnfield.core.match.Estimates;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.measure.SideBySide.Placed;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.Archive;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;

class ErrorMapTest {

	private static SideBySide measured() {
		Archive archive = SmallArchives.simulated();
		SmallArchives.split(archive, "whole", 90, 4);
		ArchiveMap test = ArchiveMap.of(archive, Scope.ARCHIVE, SurveyKind.TEST);
		return SideBySide.of(test, Measures
				.of(ReleasedMap.of(archive, ReviewPolicy.USUAL), test.map(), PackRequest.USUAL, Workers.inline())
				.ways());
	}

	private static Placed placed(double x, double y, double putX, double putY, Landing landing) {
		return new Placed(new SampleKey("visit", "T" + x + y), "Tide House", 0, x, y, putX, putY, landing, "");
	}

	@Test
	void hasTheErrorsThatEachWayWasMeasuredBy() {
		SideBySide side = measured();
		assertEquals(List.of("plain", "plain-3w", "split", "split+approved", "released"),
				side.ways().stream().map(Way::name).toList());
		for (Way way : side.ways()) {
			ErrorMap map = ErrorMap.of(side, way);
			assertEquals(way.name(), map.way());
			assertEquals(150, map.placed().size());
			assertEquals(way.errors().meanMetres(), map.meanMetres(), 1e-9, way.name());
			assertEquals(way.errors().p95Metres(), map.p95Metres(), 1e-9, way.name());
			assertEquals(way.errors().siteAndFloorHits(), map.count(Landing.RIGHT_FLOOR), way.name());
			assertEquals(way.errors().points() - way.errors().located(), map.count(Landing.NOWHERE), way.name());
			double sum = map.heat(5).stream().mapToDouble(square -> square.meanMetres() * square.samples()).sum();
			assertEquals(way.errors().meanMetres() * way.errors().n(), sum, 1e-6, "each error is in one square");
		}
		assertTrue(side.ways().stream().map(way -> ErrorMap.of(side, way).meanMetres()).distinct().count() > 2,
				"the ways differ");
	}

	@Test
	void leadsFromWhereASampleWasTakenToWhereItWasPut() {
		SideBySide side = measured();
		Way way = side.ways().get(0);
		Estimates found = way.run().estimates();
		ErrorMap map = ErrorMap.of(side, way);
		for (int s = 0; s < map.placed().size(); s++) {
			Placed each = map.placed().get(s);
			assertEquals(side.keys().get(s), each.sample());
			assertEquals(List.of(side.test().x(s), side.test().y(s), found.x(s), found.y(s)),
					List.of(each.xMetres(), each.yMetres(), each.putXMetres(), each.putYMetres()));
			assertEquals(Landing.RIGHT_FLOOR, each.landing());
		}
	}

	@Test
	void tellsAnotherFloorFromAnotherSite() {
		SideBySide side = measured();
		RadioMapBuilder elsewhere = new RadioMapBuilder();
		for (int s = 0; s < side.test().size(); s++) {
			String site = s == 1 ? "Lantern Store" : side.test().sites().get(side.test().site(s));
			elsewhere.sample(site, side.test().floor(s) + (s == 0 ? 5 : 0), side.test().x(s), side.test().y(s));
		}
		Way way = side.ways().get(0);
		ErrorMap map = ErrorMap.of(new SideBySide(elsewhere.build(), side.keys(), side.ways()), way);
		assertEquals(List.of(Landing.OTHER_FLOOR, Landing.OTHER_SITE, Landing.RIGHT_FLOOR),
				map.placed().stream().limit(3).map(Placed::landing).toList());
		assertEquals(way.errors().meanMetres(), map.meanMetres(), 1e-9, "errors are those in the plane");
	}

	@Test
	void averagesErrorsInSquares() {
		ErrorMap map = new ErrorMap("plain",
				List.of(placed(1, 1, 1, 3, Landing.RIGHT_FLOOR), placed(4, 4.9, 8, 4.9, Landing.OTHER_FLOOR),
						placed(-0.5, 1, -0.5, 2, Landing.RIGHT_FLOOR),
						placed(2, 2, Double.NaN, Double.NaN, Landing.NOWHERE)));
		assertEquals(List.of(new ErrorSquare(-5, 0, 5, 1, 1), new ErrorSquare(0, 0, 5, 3, 2)), map.heat(5));
		assertEquals(7.0 / 3, map.meanMetres(), 1e-12);
	}

	@Test
	void choosesSquaresThatHoldSomeSamplesEach() {
		List<Placed> grid = IntStream.range(0, 100)
				.mapToObj(i -> placed(i % 10 * 2, i / 10 * 2, 0, 0, Landing.RIGHT_FLOOR)).toList();
		assertEquals(5, new ErrorMap("plain", grid).squareMetres(), "18 m × 18 m, 4 of 100 samples: 3.6 m");
		assertEquals(1, new ErrorMap("plain", List.of()).squareMetres());
		assertEquals(1, new ErrorMap("plain", grid.subList(0, 1)).squareMetres());
	}

	@Test
	void roundsUpToOneTwoAndFive() {
		assertEquals(List.of(1.0, 2.0, 5.0, 5.0, 10.0, 0.2),
				List.of(ErrorMap.roundUp(1), ErrorMap.roundUp(1.01), ErrorMap.roundUp(2.5),
						ErrorMap.roundUp(5), ErrorMap.roundUp(5.1), ErrorMap.roundUp(0.2)));
	}

	@Test
	void hasNoFiguresWithoutSamples() {
		ErrorMap none = new ErrorMap("plain", List.of());
		assertTrue(Double.isNaN(none.meanMetres()) && Double.isNaN(none.p95Metres()));
		assertEquals(List.of(), none.heat(5));
	}

	@Test
	void namesTheWaysOfReleases() {
		assertEquals(Optional.of("1.0.0"), Way.release(Way.ofRelease("1.0.0")));
		assertEquals(Optional.empty(), Way.release(Measures.RELEASED));
	}
}
