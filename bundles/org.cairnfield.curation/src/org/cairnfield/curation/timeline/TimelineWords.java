package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.model.values.Count;

/** A timeline put in words. */
public final class TimelineWords {

	private TimelineWords() {
	}

	/** What changed at one survey: "21 access points gone, 29 new, 10 replaced". */
	public static String change(SiteChange change) {
		List<String> parts = new ArrayList<>();
		add(parts, change.with(Fate.VANISHED).size(), "gone");
		add(parts, change.with(Fate.APPEARED).size(), "new");
		add(parts, change.with(Fate.REPLACED).size(), "replaced");
		add(parts, change.with(Fate.MOVED).size(), "moved");
		return parts.isEmpty() ? "no access point gone, new, replaced or moved" : String.join(", ", parts);
	}

	private static void add(List<String> parts, int count, String what) {
		if (count > 0) {
			parts.add((parts.isEmpty() ? Count.of(count, "access point") : Integer.toString(count)) + ' ' + what);
		}
	}

	/** Since when the map is worse, by how much, and what explains it; or that nothing is wrong. */
	public static String summary(Timeline timeline) {
		List<TimelineStep> steps = timeline.steps();
		if (steps.size() < 2) {
			return steps.isEmpty() ? "No training survey of this site has a date."
					: "There is one survey only, so nothing can be compared.";
		}
		Optional<TimelineStep> changed = steps.stream().filter(TimelineStep::isChanged)
				.reduce((first, second) -> second);
		if (changed.isEmpty()) {
			return "No survey tells of a change: from " + steps.get(0).date() + " to "
					+ steps.get(steps.size() - 1).date()
					+ " no more access points came and went than usual.";
		}
		TimelineStep step = changed.get();
		double usual = steps.stream()
				.filter(each -> each.date().isBefore(step.date()) && !each.isChanged() && each.error().isKnown())
				.mapToDouble(each -> each.error().metres()).max().orElse(Double.NaN);
		String error = !step.error().isKnown() ? ""
				: String.format(Locale.ROOT, " A map of the surveys before is %.1f m off there (%.1f to %.1f)%s.",
						step.error().metres(),
						step.error().interval().low(), step.error().interval().high(),
						Double.isNaN(usual) ? ""
								: String.format(Locale.ROOT, ", at most %.1f m in quiet months before", usual));
		return "Changed by " + step.date() + ": " + change(step.change()) + '.' + error;
	}
}
