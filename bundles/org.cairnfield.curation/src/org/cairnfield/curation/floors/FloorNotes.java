package org.cairnfield.curation.floors;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

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
				.forEach(floor -> notes.add(FloorChange.title(floor.getLevel(), ModelText.name(floor))
						+ " is not in the file, and stays as it is"));
		for (FloorChange change : changes) {
			if (change.isNew()) {
				notes.add("the site has no floor " + change.level()
						+ " yet: it is made, without samples until a survey has some");
			}
			if (change.after().outline() == null) {
				notes.add(change.title()
						+ " has no outline, neither here nor in the file: draw it, or give the file one");
			} else if (!samples.isEmpty() && samples.metresTo(change.after().outline()) > FAR_METRES) {
				notes.add(String.format(Locale.ROOT,
						"%s lies %,.0f m from the samples of the site: is it the right site, and is its place on Earth right?",
						change.title(),
						samples.metresTo(change.after().outline())));
			} else if (change.seen().outside() > 0) {
				notes.add(String.format(Locale.ROOT, "%s: %,d of %,d samples lie outside of the outline, up to %,.1f m",
						change.title(), change.seen().outside(),
						change.seen().samples(), change.seen().farthest()));
			}
		}
	}
}
