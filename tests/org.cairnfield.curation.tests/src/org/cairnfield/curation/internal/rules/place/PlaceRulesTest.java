package org.cairnfield.curation.internal.rules.place;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.cairnfield.curation.rules.TinyMap.samples;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.effect.SparseHalls;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

/** A floor of 30 m by 20 m, a sample every 2 m, eight senders without noise. */
class PlaceRulesTest {

	private interface Noted {
		double[] at(int index, double x, double y);
	}

	private static TinyMap floor(TinyMap map, Noted noted) {
		int index = 0;
		for (double y = 1; y < 20; y += 2) {
			for (double x = 1; x < 30; x += 2) {
				double[] at = noted.at(index++, x, y);
				map.hears(at[0], at[1], x, y, TinyMap.senders(), 0);
			}
		}
		return map;
	}

	private static Noted rightly() {
		return (i, x, y) -> new double[] { x, y };
	}

	private static Finding only(Rule rule, SurveyedMap map) {
		List<Finding> findings = findings(rule, map);
		assertEquals(1, findings.size(), findings.toString());
		assertEquals(List.of(), findings(rule, RemediedMap.ofFindings(map, findings).map()), "after the remedy");
		return findings.get(0);
	}

	@Test
	void findsNothingWhereAllIsRight() {
		SurveyedMap map = floor(floor(new TinyMap().survey("a"), rightly()).survey("b"), rightly()).build();
		assertEquals(List.of(), findings(new SwappedAxesRule(), map));
		assertEquals(List.of(), findings(new WrongPlaceRule(), map));
	}

	@Test
	void reportsASampleNotedFarAway() {
		SurveyedMap map = floor(new TinyMap().survey("a"), (i, x, y) -> i == 17 ? new double[] { 26, 16 }
				: new double[] { x, y }).build();
		Finding finding = only(new WrongPlaceRule(), map);
		assertEquals(List.of("a-17"), samples(finding));
		// True place x 5, y 3; noted at x 26, y 16.
		assertEquals(Math.hypot(21, 13), finding.figure("distance to neighbours"), 3);
	}

	@Test
	void reportsARowWithExchangedAxesAsOneGroup() {
		// Row y = 1: its right half, from x = 9 on, lies far from the diagonal.
		SurveyedMap map = floor(floor(new TinyMap().survey("a"), rightly()).survey("b"),
				(i, x, y) -> y == 1 ? new double[] { y, x } : new double[] { x, y }).build();
		Finding finding = only(new SwappedAxesRule(), map);
		assertEquals(15, samples(finding).size(), "with those near the diagonal");
		assertEquals("b-150", samples(finding).get(0));
		assertEquals(new Remedy.SwapAxes(samples(finding)), finding.remedy().orElseThrow());
		assertEquals(List.of(), findings(new WrongPlaceRule(), map), "explained by the exchange");
	}

	@Test
	void seesExchangedAxesWithinOneSurveyToo() {
		SurveyedMap map = floor(new TinyMap().survey("a"), (i, x, y) -> y == 1 && x > 8 ? new double[] { y, x }
				: new double[] { x, y }).build();
		Finding finding = only(new SwappedAxesRule(), map);
		assertEquals(11, samples(finding).size());
	}

	/** Another floor hears the same senders 14 dB weaker, and some of its own. */
	private static Map<String, double[]> upstairs() {
		Map<String, double[]> senders = new TreeMap<>();
		TinyMap.senders().forEach((address, at) -> {
			senders.put(address, new double[] { at[0], at[1], 14 });
			senders.put(address.replace("53:", "54:"), new double[] { 30 - at[0], at[1], 0 });
		});
		return senders;
	}

	private static Map<String, double[]> downstairs() {
		Map<String, double[]> senders = new TreeMap<>(TinyMap.senders());
		TinyMap.senders().forEach((address, at) -> senders.put(address.replace("53:", "54:"),
				new double[] { 30 - at[0], at[1], 14 }));
		return senders;
	}

	private static TinyMap twoFloors(int mislabelledFrom, int mislabelledTo) {
		TinyMap map = new TinyMap().survey("a");
		int index = 0;
		for (int level = 0; level < 2; level++) {
			// Upstairs the grid begins elsewhere, so that nobody stands above anybody.
			for (double y = 1 + 0.7 * level; y < 20; y += 2) {
				for (double x = 1 + 0.7 * level; x < 30; x += 2) {
					boolean wrong = index >= mislabelledFrom && index < mislabelledTo;
					map.floor(wrong ? 1 - level : level).hears(x, y, level == 0 ? downstairs() : upstairs());
					index++;
				}
			}
		}
		return map;
	}

	@Test
	void reportsAStretchOnTheWrongFloorAsOneGroup() {
		Finding finding = only(new WrongFloorRule(), twoFloors(60, 71).build());
		assertEquals(11, samples(finding).size());
		assertEquals("a-60", samples(finding).get(0));
		assertEquals(new Remedy.SetFloor(samples(finding), 0), finding.remedy().orElseThrow());
		assertEquals(List.of(), findings(new WrongFloorRule(), twoFloors(0, 0).build()));
		assertEquals(List.of(), findings(new WrongPlaceRule(), twoFloors(60, 71).build()));
	}

	@Test
	void believesAFloorThatSomebodyElseNotedToo() {
		// Nothing is wrong there; averaged spots of other places alone had moved 37 sound samples of one house, 7 of the other.
		for (long seed : new long[] { 4, 6 }) {
			assertEquals(List.of(), findings(new WrongFloorRule(), SparseHalls.of(seed).map()));
		}
	}

	@Test
	void doesNotTakeACopyForAWitness() {
		TinyMap map = twoFloors(60, 71);
		SurveyedMap one = map.build();
		map.survey("again");
		for (int s = 60; s < 71; s++) {
			map.floor(1).hears(one.map().x(s), one.map().y(s), downstairs());
		}
		assertEquals(22, findings(new WrongFloorRule(), map.build()).stream()
				.mapToInt(finding -> samples(finding).size()).sum());
	}

	@Test
	void needsTwoFloors() {
		SurveyedMap map = floor(new TinyMap().survey("a"), rightly()).build();
		assertEquals("all samples of Tide House are on one floor", TinyMap.whyNot(new WrongFloorRule(), map));
	}

	@Test
	void leavesAWeakDeviceAlone() {
		TinyMap map = floor(new TinyMap().survey("a"), rightly());
		map.hears(15, 10, 15, 10, TinyMap.senders(), -12);
		assertEquals(List.of(), findings(new WrongPlaceRule(), map.build()));
	}
}
