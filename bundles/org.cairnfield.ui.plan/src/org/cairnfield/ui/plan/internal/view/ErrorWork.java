package org.cairnfield.ui.plan.internal.view;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.curation.measure.ErrorMap;
import org.cairnfield.curation.measure.Measures;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.measure.SideBySide;
import org.cairnfield.curation.measure.TestRun;
import org.cairnfield.curation.measure.Way;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.model.Archive;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Measures ways of matching for the error map, beside the user interface, and keeps what was measured until the archive changes.
 * For the user interface thread.
 */
final class ErrorWork {

	private static final List<String> USUAL = List.of(TestRun.PLAIN, TestRun.PLAIN_3W, TestRun.SPLIT, Measures.APPROVED,
			Measures.RELEASED);

	/** What comes of a job. */
	private record Found(SideBySide side, List<String> versions) {
	}

	private final Runnable changed;
	private ArchiveSession session;
	private List<String> versions = List.of();
	private SideBySide side;
	private Job job;
	private String message = "";

	/** @param changed called when {@link #ways}, {@link #map}, {@link #message} or {@link #isBusy} may have changed */
	ErrorWork(Runnable changed) {
		this.changed = changed;
	}

	/** Another archive is on show, or none (null). */
	void session(ArchiveSession other) {
		session = other;
		versions = List.of();
		forget("");
	}

	/** What was measured is no longer so. @param why for a person */
	void forget(String why) {
		stop();
		side = null;
		message = why;
		changed.run();
	}

	/** Breaks off what is being measured. */
	void cancel() {
		stop();
		message = Messages.ErrorWork_measuringWasCancelled;
		changed.run();
	}

	/** Likewise without a word. */
	void stop() {
		if (job != null) {
			job.cancel();
			job = null;
		}
	}

	/**
	 * Measures the map, unless that is done, and the releases among some ways.
	 *
	 * @param wanted names of ways
	 */
	void measure(List<String> wanted) {
		stop();
		Archive still = ArchiveCopy.of(session.archive());
		ReleaseBook book = new ReleaseBook(session.open(), Clock.systemUTC());
		Measures known = side == null ? null
				: new Measures(side.test().size(),
						side.ways().stream().filter(way -> Way.release(way.name()).isEmpty()).toList(), Map.of());
		List<String> releases = wanted.stream().flatMap(way -> Way.release(way).stream()).distinct().toList();
		message = Messages.ErrorWork_matchingTheTestSamples;
		Job[] own = new Job[1];
		own[0] = Work.start(Messages.ErrorWork_measuringTheErrorMap,
				workers -> new Found(book.measure(still, known, releases, PackRequest.USUAL, workers),
						book.list().stream().map(release -> release.version().toString()).toList()),
				found -> end(own[0], found), problem -> {
					if (job == own[0]) {
						job = null;
						message = Problems.text(problem);
						changed.run();
					}
				});
		job = own[0];
		changed.run();
	}

	private void end(Job own, Found found) {
		if (job == own) {
			job = null;
			side = found.side();
			versions = found.versions();
			message = side.ways().isEmpty() ? Messages.ErrorWork_thereIsNoTestSurvey : "";
			changed.run();
		}
	}

	boolean isBusy() {
		return job != null;
	}

	/** What goes on or went wrong; empty where all is well. */
	String message() {
		return message;
	}

	/** Whether the map itself is measured. */
	boolean isMeasured() {
		return side != null && !side.ways().isEmpty();
	}

	/** Ways to choose from, earlier releases last; not all need be measured yet. */
	List<String> ways() {
		List<String> own = isMeasured()
				? side.ways().stream().map(Way::name).filter(name -> Way.release(name).isEmpty()).toList()
				: USUAL;
		return Stream.concat(own.stream(), versions.stream().map(Way::ofRelease)).toList();
	}

	/** Whether one of some ways can be shown only once its release is measured. */
	boolean lacks(List<String> wanted) {
		List<String> missing = new ArrayList<>(wanted);
		missing.removeIf(way -> map(way).isPresent() || Way.release(way).isEmpty());
		return isMeasured() && !missing.isEmpty();
	}

	/** Errors of a way; empty where it is not measured. */
	Optional<ErrorMap> map(String way) {
		return side == null ? Optional.empty()
				: side.ways().stream().filter(each -> each.name().equals(way)).findFirst()
						.map(each -> ErrorMap.of(side, each));
	}
}
