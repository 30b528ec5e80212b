package org.cairnfield.ui.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cairnfield.archive.history.SampleChange;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Survey;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.Sample;
import org.cairnfield.ui.scope.ArchiveSelection;
import org.cairnfield.ui.scope.MarkedPlace;
import org.cairnfield.ui.session.ArchiveSession;

/** What differs between two states, on the plan: samples that changed are selected, and crosses stand where those that moved or went were. */
final class ChangesOnPlan {

	/** More crosses would hide the plan. */
	private static final int MOST_CROSSES = 60;

	private ChangesOnPlan() {
	}

	/** @param changes of samples */
	static void show(ArchiveSession session, List<DiffNode> changes) {
		ArchiveIndex index = ArchiveIndex.of(session.archive());
		List<SampleRef> there = new ArrayList<>();
		List<MarkedPlace> crosses = new ArrayList<>();
		for (DiffNode each : changes) {
			index.sample(each.sample()).ifPresent(there::add);
			if (crosses.size() < MOST_CROSSES) {
				cross(session, each).ifPresent(crosses::add);
			}
		}
		if (there.isEmpty() && crosses.isEmpty()) {
			return;
		}
		ArchiveSelection selection = session.selection().withScope(session.archive()).withSamples(there);
		session.select((there.isEmpty() ? selection.withFloor(crosses.get(0).floor()) : selection).withMarked(crosses));
		OnPlan.bringUp();
	}

	private static Optional<MarkedPlace> cross(ArchiveSession session, DiffNode of) {
		SampleChange change = of.change();
		Sample before = change.before();
		if (!change.isRemoved() && !change.isMoved()) {
			return Optional.empty();
		}
		return session.archive().getSites().stream().flatMap(site -> site.getSurveys().stream())
				.filter(survey -> survey.getId().equals(of.sample().survey())).findFirst()
				.flatMap(survey -> floor(survey, before.floorLevel()))
				.map(floor -> new MarkedPlace(floor, before.xMetres(), before.yMetres(),
						of.sample().sample() + (change.isRemoved() ? Messages.ChangesOnPlan_wasHereAndIsGone
								: Messages.ChangesOnPlan_wasHere)));
	}

	private static Optional<Floor> floor(Survey survey, int level) {
		return survey.getSite().getFloors().stream().filter(floor -> floor.getLevel() == level).findFirst();
	}
}
