package org.cairnfield.ui.internal.intake;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.cairnfield.curation.intake.IntakeDraft;
import org.cairnfield.curation.intake.SameNames;
import org.cairnfield.curation.intake.SurveyTaking;
import org.cairnfield.exchange.Intake;
import org.cairnfield.exchange.Preview;
import org.cairnfield.model.values.Sha256;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.IWizardContainer;

/** What the pages of the wizard work on together. */
final class IntakeState {

	/**
	 * What was read, and what it would make of the archive.
	 *
	 * @param digests  of the files
	 * @param question about names that are used at several sites
	 * @param answer   to that; null where it is still to be given
	 */
	record Reading(Intake intake, Map<Path, String> digests, SameNames question, SameNames.Answer answer,
			SurveyTaking taking) {

		/** Whether a person must say something first. */
		boolean awaitsAnswer() {
			return question.areFound() && answer == null;
		}
	}

	private final ArchiveSession session;
	private IntakeDraft draft;
	private IntakeDraft lookedAt;
	private Map<Path, IntakeDraft.Look> looks = Map.of();
	private IntakeDraft readFrom;
	private Reading reading;

	IntakeState(ArchiveSession session) {
		this.session = session;
		draft = IntakeDraft.of(session.archive());
	}

	ArchiveSession session() {
		return session;
	}

	IntakeDraft draft() {
		return draft;
	}

	void draft(IntakeDraft now) {
		draft = now;
	}

	List<Path> files() {
		return draft.entries().stream().map(IntakeDraft.Entry::file).toList();
	}

	/** How a file is understood; null before it was looked at. */
	IntakeDraft.Look look(Path file) {
		return looks.get(file);
	}

	/** The first thing that keeps a file from being taken in, with the file's name; null where there is none. */
	String problem() {
		for (Path file : files()) {
			IntakeDraft.Look look = looks.get(file);
			if (look != null && look.problem().isPresent()) {
				String text = look.problem().get();
				return text.contains(file.getFileName().toString()) ? text : file.getFileName() + ": " + text;
			}
		}
		return null;
	}

	/** The file and those that belong to the same paired survey. */
	Set<Path> together(Path file) {
		Set<Path> all = new LinkedHashSet<>(Set.of(file));
		IntakeDraft.Look look = looks.get(file);
		if (look != null && look.preview().isPresent()) {
			Preview preview = look.preview().get();
			preview.partners().forEach(partner -> all.add(partner));
		}
		return all;
	}

	/** What was read last, if nothing was changed since; otherwise null. */
	Reading reading() {
		return readFrom == draft ? reading : null;
	}

	/**
	 * Looks at the files unless that was done, with the progress bar of the wizard.
	 *
	 * @return what is wrong; null where nothing is, "" where it was cancelled
	 */
	String look(IWizardContainer container) {
		if (lookedAt == draft) {
			return null;
		}
		IntakeDraft now = draft;
		return run(container, workers -> now.look(workers), found -> {
			looks = found;
			lookedAt = now;
		});
	}

	/** Reads the files unless that was done; otherwise as {@link #look(IWizardContainer)}. */
	String read(IWizardContainer container) {
		if (reading() != null) {
			return null;
		}
		IntakeDraft now = draft;
		return run(container, workers -> {
			Intake intake = now.read(workers);
			Map<Path, String> digests = new HashMap<>();
			for (IntakeDraft.Entry entry : now.entries()) {
				digests.put(entry.file(), Sha256.of(entry.file()));
			}
			// the wizard keeps people from changing the archive meanwhile
			SameNames question = SameNames.of(session.archive(), intake);
			return reading(now, intake, digests, question, question.kept().orElse(null));
		}, found -> {
			reading = found;
			readFrom = now;
		});
	}

	private Reading reading(IntakeDraft from, Intake intake, Map<Path, String> digests, SameNames question,
			SameNames.Answer answer) {
		Intake named = answer == null ? intake : question.as(answer, intake);
		return new Reading(intake, digests, question, answer, from.taking(session.archive(), named, digests));
	}

	/** Takes names that are used at several sites for what a person says they are; otherwise as {@link #look(IWizardContainer)}. */
	String answer(IWizardContainer container, SameNames.Answer answer) {
		Reading before = reading();
		IntakeDraft now = draft;
		return run(container, workers -> reading(now, before.intake(), before.digests(), before.question(), answer),
				found -> {
					reading = found;
					readFrom = now;
				});
	}

	/** As {@link #look(IWizardContainer)}, for other work. */
	<T> String run(IWizardContainer container, Work.Task<T> task, Consumer<T> then) {
		AtomicReference<T> result = new AtomicReference<>();
		try {
			container.run(true, true, monitor -> {
				try {
					Work.runnable(workers -> {
						result.set(task.run(workers));
						return null;
					}, nothing -> {
					}).run(monitor);
					if (monitor.isCanceled()) {
						throw new InterruptedException();
					}
				} catch (CoreException e) {
					throw new InvocationTargetException(e);
				} finally {
					monitor.done();
				}
			});
			then.accept(result.get());
			return null;
		} catch (InterruptedException | CancellationException e) {
			return "";
		} catch (InvocationTargetException e) {
			return e.getCause() instanceof CoreException core ? core.getStatus().getMessage()
					: Problems.text(e.getCause());
		}
	}
}
