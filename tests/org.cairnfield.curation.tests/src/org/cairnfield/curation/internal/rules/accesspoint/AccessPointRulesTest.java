package org.cairnfield.curation.internal.rules.accesspoint;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.cairnfield.curation.rules.TinyMap.labels;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.rules.Rule;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class AccessPointRulesTest {

	private static final String WALKER = "00:00:5E:00:53:77";

	private static final LocalDate SPRING = LocalDate.of(2031, 4, 7);
	private static final LocalDate AUTUMN = LocalDate.of(2031, 10, 13);
	private static final String MOVED = "00:00:5E:00:53:4A";

	private static Finding only(Rule rule, SurveyedMap map) {
		List<Finding> findings = findings(rule, map);
		assertEquals(1, findings.size(), findings.toString());
		if (findings.get(0).remedy().isPresent()) {
			assertEquals(List.of(), findings(rule, RemediedMap.ofFindings(map, findings).map()), "after the remedy");
		}
		return findings.get(0);
	}

	private static TinyMap grid(TinyMap map, Map<String, double[]> senders) {
		for (double y = 1; y < 20; y += 2) {
			for (double x = 1; x < 30; x += 2) {
				map.hears(x, y, senders);
			}
		}
		return map;
	}

	@Test
	void tellsLocalAddressesByTheirBit() {
		// RFC 9542 section 2.1: 0x02 of the first octet. DA:… has it, 00:… and 3C:… have not.
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "DA:A1:19:00:00:01", -50, "00:00:5E:00:53:01", -50,
				"3C:22:FB:00:00:01", -50, "02:18:0A:00:00:01", -60).build();
		assertEquals(List.of("02:18:0A:00:00:01", "DA:A1:19:00:00:01"), labels(only(new LocalAddressRule(), map)));
		assertEquals("access points are not named by their addresses",
				TinyMap.whyNot(new LocalAddressRule(), new TinyMap().survey("a").sample(0, 0, "ap1", -50).build()));
	}

	@Test
	void reportsAddressesThatNoAccessPointHas() {
		SurveyedMap map = new TinyMap().survey("a").sample(0, 0, "01:00:5E:90:10:00", -50, "00:00:00:00:00:00", -50,
				"FF:FF:FF:FF:FF:FF", -50, "00:00:5E:00:53:01", -50).build();
		assertEquals(List.of("00:00:00:00:00:00", "01:00:5E:90:10:00", "FF:FF:FF:FF:FF:FF"),
				labels(only(new ImpossibleAddressRule(), map)));
	}

	@Test
	void reportsWhatIsHeardAtTwoPlacesAtMost() {
		TinyMap map = new TinyMap().survey("a");
		for (int i = 0; i < 5; i++) {
			map.sample(i, 0, "usual", -50);
		}
		map.sample(0, 1, "once", -90).sample(0, 2, "often at one place", -60).sample(0, 2, "often at one place", -60);
		Finding finding = only(new RarelyHeardRule(), map.build());
		assertEquals(List.of("often at one place", "once"), labels(finding));
		assertTrue(finding.message().contains("1 of them in one sample only"), finding.message());
		assertTrue(finding.remedy().isEmpty(), "it may mark a place that nothing else tells apart");
	}

	@Test
	void reportsASenderThatWalks() {
		// One sender keeps a metre from the surveyor for two rows and is gone for the others.
		TinyMap map = new TinyMap().survey("a");
		int index = 0;
		for (double y = 1; y < 20; y += 2) {
			for (double x = 1; x < 30; x += 2) {
				Map<String, double[]> senders = TinyMap.senders();
				if (index >= 40 && index < 75) {
					senders.put("walker", new double[] { x + 1, y });
				}
				map.hears(x, y, senders);
				index++;
			}
		}
		assertEquals(List.of("walker"), labels(only(new HotspotRule(), map.build())));
	}

	@Test
	void toleratesASenderThatIsHeardBadly() {
		// Every third sample misses it, whenever it is taken.
		TinyMap map = new TinyMap().survey("a");
		int index = 0;
		for (double y = 1; y < 20; y += 2) {
			for (double x = 1; x < 30; x += 2) {
				Map<String, double[]> senders = TinyMap.senders();
				if (index++ % 3 == 0) {
					senders.remove("00:00:5E:00:53:4A");
				}
				map.hears(x, y, senders);
			}
		}
		assertEquals(List.of(), findings(new HotspotRule(), map.build()));
	}

	@Test
	void reportsASenderLoudFartherApartThanItCanBe() {
		// ITU-R P.1238, office, 2.4 GHz: 20 dBm fall to −60 dBm at 10^((80 − 39.74)/30) = 21.98 m; twice that.
		assertEquals(43.96, HotspotRule.farthestApart(-60, 20), 0.01);
		TinyMap near = new TinyMap().survey("a");
		TinyMap far = new TinyMap().survey("a");
		for (int i = 0; i < 20; i++) {
			near.sample(4 * i, 0, "ap", i < 15 ? -55 : -80);
			far.sample(8 * i, 0, "ap", -55);
		}
		assertEquals(List.of(), findings(new HotspotRule(), near.build()));
		assertEquals(List.of("ap"), labels(only(new HotspotRule(), far.build())));
	}

	@Test
	void reportsASenderLoudAtTwoSites() {
		TinyMap map = new TinyMap();
		for (int site = 0; site < 2; site++) {
			map.survey("survey " + site);
			for (int i = 0; i < 5; i++) {
				map.sample(i, 0, WALKER, -50, "fixed " + site, -50, "too " + site, -55, "also " + site, -55);
			}
			map.site("Lantern Store");
		}
		assertEquals(List.of(WALKER), labels(only(new HotspotRule(), map.build())));
	}

	@Test
	void setsNoNameAsideThatEachSiteMayHaveGivenAnew() {
		TinyMap map = new TinyMap();
		for (int site = 0; site < 2; site++) {
			map.survey("survey " + site);
			for (int i = 0; i < 5; i++) {
				map.sample(i, 0, "AP1", -50, "fixed " + site, -50, "too " + site, -55, "also " + site, -55,
						"last " + site, -55);
			}
			map.site("Lantern Store");
		}
		// one of nine is too few to say of all names that they are no addresses
		Finding finding = findings(new HotspotRule(), map.build()).get(0);
		assertEquals(List.of("AP1"), labels(finding));
		assertEquals(Severity.NOTE, finding.severity());
		assertTrue(finding.remedy().isEmpty(), "it would set two access points aside");
	}

	@Test
	void saysOnceThatNamesAreGivenAnewAtEachSite() {
		TinyMap map = new TinyMap();
		for (int site = 0; site < 2; site++) {
			map.survey("survey " + site);
			for (int i = 0; i < 5; i++) {
				map.sample(i, 0, "AP1", -50, "AP2", -50, "AP3", -55);
			}
			map.site("Lantern Store");
		}
		List<Finding> findings = findings(new HotspotRule(), map.build());
		assertEquals(1, findings.size());
		assertEquals(List.of("AP1", "AP2", "AP3"), labels(findings.get(0)));
		assertTrue(findings.get(0).remedy().isEmpty());
	}

	@Test
	void offersAddressesOfOneRadioAsAGroup() {
		Map<String, double[]> senders = TinyMap.senders();
		senders.put("00:00:5E:00:53:0B", senders.get("00:00:5E:00:53:0A"));
		senders.put("02:00:5E:00:53:0A", new double[] { 2, 2, 1 });
		// Next in number, but at another place.
		senders.put("00:00:5E:00:53:0C", new double[] { 12, 12 });
		SurveyedMap map = grid(new TinyMap().survey("a"), senders).build();
		Finding finding = only(new SharedRadioRule(), map);
		assertEquals(List.of("00:00:5E:00:53:0A", "00:00:5E:00:53:0B", "02:00:5E:00:53:0A"), labels(finding));
		assertEquals(new Remedy.GroupAccessPoints(labels(finding)), finding.remedy().orElseThrow());
	}

	@Test
	void doesNotGroupLikeSoundingAddressesThatAreNotAlike() {
		Map<String, double[]> senders = TinyMap.senders();
		senders.put("3C:22:FB:00:00:01", senders.get("00:00:5E:00:53:0A"));
		assertEquals(List.of(), findings(new SharedRadioRule(), grid(new TinyMap().survey("a"), senders).build()));
	}

	private static TinyMap twoSeasons(Map<String, double[]> spring, Map<String, double[]> autumn) {
		return grid(
				grid(new TinyMap().survey("spring", SPRING), spring).survey("autumn", AUTUMN).device("Wrist guide B"),
				autumn);
	}

	@Test
	void reportsAnAccessPointThatWasMoved() {
		Map<String, double[]> autumn = new TreeMap<>(TinyMap.senders());
		autumn.put(MOVED, new double[] { 29, 19 });
		SurveyedMap map = twoSeasons(TinyMap.senders(), autumn).build();
		Finding finding = only(new MovedRule(), map);
		assertEquals(List.of(MOVED, TinyMap.SITE), labels(finding));
		// From x 15, y 9 to x 29, y 19; a centroid lies a little nearer the middle of the floor.
		assertEquals(Math.hypot(14, 10), finding.figure("moved"), 4);
		assertTrue(finding.remedy().isEmpty(),
				"what is left out counts as not heard, which is wrong where it hangs now");
	}

	@Test
	void doesNotTakeAnotherDeviceOrLessPowerForAMove() {
		Map<String, double[]> autumn = new TreeMap<>();
		// All 6 dB weaker: that is the device. One another 9 dB: that is power.
		TinyMap.senders().forEach((address, at) -> autumn.put(address,
				new double[] { at[0], at[1], address.equals(MOVED) ? 15 : 6 }));
		assertEquals(List.of(), findings(new MovedRule(), twoSeasons(TinyMap.senders(), autumn).build()));
	}

	@Test
	void needsTwoSeasons() {
		SurveyedMap map = grid(new TinyMap().survey("a", SPRING), TinyMap.senders()).build();
		assertEquals("Tide House has no surveys of two dates weeks apart", TinyMap.whyNot(new MovedRule(), map));
		SurveyedMap undated = grid(grid(new TinyMap().survey("a"), TinyMap.senders()).survey("b"), TinyMap.senders())
				.build();
		assertEquals("Tide House has no surveys of two dates weeks apart",
				TinyMap.whyNot(TurnoverRule.vanished(), undated));
	}

	@Test
	void reportsWhatIsGoneAndWhatIsNew() {
		Map<String, double[]> autumn = new TreeMap<>(TinyMap.senders());
		autumn.remove(MOVED);
		autumn.put("00:00:5E:00:53:FE", new double[] { 15, 9 });
		SurveyedMap map = twoSeasons(TinyMap.senders(), autumn).build();
		assertEquals(List.of(MOVED, TinyMap.SITE), labels(only(TurnoverRule.vanished(), map)));
		List<Finding> appeared = findings(TurnoverRule.appeared(), map);
		assertEquals(List.of("00:00:5E:00:53:FE", TinyMap.SITE), labels(appeared.get(0)));
		assertTrue(appeared.get(0).remedy().isEmpty());
		assertEquals(List.of(), findings(TurnoverRule.vanished(),
				twoSeasons(TinyMap.senders(), TinyMap.senders()).build()));
	}
}
