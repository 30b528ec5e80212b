package org.cairnfield.model;

import java.time.Instant;
import java.time.LocalDate;

import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;

/** A sound archive of a small part of the Marrow Quay Museums. */
public final class Fixture {

	public final Archive archive = ModelFactory.eINSTANCE.createArchive();
	public final Site site = ModelFactory.eINSTANCE.createSite();
	public final Floor ground = floor(0);
	public final AccessPoint accessPoint = accessPoint("00005e005301", "00:00:5E:00:53:01");
	public final Device device = ModelFactory.eINSTANCE.createDevice();
	public final Survey survey = ModelFactory.eINSTANCE.createSurvey();
	public final Split split = ModelFactory.eINSTANCE.createSplit();
	public final Ledger ledger = ModelFactory.eINSTANCE.createLedger();
	public final Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
	public final Waiver waiver = ModelFactory.eINSTANCE.createWaiver();

	public Fixture() {
		archive.setName("Marrow Quay Museums");
		archive.getSites().add(site);
		site.setId("tide-house");
		site.setName("Tide House");
		ground.setOutline(Outline.parse("0,0 40,0 40,25 0,25"));
		ground.setHeightMetres(4.2);
		site.getFloors().add(ground);
		site.getFloors().add(floor(1));
		archive.getAccessPoints().add(accessPoint);
		device.setId("wrist-guide-a");
		device.setName("Wrist guide A");
		device.setOffsetDb(-3.5);
		archive.getDevices().add(device);
		survey.setId("th-spring");
		survey.setDate(LocalDate.of(2025, 3, 14));
		survey.setSurveyor("MQ");
		survey.setDevice(device);
		survey.setSourceDigest("0".repeat(64));
		survey.setSamples(ModelFactory.eINSTANCE.createSamples());
		survey.getSamples().setTable(SampleTable.builder().sample("S-1", 0, 12.4, 7.85).reading("00005e005301", -61)
				.sample("S-2", 1, 3, 4).build());
		site.getSurveys().add(survey);
		split.setId("whole");
		split.setEpsilon(120);
		split.setMinPts(5);
		archive.getSplits().add(split);
		ledger.setId("whole");
		archive.getLedgers().add(ledger);
		verdict.setId("v1");
		verdict.setSplit("whole");
		verdict.setSample(new SampleKey("th-spring", "S-2"));
		verdict.setDecision(Decision.APPROVE);
		verdict.setPerson("MQ");
		verdict.setTime(Instant.parse("2025-03-15T10:00:00Z"));
		ledger.getVerdicts().add(verdict);
		waiver.setRule("empty");
		waiver.setContentKey("th-spring/S-2");
		waiver.setReason("lead-lined store");
		waiver.setPerson("MQ");
		waiver.setTime(Instant.parse("2025-03-15T10:00:00Z"));
		archive.getWaivers().add(waiver);
	}

	public static Floor floor(int level) {
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(level);
		return floor;
	}

	public static AccessPoint accessPoint(String id, String address) {
		AccessPoint accessPoint = ModelFactory.eINSTANCE.createAccessPoint();
		accessPoint.setId(id);
		accessPoint.setAddress(address);
		return accessPoint;
	}
}
