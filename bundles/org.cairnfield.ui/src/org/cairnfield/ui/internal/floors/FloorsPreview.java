package org.cairnfield.ui.internal.floors;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.cairnfield.curation.floors.FloorTaking;
import org.cairnfield.curation.floors.FloorWish;
import org.cairnfield.curation.maps.ArchiveCopy;
import org.cairnfield.exchange.floors.MappedFloors;
import org.cairnfield.model.Archive;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.work.Work;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Reads a file and works out what taking it in would do, beside the user interface; what was asked for last is what counts. */
final class FloorsPreview {

	private final ArchiveSession session;
	private final Runnable changed;
	private Job job;
	/** Numbers what was asked for: an answer that comes late is none. */
	private int asked;
	private MappedFloors floors;
	private FloorTaking taking;
	private String problem;

	/** @param changed hears, on the user interface thread, that something is known */
	FloorsPreview(ArchiveSession session, Runnable changed) {
		this.session = session;
		this.changed = changed;
	}

	/** Reads another file or folder; an empty text is none. */
	void read(String text) {
		forget();
		floors = null;
		try {
			Path file = Path.of(text.strip());
			if (!text.isBlank()) {
				int mine = asked;
				job = Work.start(Messages.FloorsPreview_readingFloorPlans, workers -> MappedFloors.read(file),
						read -> answer(mine, () -> floors = read), e -> failed(mine, e));
			}
		} catch (InvalidPathException e) {
			problem = NLS.bind(Messages.FloorsPreview_cannotBeAFile, text);
		}
		changed.run();
	}

	/** Compares what was read with a site. */
	void compare(String siteId, FloorWish wish) {
		forget();
		if (floors != null) {
			Archive copy = ArchiveCopy.of(session.archive());
			MappedFloors plans = floors;
			int mine = asked;
			job = Work.start(Messages.FloorsPreview_comparingFloorPlans,
					workers -> FloorTaking.of(copy, siteId, plans, wish),
					compared -> answer(mine, () -> taking = compared),
					e -> failed(mine, e));
		}
	}

	private void failed(int request, Exception e) {
		answer(request, () -> problem = Problems.text(e));
	}

	private void answer(int request, Runnable what) {
		if (request == asked) {
			job = null;
			what.run();
			changed.run();
		}
	}

	/** Nothing that is under way counts any more. */
	void forget() {
		asked++;
		if (job != null) {
			job.cancel();
			job = null;
		}
		taking = null;
		problem = null;
	}

	boolean isBusy() {
		return job != null;
	}

	/** What was read; empty before it was. */
	Optional<MappedFloors> floors() {
		return Optional.ofNullable(floors);
	}

	/** What would be done; empty while it is not known. */
	Optional<FloorTaking> taking() {
		return Optional.ofNullable(taking);
	}

	/** Why nothing can be done. */
	Optional<String> problem() {
		return Optional.ofNullable(problem);
	}
}
