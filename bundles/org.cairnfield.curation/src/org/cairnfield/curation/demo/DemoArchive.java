package org.cairnfield.curation.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.simulate.MarrowQuay;
import org.cairnfield.core.simulate.Place;
import org.cairnfield.core.simulate.SimulatedArchive;
import org.cairnfield.core.simulate.SimulatedSurvey;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.IntakeOptions;
import org.cairnfield.exchange.SurveyIntake;
import org.cairnfield.exchange.WideTable;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Site;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Georeference;
import org.cairnfield.model.values.Outline;
import org.cairnfield.model.values.Placement;
import org.cairnfield.model.values.Sha256;

/**
 * Makes an archive of the invented Marrow Quay Museums, faults and all, the way a steward would: the surveys are written as
 * files and taken in.
 */
public final class DemoArchive {

	private static final Person SURVEYORS = Person.named("Marrow Quay surveyors");
	// in the middle of the Atlantic, where no museum is
	private static final double LATITUDE_DEGREES = 40;
	private static final double LONGITUDE_DEGREES = -40;
	private static final double METRES_PER_DEGREE = 111_195; // of a sphere of 6,371 km

	private DemoArchive() {
	}

	/**
	 * Makes it where nothing is yet, with a first save point, and opens it. Beside its folder comes the survey that a surveyor brings
	 * half a year later, after part of the network of one building was replaced, for a steward to take in.
	 *
	 * @param folder does not exist yet or is empty
	 * @throws IOException     where the folder cannot be written; what was made of it is taken away again
	 * @throws IntakeException likewise for the folder of temporary files
	 */
	public static OpenArchive create(ArchiveStore store, Path folder, Workers workers)
			throws IOException, IntakeException {
		Files.createDirectories(folder.toAbsolutePath().getParent());
		Path files = Files.createTempDirectory("marrow-quay");
		OpenArchive open = store.create(folder, "Marrow Quay Museums");
		boolean done = false;
		try {
			workers.progress().begin("surveying Marrow Quay", 4);
			SimulatedArchive simulated = MarrowQuay.surveys(MarrowQuay.DEFAULT_SEED);
			workers.progress().advance(1);
			workers.checkCancelled();
			take(open.archive(), simulated, SimulatedSurvey.Role.TRAINING, files, workers);
			workers.progress().advance(1);
			take(open.archive(), simulated, SimulatedSurvey.Role.TEST, files, workers);
			workers.progress().advance(1);
			workers.checkCancelled();
			describe(open, simulated);
			open.savePointFor(SURVEYORS, "The surveys of spring and autumn as they came in");
			writeNextSurvey(folder.toAbsolutePath().getParent());
			workers.progress().advance(1);
			done = true;
			return open;
		} finally {
			delete(files);
			if (!done) {
				open.close();
				delete(folder);
			}
		}
	}

	private static void writeNextSurvey(Path folder) throws IntakeException {
		SimulatedSurvey next = MarrowQuay.later(MarrowQuay.DEFAULT_SEED).surveys().get(0);
		WideTable.write(folder.resolve(next.name() + ".csv"), next.map(), next.sampleIds());
	}

	private static void take(Archive archive, SimulatedArchive simulated, SimulatedSurvey.Role role, Path folder,
			Workers workers) throws IOException, IntakeException {
		Map<Path, String> digests = new HashMap<>();
		List<SimulatedSurvey> surveys = simulated.surveys(role);
		for (SimulatedSurvey survey : surveys) {
			Path file = folder.resolve(survey.name() + ".csv");
			WideTable.write(file, survey.map(), survey.sampleIds());
			digests.put(file, Sha256.of(file));
		}
		List<Path> files = surveys.stream().map(survey -> folder.resolve(survey.name() + ".csv")).toList();
		Intake intake = SurveyIntake.read(files, IntakeOptions.GUESS, workers.quietly());
		SurveyTaking
				.of(archive, intake, role == SimulatedSurvey.Role.TEST ? SurveyKind.TEST : SurveyKind.TRAINING, digests)
				.command().execute();
	}

	/** What no survey file tells. */
	private static void describe(OpenArchive open, SimulatedArchive simulated) throws IOException {
		for (Site site : open.archive().getSites()) {
			org.cairnfield.core.simulate.Site drawn = simulated.campus().sites()
					.get(simulated.campus().site(site.getName()));
			site.setGeoreference(georeference(drawn));
			for (Floor floor : site.getFloors()) {
				if (floor.getLevel() < drawn.floors().size()) {
					org.cairnfield.core.simulate.Floor plan = drawn.floor(floor.getLevel());
					floor.setOutline(outline(plan.outline().corners()));
					floor.setHeightMetres(drawn.floorHeightMetres());
					String image = "plans/" + drawn.code().toLowerCase(Locale.ROOT) + "-" + floor.getLevel() + ".png";
					Placement placement = FloorDrawing.write(plan, open.resolve(image));
					floor.setPlanImage(image);
					floor.setPlanPlacement(placement);
				}
			}
			site.getSurveys().forEach(survey -> survey.setSurveyor(simulated.survey(survey.getName()).surveyor()));
		}
	}

	private static Outline outline(List<Place> corners) {
		return Outline.of(corners.stream().mapToDouble(Place::x).toArray(),
				corners.stream().mapToDouble(Place::y).toArray());
	}

	private static Georeference georeference(org.cairnfield.core.simulate.Site site) {
		double metresPerDegreeEast = METRES_PER_DEGREE * Math.cos(Math.toRadians(LATITUDE_DEGREES));
		return new Georeference(LATITUDE_DEGREES + site.northMetres() / METRES_PER_DEGREE,
				LONGITUDE_DEGREES + site.eastMetres() / metresPerDegreeEast, 0);
	}

	private static void delete(Path folder) throws IOException {
		if (Files.exists(folder)) {
			try (Stream<Path> all = Files.walk(folder)) {
				for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(each);
				}
			}
		}
	}
}
