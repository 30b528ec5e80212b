package org.cairnfield.curation.internal.rules.device;

import static org.cairnfield.curation.rules.TinyMap.findings;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.effect.RemediedMap;
import org.cairnfield.curation.rules.SurveyedMap;
import org.cairnfield.curation.rules.TinyMap;
import org.junit.jupiter.api.Test;

class DeviceOffsetRuleTest {

	/** Device A at every place, B at every second one; B reads so much more. */
	private static SurveyedMap twoDevices(int offsetDb, int places) {
		TinyMap map = new TinyMap().survey("a").device("B").hears(1, 1, 1, 1, TinyMap.senders(), offsetDb).device("A");
		for (int i = 0; i < places; i++) {
			map.hears(1 + i % 14 * 2, 1 + i / 14 * 2, TinyMap.senders());
		}
		map.survey("b").device("B");
		for (int i = 0; i < places; i += 2) {
			map.hears(1 + i % 14 * 2, 1 + i / 14 * 2, 1 + i % 14 * 2, 1 + i / 14 * 2, TinyMap.senders(), offsetDb);
		}
		return map.build();
	}

	@Test
	void findsTheOffsetOfTheDeviceWithFewerSamples() {
		SurveyedMap map = twoDevices(-6, 60);
		List<Finding> findings = findings(new DeviceOffsetRule(), map);
		assertEquals(1, findings.size());
		assertEquals("B", findings.get(0).subjects().get(0).label());
		assertEquals("A", findings.get(0).related().get(0).label());
		assertEquals(-6, findings.get(0).figure("offset"), 0.5);
		assertTrue(findings.get(0).figure("low") <= -6 && findings.get(0).figure("high") >= -6);
		Remedy.CalibrateDevice remedy = (Remedy.CalibrateDevice) findings.get(0).remedy().orElseThrow();
		assertEquals(new Remedy.CalibrateDevice("B", "B", -6), remedy);
		assertEquals(List.of(), findings(new DeviceOffsetRule(), RemediedMap.ofFindings(map, findings).map()));
	}

	@Test
	void addsToAnOffsetThatIsKnown() {
		SurveyedMap known = RemediedMap.of(twoDevices(-9, 60), List.of(new Remedy.CalibrateDevice("B", "B", -4))).map();
		Finding finding = findings(new DeviceOffsetRule(), known).get(0);
		assertEquals(-5, finding.figure("offset"), 0.5);
		assertEquals(new Remedy.CalibrateDevice("B", "B", -9), finding.remedy().orElseThrow());
	}

	@Test
	void saysNothingOfSmallOffsetsAndFewPlaces() {
		assertEquals(List.of(), findings(new DeviceOffsetRule(), twoDevices(-2, 60)));
		assertEquals("no two devices stood at 10 places within 1.5 m of one another",
				TinyMap.whyNot(new DeviceOffsetRule(), twoDevices(-6, 12)));
		assertEquals("samples are not of two devices",
				TinyMap.whyNot(new DeviceOffsetRule(), new TinyMap().survey("a").sample(0, 0, "ap1", -50).build()));
	}
}
