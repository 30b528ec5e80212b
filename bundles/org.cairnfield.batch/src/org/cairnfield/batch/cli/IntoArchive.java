package org.cairnfield.batch.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.archive.history.SavePoint;
import org.cairnfield.curation.intake.SameNames;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.exchange.Intake;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.values.Sha256;
import picocli.CommandLine.Option;

/** Where surveys that were read are kept, if anywhere. */
final class IntoArchive {

	@Option(names = "--archive", paramLabel = "DIR", descriptionKey = "IntoArchive_archive")
	Path folder;

	@Option(names = "--test-survey", descriptionKey = "IntoArchive_testSurvey")
	boolean test;

	@Option(names = "--person", converter = PersonArgument.class, paramLabel = "NAME", descriptionKey = "IntoArchive_person")
	Person person;

	@Option(names = "--same-names", paramLabel = "ANSWER", descriptionKey = "IntoArchive_sameNames")
	SameNames.Answer sameNames;

	/**
	 * What was taken in, and the save point that holds it.
	 *
	 * @param asked  about names that are used at several sites
	 * @param answer to that, given or assumed
	 */
	record Kept(List<SurveyTaking.Taken> surveys, List<SurveyTaking.Known> known, Optional<SavePoint> savePoint,
			SameNames asked,
			SameNames.Answer answer) {
	}

	/** Name of the only site of the archive; null where it has none or several, or where there is no archive. */
	String onlySite() throws Exception {
		if (folder == null || !Files.exists(folder.resolve("archive.xmi"))) {
			return null;
		}
		try (OpenArchive archive = new ArchiveStore().open(folder, Mode.READ)) {
			return SurveyTaking.onlySite(archive.archive()).orElse(null);
		}
	}

	/** Adds the surveys in one save point. */
	Kept keep(List<Path> files, Intake intake) throws Exception {
		try (OpenArchive archive = open()) {
			ArchiveWork.requireWritable(folder, archive);
			return keep(archive, files, intake, test ? SurveyKind.TEST : SurveyKind.TRAINING, sameNames, person);
		}
	}

	/**
	 * Likewise, into an archive that is open.
	 *
	 * @param sameNames null: as the archive has it
	 * @param person    null: the user of this machine
	 */
	static Kept keep(OpenArchive archive, List<Path> files, Intake intake, SurveyKind kind, SameNames.Answer sameNames,
			Person person) throws Exception {
		Map<Path, String> digests = new HashMap<>();
		for (Path file : files) {
			digests.put(file, Sha256.of(file));
		}
		SameNames asked = SameNames.of(archive.archive(), intake);
		SameNames.Answer answer = sameNames != null ? sameNames : asked.kept().orElse(SameNames.Answer.ONE_SENDER);
		SurveyTaking taking = SurveyTaking.of(archive.archive(), asked.as(answer, intake), kind, digests);
		if (!taking.command().canExecute()) {
			return new Kept(List.of(), taking.known(), Optional.empty(), asked, answer);
		}
		taking.command().execute();
		return new Kept(taking.surveys(), taking.known(), archive.savePoint(PersonArgument.orUser(person), null), asked,
				answer);
	}

	private OpenArchive open() throws Exception {
		ArchiveStore store = new ArchiveStore();
		boolean there = Files.exists(folder.resolve("archive.xmi")) || Files.isDirectory(folder.resolve(".git"));
		if (there) {
			return store.open(folder, Mode.EDIT);
		}
		return store.create(folder, folder.toAbsolutePath().normalize().getFileName().toString());
	}
}
