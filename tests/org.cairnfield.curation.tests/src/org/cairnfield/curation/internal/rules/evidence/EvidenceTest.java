package org.cairnfield.curation.internal.rules.evidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cairnfield.core.distance.SignalRows;
import org.cairnfield.core.distance.Signals;
import org.cairnfield.core.stats.Median;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.rules.RuleInput;
import org.cairnfield.curation.rules.RuleScope;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class EvidenceTest {

	private static RuleInput input(SurveyedMap map) {
		return new RuleInput(map, RuleScope.ARCHIVE, "");
	}

	@Test
	void aSpotHearsWhatHalfOfItsSamplesHear() {
		Spots spots = Spots
				.of(input(new TinyMap().survey("a").sample(1, 1, "ap1", -50, "ap2", -80).sample(1, 1, "ap1", -54)
						.sample(1, 1, "ap1", -60).sample(2, 1, "ap2", -70).build(b -> b.offset("Wrist guide A", 2))));
		assertEquals(2, spots.size());
		assertArrayEquals(new int[] { 0, 1, 2 }, spots.members(spots.spotOf(0)));
		assertEquals(1, spots.map().heard(spots.spotOf(0)));
		assertEquals(-56, spots.map().rssiDbm(spots.spotOf(0), 0, 0), "the middle of three, two dB taken out");
	}

	@Test
	void surveysAndDevicesHaveTheirOwnSpotsAtOnePlace() {
		Spots spots = Spots.of(input(new TinyMap().survey("a").sample(1, 1, "ap1", -50).device("B")
				.sample(1, 1, "ap1", -50)
				.survey("b").sample(1, 1, "ap1", -50).sample(-0.0, 1, "ap1", -50).sample(0.0, 1, "ap1", -50).build()));
		assertEquals(4, spots.size());
		assertEquals(2, spots.places());
		assertEquals(spots.placeOf(spots.spotOf(0)), spots.placeOf(spots.spotOf(2)));
		assertNotEquals(spots.spotOf(0), spots.spotOf(1));
	}

	@Test
	void neighboursAreAtOtherPlacesThanTheSampleAndOneAnother() {
		SurveyedMap map = new TinyMap().survey("a").hears(5, 5, TinyMap.senders()).hears(5, 5, TinyMap.senders())
				.hears(6, 5, TinyMap.senders()).survey("b").hears(5, 5, TinyMap.senders())
				.hears(6, 5, TinyMap.senders())
				.hears(20, 15, TinyMap.senders()).build();
		RuleInput input = input(map);
		SignalNeighbours neighbours = SignalNeighbours.of(input, Workers.inline());
		RuleInputPlaces places = new RuleInputPlaces(Spots.of(input));
		assertEquals("6.0 5.0", places.of(neighbours.spot(0, 0)));
		assertEquals("20.0 15.0", places.of(neighbours.spot(0, 1)));
		assertEquals(-1, neighbours.spot(0, 2));
		assertTrue(neighbours.distance(0, 0) < neighbours.distance(0, 1));
	}

	@Test
	void neighboursAreThoseThatComparingWithEverySpotFinds() {
		SplittableRandom random = new SplittableRandom(24);
		for (int round = 0; round < 60; round++) {
			TinyMap tiny = new TinyMap();
			int places = 2 + random.nextInt(60);
			for (int survey = random.nextInt(3); survey >= 0; survey--) {
				tiny.survey("s" + survey);
				for (int s = random.nextInt(120); s >= 0; s--) {
					int place = random.nextInt(places);
					int wing = place % 3 == 0 ? 8 : 0;
					List<Object> heard = new ArrayList<>();
					for (int a = 0; a < 8; a++) {
						if (random.nextInt(3) == 0) {
							heard.add("ap" + (wing + a));
							heard.add(-40 - random.nextInt(random.nextBoolean() ? 4 : 60));
						}
					}
					tiny.sample(place % 7, place / 7, heard.toArray());
				}
			}
			RuleInput input = input(tiny.build());
			assertSameAsComparingWithEverySpot(input, Spots.of(input), SignalNeighbours.of(input, Workers.inline()));
		}
	}

	private static void assertSameAsComparingWithEverySpot(RuleInput input, Spots spots, SignalNeighbours neighbours) {
		Signals signals = Signals.of(spots.map());
		SignalRows queries = signals.align(input.map().map());
		double[] row = new double[signals.size()];
		for (int s = 0; s < input.map().size(); s++) {
			int component = signals.components().componentOf(spots.spotOf(s));
			int own = spots.placeOf(spots.spotOf(s));
			int n = signals.kernel().row(queries, s, component, row);
			Set<Integer> met = new HashSet<>();
			List<String> expected = IntStream.range(0, n).boxed()
					.sorted(Comparator.comparingDouble((Integer member) -> row[member])
							.thenComparingInt(member -> signals.components().member(component, member)))
					.filter(member -> spots.placeOf(signals.components().member(component, member)) != own
							&& met.add(spots.placeOf(signals.components().member(component, member))))
					.limit(SignalNeighbours.KEPT)
					.map(member -> signals.components().member(component, member) + " " + row[member]).toList();
			List<String> found = new ArrayList<>();
			for (int i = 0; i < SignalNeighbours.KEPT && neighbours.spot(s, i) >= 0; i++) {
				found.add(neighbours.spot(s, i) + " " + neighbours.distance(s, i));
			}
			assertEquals(expected, found);
		}
	}

	private record RuleInputPlaces(Spots spots) {
		String of(int spot) {
			return spots.map().x(spot) + " " + spots.map().y(spot);
		}
	}

	@Test
	void devicesAreComparedOnALevel() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 30; i++) {
			map.hears(i, 3, TinyMap.senders());
		}
		map.survey("b").device("B");
		for (int i = 0; i < 30; i += 2) {
			map.hears(i, 3.4, i, 3.4, TinyMap.senders(), -8);
		}
		RuleInput input = input(map.build());
		SignalNeighbours neighbours = SignalNeighbours.of(input, Workers.inline());
		// Sample 10 stands at x = 10; the nearest of all is that of the other device 0.4 m away.
		assertEquals("b", input.map().surveys().get(Spots.of(input).surveyOf(neighbours.spot(10, 0))).id());
		assertEquals(10, Spots.of(input).map().x(neighbours.spot(10, 0)));
	}

	@Test
	void orderIsThatOfTimesWhereThereAreAny() {
		Sequence timed = Sequence.of(input(new TinyMap().survey("a").at(9).sample(0, 0).at(3).sample(1, 0).at(6)
				.sample(2, 0).build()));
		assertArrayEquals(new int[] { 1, 2, 0 }, timed.track(0));
		assertTrue(timed.isTimed(0));
		assertEquals(2, timed.placeInTrack(0));
		Sequence rows = Sequence.of(input(new TinyMap().survey("a").sample(0, 0).device("B").sample(1, 0)
				.device("Wrist guide A").sample(2, 0).build()));
		assertEquals(2, rows.tracks());
		assertArrayEquals(new int[] { 0, 2 }, rows.track(rows.trackOf(2)));
	}

	@Test
	void runsBridgeSmallGapsOfOneKind() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 12; i++) {
			map.sample(i, 0);
		}
		List<int[]> runs = Sequence.of(input(map.build())).runs(s -> s == 1 || s == 2 || s == 4 || s == 8 || s == 9,
				s -> s < 9 ? 0 : 1, 1);
		assertEquals(3, runs.size());
		assertArrayEquals(new int[] { 1, 2, 4 }, runs.get(0));
		assertArrayEquals(new int[] { 8 }, runs.get(1));
		assertArrayEquals(new int[] { 9 }, runs.get(2));
	}

	@Test
	void surveysOfOneCampaignAreOneEpoch() {
		TinyMap map = new TinyMap();
		LocalDate[] dates = { LocalDate.of(2031, 10, 13), LocalDate.of(2031, 4, 7), LocalDate.of(2031, 4, 21),
				LocalDate.of(2031, 5, 8) };
		for (int i = 0; i < dates.length; i++) {
			map.survey("s" + i, dates[i]).sample(i, 0);
		}
		Epochs epochs = Epochs.of(input(map.survey("undated").sample(9, 0).build()));
		assertEquals(2, epochs.all().size());
		assertEquals(List.of(1, 2, 3), epochs.all().get(0).surveys());
		assertEquals(dates[3], epochs.all().get(0).last());
		assertEquals(1, epochs.ofSurvey(0));
		assertEquals(-1, epochs.ofSurvey(4));
	}

	@Test
	void middleAndSpreadIgnoreAWildValue() {
		assertEquals(3, Median.of(new double[] { 1, 1000, 3, 2, 4 }));
		assertEquals(2.5, Median.of(new double[] { 4, 1, 2, 3 }));
		assertTrue(Double.isNaN(Median.of(new double[0])));
		// Deviations from 3 are 2, 997, 0, 1, 1: their middle is 1.
		assertEquals(1.4826, Robust.sd(new double[] { 1, 1000, 3, 2, 4 }), 1e-12);
	}
}
