package org.cairnfield.curation.review;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReviewPolicy;
import org.cairnfield.curation.split.SmallArchives;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Split;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** A review of a small archive, whose evidence is computed when a test says so. */
final class SessionFixture implements ReviewListener, ReviewedArchive {

	final Archive archive = SmallArchives.simulated();
	final Split split = SmallArchives.split(archive, "whole", 90, 4);
	final BasicCommandStack stack = new BasicCommandStack();
	final Clock clock = Clock.fixed(Instant.parse("2031-05-01T10:00:00Z"), ZoneOffset.UTC);
	final List<EvidenceRequest> wanted = new ArrayList<>();
	String readOnly;
	final ReviewSession session = new ReviewSession(this, new Reviewer("M.Q.", ReviewPolicy.USUAL), clock, this);

	SessionFixture() {
		session.archiveChanged();
	}

	@Override
	public void evidenceWanted(EvidenceRequest request) {
		wanted.add(request);
	}

	/** Computes what was asked for last. */
	void compute() {
		session.accept(wanted.get(wanted.size() - 1).compute(Workers.inline()));
	}

	@Override
	public Archive archive() {
		return archive;
	}

	@Override
	public Optional<String> readOnlyReason() {
		return Optional.ofNullable(readOnly);
	}

	@Override
	public boolean run(Command command) {
		if (readOnly != null || !command.canExecute()) {
			return false;
		}
		stack.execute(command);
		return true;
	}
}
