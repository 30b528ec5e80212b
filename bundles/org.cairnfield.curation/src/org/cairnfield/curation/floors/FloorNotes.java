package org.cairnfield.curation.floors;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;

/** What a person should know about plans and the site that they are to be taken into. */
final class FloorNotes {

	/** Judgement: surveys begin at the door, and a yard belongs to some of them. */
	private static final double FAR_METRES = 100;

	private FloorNotes() {
	}

	static void add(Site site, List<FloorChange> changes, SiteSamples samples, List<String> notes) {
		Set<Integer> told = changes.stream().map(FloorChange::level).collect(Collectors.toSet());
		site.getFloors().stream().filter(floor -> !told.contains(floor.getLevel()))
				.forEach(floor -> notes.add(Words.bind(Messages.FloorNotes_isNotInTheFile,
						FloorChange.title(floor.getLevel(), ModelText.name(floor)))));
		for (FloorChange change : changes) {
			if (change.isNew()) {
				notes.add(Words.bind(Messages.FloorNotes_theSiteHasNoFloor, change.level()));
			}
			if (change.after().outline() == null) {
				notes.add(Words.bind(Messages.FloorNotes_hasNoOutlineNeitherHere, change.title()));
			} else if (!samples.isEmpty() && samples.metresTo(change.after().outline()) > FAR_METRES) {
				notes.add(String.format(Locale.ROOT,
						Messages.FloorNotes_liesMFromTheSamples,
						change.title(),
						samples.metresTo(change.after().outline())));
			} else if (change.seen().outside() > 0) {
				notes.add(String.format(Locale.ROOT, Messages.FloorNotes_ofSamplesLieOutsideOf,
						change.title(), change.seen().outside(),
						change.seen().samples(), change.seen().farthest()));
			}
		}
	}
}
