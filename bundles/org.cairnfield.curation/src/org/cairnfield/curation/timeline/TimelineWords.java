package org.cairnfield.curation.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cairnfield.core.change.Fate;
import org.cairnfield.core.change.SiteChange;
import org.cairnfield.core.text.Words;
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
		return parts.isEmpty() ? Messages.TimelineWords_noAccessPointGoneNew : String.join(", ", parts);
	}

	private static void add(List<String> parts, int count, String what) {
		if (count > 0) {
			parts.add((parts.isEmpty() ? Count.of(count, Messages.TimelineWords_accessPoint) : Integer.toString(count))
					+ ' ' + what);
		}
	}

	/** Since when the map is worse, by how much, and what explains it; or that nothing is wrong. */
	public static String summary(Timeline timeline) {
		List<TimelineStep> steps = timeline.steps();
		if (steps.size() < 2) {
			return steps.isEmpty() ? Messages.TimelineWords_noTrainingSurveyOfThis
					: Messages.TimelineWords_thereIsOneSurveyOnly;
		}
		Optional<TimelineStep> changed = steps.stream().filter(TimelineStep::isChanged)
				.reduce((first, second) -> second);
		if (changed.isEmpty()) {
			return Words.bind(Messages.TimelineWords_noSurveyTellsOfA, steps.get(0).date(),
					steps.get(steps.size() - 1).date());
		}
		TimelineStep step = changed.get();
		double usual = steps.stream()
				.filter(each -> each.date().isBefore(step.date()) && !each.isChanged() && each.error().isKnown())
				.mapToDouble(each -> each.error().metres()).max().orElse(Double.NaN);
		String error = !step.error().isKnown() ? ""
				: String.format(Locale.ROOT, Messages.TimelineWords_aMapOfTheSurveys,
						step.error().metres(),
						step.error().interval().low(), step.error().interval().high(),
						Double.isNaN(usual) ? ""
								: String.format(Locale.ROOT, Messages.TimelineWords_atMostMInQuiet, usual));
		return Words.bind(Messages.TimelineWords_changedBy, step.date(), change(step.change()), error);
	}
}
