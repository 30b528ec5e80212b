package org.cairnfield.ui.tests.story;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.Mode;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.curation.release.Gate;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Survey;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.cairnfield.ui.tests.robot.Batch;
import org.cairnfield.ui.tests.robot.CleanLog;
import org.cairnfield.ui.tests.robot.Interruptions;
import org.cairnfield.ui.tests.robot.ScreenReader;
import org.cairnfield.ui.tests.robot.Ui;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.Job;

/** An archive in which as much as possible can be done, and a look at what comes of each thing that is tried. */
final class EverythingStage {

	private static final double EPSILON_DB = 188;

	private ArchiveSession session;

	/** Opens an archive with a release and a split under review. */
	EverythingStage(Path folder) throws Exception {
		Path archive = Demo.copy(folder.resolve("everything"));
		List<String> overrides = Arrays.stream(Gate.values())
				.flatMap(gate -> Stream.of("--override", gate.key() + "=for a trial only")).toList();
		Batch.run("release", "-q", "--archive", archive, "--person", "L. Lead", overrides);
		Batch.run("connect", "-q", "--archive", archive, "--to", folder.resolve("meeting.git"));
		addConflict(archive);
		Stage.open(archive);
		session = Stage.session();
		ReviewStage.of(session, EPSILON_DB);
		Stage.save();
	}

	/** Something to decide, as if two people had named the archive. */
	private static void addConflict(Path archive) throws IOException {
		try (OpenArchive open = new ArchiveStore().open(archive, Mode.EDIT)) {
			Conflict conflict = ModelFactory.eINSTANCE.createConflict();
			conflict.setPlace(Place.ARCHIVE);
			conflict.setUnit("name");
			conflict.setBase(open.archive().getName());
			for (String person : List.of("A. Steward", "B. Reviewer")) {
				Claim claim = ModelFactory.eINSTANCE.createClaim();
				claim.setValue("The museums of " + person);
				claim.setPerson(person);
				claim.setTime(Instant.parse("2031-11-20T09:00:00Z"));
				conflict.getClaims().add(claim);
			}
			open.archive().getConflicts().add(conflict);
			open.savePoint(Person.named("L. Lead"), null);
		}
	}

	/** The archive on show. */
	ArchiveSession session() {
		return session;
	}

	/** So that as much as possible can be done. */
	void select() {
		Survey survey = Ui.ask(() -> session.archive().getSites().get(0).getSurveys().get(0));
		Ui.run(() -> session.select(session.selection().withScope(survey).withSamples(List.of(new SampleRef(survey, 0)))
				.withAccessPoint(session.archive().getAccessPoints().get(0))));
		Ui.waitUntilIdle();
	}

	/** Selects, and changes something before what needs a change: saving, undoing, doing again, bringing a sample back. */
	void makePossible(String entry) {
		select();
		boolean redo = entry.startsWith("Redo");
		if (redo || entry.startsWith("Undo") || entry.startsWith("Save") || entry.startsWith("Bring")) {
			Ui.run(() -> session.run(SetSampleStateCommand.setAside(session.selection().samples(), "a trial")));
		}
		if (redo) {
			Ui.run(() -> session.commands().undo());
		}
		Ui.waitUntilIdle();
	}

	/** Takes back what was changed, and shows the archive again where it was left. */
	void restore() {
		if (Ui.ask(() -> Sessions.workbench().current().filter(now -> now == session).isEmpty())) {
			Path archive = session.folder();
			Stage.open(archive);
			session = Stage.session();
			select();
		}
		Stage.takeBackChanges();
	}

	/** Does it, leaves what comes up, and looks for errors. */
	List<String> open(String what, Runnable action) {
		List<String> seen = Interruptions.escape(Stage.window(), action);
		cancelStudies();
		Ui.waitUntilIdle();
		Ui.run(() -> ScreenReader.ask(Stage.window()));
		List<IStatus> problems = CleanLog.take();
		assertTrue(problems.isEmpty(), () -> what + " logs " + problems + stack(problems));
		assertFalse(seen.stream().anyMatch(EverythingStage::isOfAnError), () -> what + " shows " + seen);
		List<String> unsaid = ScreenReader.take();
		assertTrue(unsaid.isEmpty(), () -> what + ": a screen reader cannot say " + unsaid);
		return seen;
	}

	/** A study of this archive takes minutes; its own story waits for a small one. */
	private static void cancelStudies() {
		Arrays.stream(Job.getJobManager().find(Work.FAMILY)).filter(job -> job.getName().startsWith("Studying"))
				.forEach(Job::cancel);
	}

	private static String stack(List<IStatus> problems) {
		return problems.stream().filter(each -> each.getException() != null)
				.map(each -> "\n" + each.getException() + "\n"
						+ String.join("\n", Arrays.stream(each.getException().getStackTrace()).limit(25)
								.map(Object::toString).toList()))
				.reduce("", String::concat);
	}

	private static boolean isOfAnError(String words) {
		return words.contains("nternal error") || words.contains("Internal Error") || words.contains("Problem Occurred")
				|| words.contains("Something went wrong that should not") || words.contains("not currently enabled");
	}
}
