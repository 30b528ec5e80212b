package org.cairnfield.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;

import org.cairnfield.archive.history.Person;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.SampleTable;

/** An archive with something of everything, and a place for its drafts. */
final class DraftFixture {

	static final Instant NOON = Instant.parse("2031-04-08T12:00:00Z");
	static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);

	final Path root;
	final Path drafts;
	final ArchiveStore store = new ArchiveStore(CLOCK);

	DraftFixture(Path folder) throws IOException {
		root = folder.resolve("marrow-quay");
		drafts = folder.resolve("state").resolve("drafts");
		try (OpenArchive open = store.create(root, "Marrow Quay")) {
			SampleArchives.fill(open.archive(), 3, 4, 30);
			open.savePoint(Person.named("M.Q."), null);
		}
	}

	OpenArchive open() throws IOException {
		return store.open(root, Mode.EDIT);
	}

	/** Changes some of everything, and tells what the model then is. */
	static String change(OpenArchive open) {
		Archive archive = open.archive();
		Survey survey = SampleArchives.survey(archive, "survey-0");
		survey.getSamples().setTable(survey.table().edit().position(0, 3, 4).reason(1, "spoilt").done());
		SampleArchives.survey(archive, "survey-1").setSurveyor("A. Steward");
		Site site = archive.getSites().get(0);
		site.setName("Sailmakers' Hall");
		site.getSurveys().remove(SampleArchives.survey(archive, "survey-2"));
		Device device = ModelFactory.eINSTANCE.createDevice();
		device.setId("guide-z");
		archive.getDevices().add(device);
		archive.getSites().get(1).getSurveys().add(survey("summer", archive.getDevices().get(0)));
		SampleArchives.survey(archive, "survey-3").setDevice(device);
		archive.getWaivers().remove(0);
		archive.getWaivers().get(0).setReason("the cellar hears one only");
		archive.getSplits().remove(0);
		archive.getSplits().get(0).setEpsilon(77);
		archive.getLedgers().get(0).getVerdicts().remove(0);
		return ModelText.of(archive);
	}

	private static Survey survey(String id, Device device) {
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(id);
		survey.setDevice(device);
		Samples samples = ModelFactory.eINSTANCE.createSamples();
		samples.setTable(SampleTable.builder().sample("S-1", 0, 1, 2).build());
		survey.setSamples(samples);
		return survey;
	}

	/** Leaves a draft, and tells what the model was. */
	String drafted() throws IOException {
		try (OpenArchive open = open()) {
			String changed = change(open);
			open.drafts().write(drafts);
			return changed;
		}
	}

	long draftFiles() throws IOException {
		try (Stream<Path> all = Files.list(drafts)) {
			return all.count();
		}
	}
}
