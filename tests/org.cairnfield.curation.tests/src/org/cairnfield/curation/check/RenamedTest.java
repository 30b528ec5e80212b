package org.cairnfield.curation.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.maps.Subjects;
import org.cairnfield.curation.remedy.RemedyCommands;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Remedy;
import org.cairnfield.curation.rules.RuleRun;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.curation.rules.Waiver;
import org.cairnfield.curation.internal.rules.device.DeviceOffsetRule;
import org.cairnfield.curation.internal.rules.sample.FewReadingsRule;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.junit.jupiter.api.Test;

/** Names are labels: what was decided about a thing holds on under another name, and things of one name are not mixed up. */
class RenamedTest {

	private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;
	/** Key of the finding below, as it was written while it was made of the site's name. */
	private static final String BY_NAME = "b660442a9a2db1b8 cc536e12df39e0ec";

	private final Archive archive = FACTORY.createArchive();
	private final Site site = FACTORY.createSite();

	RenamedTest() {
		archive.getSites().add(site);
		site.setId("tide-house");
		site.setName("Tide House");
		Floor floor = FACTORY.createFloor();
		site.getFloors().add(floor);
	}

	private Survey survey(String id, Device device, int levelDbm) {
		Survey survey = FACTORY.createSurvey();
		survey.setId(id);
		survey.setDevice(device);
		survey.setSamples(FACTORY.createSamples());
		SampleTableBuilder table = SampleTable.builder();
		for (int i = 0; i < 60; i++) {
			table.sample("S-" + (10 + i), 0, 2 * (i % 10), 3 * (i / 10)).reading("ap1", levelDbm - i % 7)
					.reading("ap2", levelDbm - i % 5)
					.reading("ap3", levelDbm - i % 11).reading("ap4", levelDbm - 2 * (i % 9));
		}
		survey.getSamples().setTable(table.build());
		site.getSurveys().add(survey);
		return survey;
	}

	private Device device(String id, String name) {
		Device device = FACTORY.createDevice();
		device.setId(id);
		device.setName(name);
		archive.getDevices().add(device);
		return device;
	}

	private void addTwoThatHeardNothing() {
		Survey survey = survey("th-spring", null, -50);
		SampleTableBuilder table = SampleTable.builder();
		for (int row = 0; row < survey.table().size(); row++) {
			table.add(survey.table().sample(row));
		}
		survey.getSamples().setTable(table.sample("S-1", 0, 3, 4).sample("S-2", 0, 7, 4).build());
	}

	private RuleCheck check() {
		return RuleCheck.of(archive, new RuleRun(List.of(new FewReadingsRule(), new DeviceOffsetRule())),
				Workers.inline());
	}

	@Test
	void waivesAFindingUnderAnotherNameOfItsSite() {
		addTwoThatHeardNothing();
		Finding finding = check().open().get(0);
		archive.getWaivers().add(RuleCheck.toModel(Waiver.of(finding, "behind the boiler", "J.K.", Instant.EPOCH)));
		assertEquals(List.of(), check().open());
		site.setName("House of Tides");
		assertEquals(List.of(), check().open());
		assertEquals(1, check().waived().size());
	}

	@Test
	void waivesWhatWasWaivedByName() {
		addTwoThatHeardNothing();
		org.cairnfield.model.Waiver waiver = RuleCheck
				.toModel(Waiver.of(check().open().get(0), "behind the boiler", "J.K.", Instant.EPOCH));
		waiver.setContentKey(BY_NAME);
		archive.getWaivers().add(waiver);
		assertEquals(List.of(), check().open());
	}

	@Test
	void calibratesTheOneOfTwoDevicesOfAName() {
		Device one = device("guide-a", "Wrist guide");
		Device other = device("guide-b", "Wrist guide");
		survey("th-spring", one, -50);
		survey("th-autumn", other, -59);
		Finding finding = check().open().get(0);
		Subject.OfDevice about = (Subject.OfDevice) finding.subjects().get(0);
		assertSame(other, Subjects.object(ArchiveIndex.of(archive), about).orElseThrow());
		Remedy remedy = finding.remedy().orElseThrow();
		assertTrue(remedy.preview().contains("Wrist guide (guide-b)"), remedy.preview());
		other.setName("Belt guide"); // between the check and the remedy
		new RemedyCommands(archive).apply(remedy);
		assertNull(one.getOffsetDb());
		assertEquals(-9, other.getOffsetDb());
		assertFalse(new RemedyCommands(archive).changes(remedy));
	}

	@Test
	void leadsFromASubjectToWhatTheArchiveHasOfIt() {
		Site annex = FACTORY.createSite();
		annex.setId("annex");
		annex.setName("Tide House");
		archive.getSites().add(annex);
		survey("th-spring", null, -50);
		ArchiveIndex index = ArchiveIndex.of(archive);
		assertSame(annex, Subjects.object(index, new Subject.OfSite("annex", "Tide House")).orElseThrow());
		assertSame(site.getFloors().get(0),
				Subjects.object(index, new Subject.OfCell("tide-house", "Tide House", 0, 0, 0, 5)).orElseThrow());
		assertSame(site,
				Subjects.object(index, new Subject.OfCell("tide-house", "Tide House", 9, 0, 0, 5)).orElseThrow());
		assertSame(site.getSurveys().get(0),
				Subjects.object(index, new Subject.OfSample("th-spring/S-12", 1, 1)).orElseThrow());
		assertTrue(Subjects.object(index, new Subject.OfSurvey("th-winter")).isEmpty());
	}
}
