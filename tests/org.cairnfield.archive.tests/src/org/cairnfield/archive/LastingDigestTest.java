package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.radio.WifiBand;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Releases carry the digest of their content. An archive that was made before a feature was, and does not use it, keeps the digest
 * that it had then: this one was computed while the model still had classes for releases and findings.
 */
class LastingDigestTest {

	private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;
	private static final String DIGEST = "f30eaaf17d5d44143b1674cce79333bf1fceaeef36a486f25fa3c04a85a664ab";
	private static final SampleKey FIRST = new SampleKey("th-spring", "S-1");
	private static final SampleKey SECOND = new SampleKey("th-spring", "S-2");

	@TempDir
	Path folder;

	@Test
	void isThatOfYearsAgo() throws IOException {
		try (OpenArchive open = new ArchiveStore().create(folder.resolve("a"), "Marrow Quay")) {
			fill(open.archive());
			assertEquals(DIGEST, open.digest());
			open.save();
		}
		try (OpenArchive open = new ArchiveStore().open(folder.resolve("a"), Mode.READ)) {
			assertEquals(DIGEST, open.digest());
		}
	}

	private static void fill(Archive archive) {
		AccessPoint accessPoint = FACTORY.createAccessPoint();
		accessPoint.setId("00005e005301");
		accessPoint.setAddress("00:00:5E:00:53:01");
		accessPoint.setBand(WifiBand.GHZ_5);
		accessPoint.setChannel(36);
		archive.getAccessPoints().add(accessPoint);
		Device device = FACTORY.createDevice();
		device.setId("guide-a");
		device.setName("Wrist guide A");
		device.setOffsetDb(-3.5);
		archive.getDevices().add(device);
		Site site = FACTORY.createSite();
		site.setId("th");
		site.setName("Tide House");
		site.setGeoreference(new Georeference(54.5, -3.25, 12));
		archive.getSites().add(site);
		site.getFloors().add(floor());
		site.getSurveys().add(survey(device));
		archive.getSplits().add(split());
		archive.getLedgers().add(ledger());
		Waiver waiver = FACTORY.createWaiver();
		waiver.setRule("few-readings");
		waiver.setContentKey("b660442a9a2db1b8");
		waiver.setReason("behind the boiler");
		waiver.setPerson("M.Q.");
		waiver.setTime(Instant.parse("2031-05-01T10:00:00Z"));
		archive.getWaivers().add(waiver);
	}

	private static Floor floor() {
		Floor floor = FACTORY.createFloor();
		floor.setLevel(1);
		floor.setName("Gallery");
		floor.setOutline(Outline.parse("0,0 40,0 40,25.5"));
		floor.setHeightMetres(4.2);
		floor.setPlanImage("plans/th-1.png");
		floor.setPlanPlacement(new Placement(0.05, 1, 2, 22.5));
		return floor;
	}

	private static Survey survey(Device device) {
		Survey survey = FACTORY.createSurvey();
		survey.setId("th-spring");
		survey.setName("spring");
		survey.setDate(LocalDate.of(2031, 4, 7));
		survey.setSurveyor("MQ");
		survey.setDevice(device);
		survey.setSourceFile("spring.csv");
		survey.setSourceDigest("0".repeat(64));
		survey.setSamples(FACTORY.createSamples());
		survey.getSamples()
				.setTable(SampleTable.builder().sample("S-1", 1, 12.4, 7.85).time(1_933_000_000_000L)
						.reading("00005e005301", -61)
						.sample("S-2", 1, 3, 4).reason("in a lift").build());
		return survey;
	}

	private static Split split() {
		Split split = FACTORY.createSplit();
		split.setId("whole");
		split.setScope(Scope.site("th"));
		split.setRepresentation("POSITIVE");
		split.setDistance("CITY_BLOCK");
		split.setEpsilon(120);
		split.setMinPts(5);
		split.setSeed(7);
		Cluster cluster = FACTORY.createCluster();
		cluster.setSize(1);
		split.getClusters().add(cluster);
		split.setLabels(Labels.builder().add(FIRST, 0, Role.CORE).add(SECOND, Labels.NOISE, Role.NOISE).build());
		split.setProposals(Proposals.of(List.of(new Proposal(SECOND, 0, 0.75, Double.NaN, FIRST, 0))));
		return split;
	}

	private static Ledger ledger() {
		Ledger ledger = FACTORY.createLedger();
		ledger.setId("mq");
		Verdict verdict = FACTORY.createVerdict();
		verdict.setId("v-1");
		verdict.setSplit("whole");
		verdict.setSample(SECOND);
		verdict.setDecision(Decision.APPROVE);
		verdict.setPerson("M.Q.");
		verdict.setTime(Instant.parse("2031-05-01T10:00:00.5Z"));
		ledger.getVerdicts().add(verdict);
		return ledger;
	}
}
